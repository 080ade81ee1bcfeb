/** @module The way back to the operation from which somebody was sent to put something right. */
import { Link } from 'wouter';
import { useHistoryState } from 'wouter/use-browser-location';

export interface SentFrom {
  readonly address: string;
  readonly title: string;
}

const isSentFrom = (state: unknown): state is SentFrom =>
  typeof state === 'object' && state !== null && 'address' in state && 'title' in state;

export const BackTo = () => {
  const state = useHistoryState<unknown>();
  if (!isSentFrom(state)) return null;
  return (
    <p className="no-print">
      <Link className="button" href={state.address} data-back>
        ← Back to “{state.title}”
      </Link>
    </p>
  );
};
