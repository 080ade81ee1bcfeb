/** @module How an engine was left when it was last in the shop, as a job keeps it. */
import type { Typed } from '../quantity/typed.ts';
import type { Cell } from './reading.ts';

/** How a cell was left. */
export interface FormerCell {
  readonly cell: Cell;
  /** Whether the part was machined or renewed then, so that it has worn only since. */
  readonly anew: boolean;
  /** Missing where nobody measured the new or machined part. */
  readonly size?: Typed;
  /** Half the width of its 95 % coverage interval. */
  readonly expanded?: Typed;
}

/** At which size a part was left at its place. */
export interface FormerPlaceSize {
  readonly component: string;
  readonly place: string;
  readonly size: string;
}

export interface FormerOverhaul {
  /** The job's number. */
  readonly number: string;
  /** The day on which it was handed over. */
  readonly on: string;
  /** Hours that the engine had run when it came in then. */
  readonly hoursRun: Typed;
  readonly cells: readonly FormerCell[];
  /** Places that it left at another size than as made; missing where they were not written down. */
  readonly sizes?: readonly FormerPlaceSize[];
}
