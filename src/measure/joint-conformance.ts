/** @module Probability that all of several sizes conform, not each for itself: what a greatest or a least is judged by. */
import { normalCumulative, normalQuantile } from '../quantity/normal.ts';
import { studentCumulative } from '../quantity/student.ts';
import { covariance, effectiveFreedom, standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import { meanOverNormal } from './mean-over-normal.ts';

interface Interval {
  readonly least?: number;
  readonly greatest?: number;
}

/** Standard uncertainties from its limit at which a size cannot matter beside the others. */
const safe = 5.5;

/** What all have in common: the least covariance of any two, so that they are never taken to be more alike than they are. */
const commonVariance = (sizes: readonly Uncertain[]): number => {
  let common = Number.POSITIVE_INFINITY;
  for (const [index, a] of sizes.entries()) {
    for (const b of sizes.slice(index + 1)) common = Math.min(common, covariance(a, b));
  }
  return Math.max(0, common);
};

/** The one with least room for what is known of it. */
const nearest = (sizes: readonly Uncertain[], roomOf: (size: Uncertain) => number): readonly Uncertain[] => {
  const ratio = (size: Uncertain): number => roomOf(size) / standardUncertainty(size);
  return sizes.length === 0 ? [] : [sizes.reduce((a, b) => (ratio(b) < ratio(a) ? b : a))];
};

/** Probability that all lie on the right side of one bound; room is how far inside it each was measured. */
const allInside = (sizes: readonly Uncertain[], roomOf: (size: Uncertain) => number): number => {
  const near = sizes.filter((size) => roomOf(size) < safe * standardUncertainty(size));
  const close = near.length > 0 ? near : nearest(sizes, roomOf);
  const [first] = close;
  if (!first) return 1;
  const freedom = Math.min(...close.map(effectiveFreedom));
  if (close.length === 1) {
    const u = standardUncertainty(first);
    return u === 0 ? Number(roomOf(first) >= 0) : studentCumulative(roomOf(first) / u, freedom);
  }
  const common = commonVariance(close);
  const shared = Math.sqrt(common);
  const cells = close.map((size) => ({
    room: roomOf(size),
    own: Math.sqrt(Math.max(0, standardUncertainty(size) ** 2 - common)),
  }));
  const normal = meanOverNormal((z) => {
    let all = 1;
    for (const { room, own } of cells) {
      const left = room - shared * z;
      all *= own === 0 ? Number(left >= 0) : normalCumulative(left / own);
    }
    return all;
  });
  // As many degrees of freedom as the least known size has: a t value as far out as the normal one.
  return studentCumulative(normalQuantile(Math.min(1, Math.max(0, normal))), freedom);
};

/**
 * Probability that all of several sizes conform to the same limits.
 *
 * Sizes taken with one instrument share most of what is not known of them: if one is truly smaller than it looks, so
 * are the others, and the chance that all conform is far better than the product of their chances, though never
 * better than the worst of them. What all share is averaged over; what each has for itself is independent.
 *
 * Exact for sizes that share the same influences alike (one instrument, one part), to a thousandth; where they share
 * less with some than with others the least that any two share is taken, which errs to the side of too low (D. Slepian
 * 1962). With two limits the chances to fail at either are summed, which errs to the same side.
 *
 * @param sizes   one or more, in the unit of the bounds
 * @param bounds  one bound, both or none
 * @returns 0 to 1; for one size the same as conformanceProbability
 * @source  JCGM 106:2012, 7; C. W. Dunnett and M. Sobel, Biometrika 42 (1955) 258, for the equally correlated case
 */
export const jointConformance = (sizes: readonly Uncertain[], { least, greatest }: Interval): number => {
  const above = least === undefined ? 1 : allInside(sizes, ({ value }) => value - least);
  const below = greatest === undefined ? 1 : allInside(sizes, ({ value }) => greatest - value);
  return Math.max(0, above + below - 1);
};
