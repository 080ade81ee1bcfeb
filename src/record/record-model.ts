/** @module Everything the record shows, as data: words and figures as they stand on the page, in its order. */

/** One line of a list of names and what they hold. */
export interface Line {
  readonly name: string;
  readonly says: string;
}

export interface RecordTable {
  readonly heads: readonly string[];
  readonly rows: readonly RecordRow[];
}

export interface RecordRow {
  /** What the row is of, for naming it: `main.2 main-journal-diameter`. */
  readonly of: string;
  readonly cells: readonly string[];
  /** Set where the row asks to be looked at: outside, unsure, unanswered, not done. */
  readonly marked?: true;
}

export interface RecordSection {
  readonly name: string;
  readonly title: string;
  /** Said under the title, or in place of the table where there is nothing to list. */
  readonly says: readonly string[];
  readonly table?: RecordTable;
  /**
   * Whether it holds figures computed from the journal rather than quoted from it: those `verify` computes again one
   * by one. Words that the program finds for them may be put better one day, and are checked with the page alone.
   */
  readonly derived: boolean;
}

/** A picture that counts, as the page shows it; its bytes come from wherever pictures are kept. */
export interface RecordPicture {
  readonly number: number;
  readonly of: string;
  readonly says: string;
  readonly hash: string;
  readonly mediaType: string;
  readonly width: number;
  readonly height: number;
}

export interface RecordModel {
  readonly title: string;
  readonly number: string;
  /** Whose bench, whose engine, which, in what state. */
  readonly heading: readonly Line[];
  readonly sections: readonly RecordSection[];
  readonly pictures: readonly RecordPicture[];
  readonly safety: readonly string[];
  readonly events: number;
  /** The journal's last hash: printed, it fixes everything before it. */
  readonly hash: string;
}
