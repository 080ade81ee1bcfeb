/** @module The figures of one place written down at another: equal to the last digit, cell by cell. */
import type { KnownSlip } from './slip.ts';

export const copiedRow: KnownSlip = {
  name: 'row copied',
  says: 'the row of another place copied',
  /** Once in two hundred rows: common practice, no source. */
  chance: 0.005,
  of: 'rows',
};

export interface RowsAlike {
  /** Cells that say the same in both rows; all of them do. */
  readonly cells: number;
  /** One step of the last digit, mm. */
  readonly step: number;
  /** How far levels of places honestly lie apart, mm. */
  readonly apart: number;
  /** Standard deviation of one cell about its place, mm. */
  readonly noise: number;
  /** How many rows it could have been copied from. */
  readonly rows: number;
}

/** Chance of the same digit from a bell of that deviation, at most nearly sure. */
const sameDigit = (step: number, deviation: number): number =>
  Math.min(0.9, step / (deviation * Math.sqrt(2 * Math.PI)));

/**
 * Odds that a row was copied against rows that are alike by chance.
 *
 * @param alike   two rows that say the same throughout
 * @param chance  how often a row is copied
 * @returns odds; low where the steps are coarse or the cells few
 * @source  Bayes's rule
 * @example copiedOdds({ cells: 6, step: 0.001, apart: 0.05, noise: 0.002, rows: 2 }, 0.005) > 1000 // true
 */
export const copiedOdds = ({ cells, step, apart, noise, rows }: RowsAlike, chance: number): number =>
  chance /
  Math.max(1, rows) /
  (sameDigit(step, apart) * sameDigit(step, Math.SQRT2 * noise) ** Math.max(0, cells - 1));
