/** @module That plans are being sought, how far it is, and a way to stop it; or why there is no answer. */
import { Button } from 'react-aria-components';
import type { Planning } from './use-planning.ts';

export const Working = ({
  planning,
  what,
  again,
}: {
  readonly planning: Exclude<Planning, { kind: 'answered' }>;
  /** `Planning`, `Trading off`. */
  readonly what: string;
  readonly again: () => void;
}) => {
  switch (planning.kind) {
    case 'not asked':
      return null;
    case 'working':
      return (
        <p className="row">
          <span role="status">{what} …</span>
          <progress aria-label={what} max={1} value={planning.share} />
          <Button onPress={planning.stop}>Stop</Button>
        </p>
      );
    case 'stopped':
      return (
        <p className="row">
          <span>{what}: stopped.</span> <Button onPress={again}>Begin again</Button>
        </p>
      );
    case 'failed':
      return (
        <p className="refused" role="alert">
          {what} failed: {planning.says}. Load this page again; the journal is not touched.
        </p>
      );
    default:
      return planning satisfies never;
  }
};
