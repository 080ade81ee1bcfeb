/** @module A part that seems to have grown, which worn parts do not, and no slip that would explain it. */
import type { Expectation } from '../expectation.ts';
import type { KnownSlip } from './slip.ts';

export const grownPart: KnownSlip = {
  name: 'part grown',
  says: 'a part past the size it was made to, and worn parts do not grow',
  /** A slip of no known kind, or a wrong size taken for the part's own, once in two hundred: common practice, no source. */
  chance: 0.005,
  of: 'readings',
};

/** Such a figure may lie anywhere about, per mm: common practice, no source. */
const anywhere = 0.5;

/**
 * Odds that something is wrong with a size which is past all that a part is made to.
 *
 * @param own   what the limits lead to expect
 * @param size  mm
 * @param u     standard uncertainty of the reading, mm
 * @param chance  of a slip of no known kind
 * @returns 0 where it has not grown beyond what its uncertainty covers
 * @source  Bayes's rule; common practice, no source
 */
export const grownOdds = (own: Expectation, size: number, u: number, chance: number): number =>
  own.grownBy(size) > 3 * u ? (chance * anywhere) / own.density(size) : 0;
