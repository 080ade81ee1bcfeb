/** @module The plan's model as the sweep takes it: choices of each slot, what two slots rule out, what many slots share. */

/** One option of a slot, or nothing at all where the model lets the slot be left. */
export interface Choice {
  /** Index in the model's options; -1 for nothing. */
  readonly option: number;
  readonly cents: number;
  readonly newParts: number;
  readonly days: number;
}

/** Two slots that touch: `allows[a * choices of second + b]` is 1 where both choices may stand together. */
export interface Pair {
  readonly first: number;
  readonly second: number;
  readonly allows: Uint8Array;
}

/** Something that several slots put into, choice by choice. */
interface PutInto {
  /** What each choice of a slot puts in; slots that put in nothing are left out. */
  readonly from: ReadonlyMap<number, readonly number[]>;
}

/** What is judged or paid once all have put in. */
export interface Summed extends PutInto {
  readonly kind: 'set-up' | 'count' | 'sum';
  /** A set-up: its price once anything is put in. A count: the price of each count. A sum: none. */
  readonly cents: readonly number[];
  readonly relation: '=' | '<=' | '>=';
  readonly bound: number;
}

/** What a choice takes of things that exclude one another, one bit for each of them. */
export interface Mark {
  readonly takes: bigint;
  /** What nobody may take besides. */
  readonly bars: bigint;
}

/** Things of which some exclude others, whichever slots take them: what is put in is the number of a mark. */
export interface Rivals extends PutInto {
  readonly kind: 'rivals';
  /** At 0 the mark of what takes none of them. */
  readonly marks: readonly Mark[];
}

export type Shared = Summed | Rivals;

export interface Problem {
  /** Choices of each slot, in the order of the slots. */
  readonly slots: readonly (readonly Choice[])[];
  readonly pairs: readonly Pair[];
  readonly shared: readonly Shared[];
  /** Greatest cost allowed. */
  readonly cap: number;
}
