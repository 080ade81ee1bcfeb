/** @module A row of a table that a person made, and what is wrong in it, before its columns mean anything. */
import type { Refusal } from '../quantity/refusal.ts';

export interface TableRow {
  /** The line or row on which it begins, 1 and up. */
  readonly line: number;
  /** Blanks at the ends taken off. */
  readonly fields: readonly string[];
  /** Cells that hold something other than text or a figure, by column from 0, with what to do about it. */
  readonly wrong?: ReadonlyMap<number, Refusal>;
}

/** What is wrong in a file of rows, and in which: its line in CSV, its row in a sheet, its place in a JSON list, 1 and up. */
export interface RowTrouble extends Refusal {
  /** 0 where it is about the whole file. */
  readonly row: number;
  /** A row in error is left out; a warning says what was taken for granted. */
  readonly weight: 'error' | 'warning';
}
