/** @module The tables of a store, the same in every kind of database. */

export interface Tables {
  /** Every journal: of each job, and of the register of instruments. Only ever added to. */
  readonly journal: {
    /** The id of the job; of a register, its id behind `register/`. */
    readonly job_id: string;
    /** The event's sequence: 1 for the first of a journal. */
    readonly version: number;
    readonly event_id: string;
    readonly kind: string;
    readonly at: string;
    readonly hash: string;
    /** The event whole, as JSON. */
    readonly body: string;
  };
  /** The jobs list: computed from the journal, may be thrown away at any time. */
  readonly job_line: {
    readonly job_id: string;
    readonly version: number;
    readonly number: string;
    readonly engine: string;
    readonly owner: string;
    readonly plate: string;
    readonly phase: string;
    readonly readings: number;
    /** What it does next and waits for, as JSON. */
    readonly board: string;
    readonly changed: string;
  };
  /** Engine type files on the shelf, every version kept. */
  readonly engine_type: {
    readonly id: string;
    readonly version: number;
    readonly title: string;
    readonly body: string;
  };
  /** Pictures, each under the SHA-256 of its bytes. */
  readonly picture: {
    readonly hash: string;
    readonly bytes: Uint8Array;
  };
}
