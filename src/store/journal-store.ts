/** @module The journal's store: what every store promises. */
import type { JobEvent } from '../job/event.ts';

/** A line of the jobs list, kept beside the journal and rebuilt from it at will. */
export interface JobLine {
  readonly job: string;
  readonly number: string;
  readonly engine: string;
  readonly owner: string;
  readonly plate: string;
  /** The part of the job it stands in: `Measure`, `Decide` … */
  readonly phase: string;
  readonly readings: number;
  readonly sequence: number;
  readonly changed: string;
}

export type Appended =
  /** All events are on the disk. */
  | { readonly kind: 'appended'; readonly sequence: number }
  /** Somebody was first; nothing was written. */
  | { readonly kind: 'stale'; readonly sequence: number };

export interface JournalStore {
  /**
   * Adds events after the expected sequence, all or none, and answers only when they would survive a power cut.
   * Events all of which are already there under the same ids are taken as sent twice and answered as appended, with
   * the sequence at which the last of them stands.
   */
  readonly append: (job: string, expected: number, events: readonly JobEvent[]) => Promise<Appended>;
  /** Events after the given sequence, in order; empty for a job that is not there. */
  readonly readFrom: (job: string, after: number) => Promise<readonly JobEvent[]>;
  /** Whether an event with this id is in the job's journal. */
  readonly has: (job: string, id: string) => Promise<boolean>;
  /** Every job, last changed first. */
  readonly list: () => Promise<readonly JobLine[]>;
  readonly close: () => Promise<void>;
}
