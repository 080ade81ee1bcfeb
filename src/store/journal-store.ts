/** @module The journal's store: what every store promises. */
import type { JobEvent } from '../job/event.ts';
import type { JobLine } from '../job/job-line.ts';
import type { JournalEvent } from '../journal/event.ts';
import type { RegisterEvent } from '../register/event.ts';

export type Appended =
  /** All events are on the disk. */
  | { readonly kind: 'appended'; readonly sequence: number }
  /** Somebody was first; nothing was written. */
  | { readonly kind: 'stale'; readonly sequence: number };

/** Journals of one kind, each under its id: jobs, or a register of instruments. */
export interface Journals<Event extends JournalEvent = JournalEvent> {
  /**
   * Adds events after the expected sequence, all or none, and answers only when they would survive a power cut.
   * Events all of which are already there under the same ids are taken as sent twice and answered as appended, with
   * the sequence at which the last of them stands.
   */
  readonly append: (id: string, expected: number, events: readonly Event[]) => Promise<Appended>;
  /** Events after the given sequence, in order; empty for a journal that is not there. */
  readonly readFrom: (id: string, after: number) => Promise<readonly Event[]>;
  /** Whether an event with this id is in the journal. */
  readonly has: (id: string, event: string) => Promise<boolean>;
}

/** The journals of the jobs, and beside them the register's; one of a job's id and one of a register's never meet. */
export interface JournalStore extends Journals<JobEvent> {
  /** Every job, last changed first. */
  readonly list: () => Promise<readonly JobLine[]>;
  readonly register: Journals<RegisterEvent>;
  readonly close: () => Promise<void>;
}
