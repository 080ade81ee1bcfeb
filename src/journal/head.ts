/** @module Where a journal's chain of hashes has come to. */
import { noHash } from './chain.ts';
import type { AnyFact, JournalEvent } from './event.ts';

export interface Head<Fact extends AnyFact = AnyFact> {
  readonly id: string;
  readonly sequence: number;
  readonly hash: string;
  /** The last event whole, so that a command sent twice in a row is answered with it again. */
  readonly event?: JournalEvent<Fact>;
}

/** Of a journal in which nothing is written yet. */
export const noHead = { id: '', sequence: 0, hash: noHash } as const;

/** After an event. */
export const headAt = <Fact extends AnyFact>(event: JournalEvent<Fact>): Head<Fact> => ({
  id: event.id,
  sequence: event.sequence,
  hash: event.hash,
  event,
});
