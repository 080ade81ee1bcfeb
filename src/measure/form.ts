/** @module Ovality and taper: the greatest range of sizes within groups, how well it is known, and how likely it is in limits. */
import { normalCumulative, normalQuantile } from '../quantity/normal.ts';
import { studentCumulative } from '../quantity/student.ts';
import {
  covariance,
  effectiveFreedom,
  minus,
  standardUncertainty,
  type Uncertain,
} from '../quantity/uncertain.ts';
import { greatest } from './extreme.ts';
import { meanOverNormal } from './mean-over-normal.ts';

/** Nearer than this to the widest range, in its standard uncertainties, a pair may truly be the widest. */
const inTheRace = 4.5;

interface Pair {
  readonly range: Uncertain;
  readonly u: number;
}

/** Every size less every other of its group, the larger less the smaller. */
const pairsOf = (sizes: readonly Uncertain[]): readonly Pair[] =>
  sizes.flatMap((a, index) =>
    sizes.slice(index + 1).map((b) => {
      const range = a.value >= b.value ? minus(a, b) : minus(b, a);
      return { range, u: standardUncertainty(range) };
    }),
  );

const widestOf = (pairs: readonly Pair[]): Pair | undefined =>
  pairs.reduce<Pair | undefined>((a, b) => (a && a.range.value >= b.range.value ? a : b), undefined);

const negative = ({ value, terms }: Uncertain): Uncertain => ({
  value: -value,
  terms: terms.map((term) => ({ ...term, share: -term.share })),
});

/**
 * The greatest range within any of several groups of sizes.
 *
 * Ovality takes the axes of each plane as a group, taper the planes along each axis. Errors that all sizes share are
 * gone. A range is the greatest of all differences, each taken both ways round, so that a round part measured with a
 * noisy instrument, which never reads quite round, is known as little as it should be.
 *
 * @param groups  sizes in any one unit; groups of one have no range
 * @param name    of the influence for which range is truly the greatest
 * @returns the greatest range as measured, 0 or more; of no pair at all, 0 and known exactly
 * @source  ovality and taper: common practice, no source; two-point sizes: ISO 14405-1; see greatest
 */
export const greatestRange = (groups: readonly (readonly Uncertain[])[], name: string): Uncertain => {
  const pairs = groups.flatMap(pairsOf);
  const widest = widestOf(pairs);
  if (!widest) return { value: 0, terms: [] };
  const close = pairs.filter(
    ({ range, u }) => widest.range.value - range.value <= inTheRace * (widest.u + u),
  );
  const bothWays = close.flatMap(({ range, u }) =>
    range.value + widest.range.value <= inTheRace * (widest.u + u) ? [range, negative(range)] : [range],
  );
  return greatest(bothWays, name);
};

/** What a group's sizes do not share: their own standard uncertainties, what is common to all taken out. */
export const ownOf = (sizes: readonly Uncertain[]): readonly number[] => {
  let common = Number.POSITIVE_INFINITY;
  for (const [index, a] of sizes.entries()) {
    for (const b of sizes.slice(index + 1)) common = Math.min(common, covariance(a, b));
  }
  return sizes.map((size) => Math.sqrt(Math.max(0, standardUncertainty(size) ** 2 - common)));
};

/** Probability that the range of independent normal values is no more than a limit. */
const rangeAtMost = (sizes: readonly Uncertain[], limit: number): number => {
  const own = ownOf(sizes);
  const [a, b] = sizes;
  if (sizes.length === 2 && a && b) {
    const u = Math.hypot(...own);
    const d = a.value - b.value;
    if (u === 0) return Math.abs(d) <= limit ? 1 : 0;
    return Math.max(0, normalCumulative((limit - d) / u) - normalCumulative((-limit - d) / u));
  }
  // Over which of them is the least, and where: all others lie above it by no more than the limit.
  const least = (index: number, x: number): number => {
    let all = 1;
    for (const [other, size] of sizes.entries()) {
      if (other === index) continue;
      const u = own[other] ?? 0;
      const above = x - size.value;
      all *=
        u === 0
          ? Number(above < 0 && above + limit >= 0)
          : normalCumulative((above + limit) / u) - normalCumulative(above / u);
    }
    return all;
  };
  let sum = 0;
  for (const [index, size] of sizes.entries()) {
    const u = own[index] ?? 0;
    sum += meanOverNormal((z) => least(index, size.value + u * z));
  }
  return Math.min(1, Math.max(0, sum));
};

/**
 * Probability that the greatest range within several groups is no more than a limit.
 *
 * Worked out over the whole distribution of the range, which is lopsided near nothing, not by a normal value in its
 * stead. Groups are taken as independent once what their sizes share is out, which holds for cells of one scheme.
 *
 * @param groups  sizes in any one unit
 * @param limit   greatest range allowed, in that unit
 * @returns 0 to 1; 0 where the limit is below nothing
 * @source  distribution of the range: H. O. Hartley, Biometrika 32 (1942) 334, for sizes that differ in mean and
 *   spread; JCGM 106:2012, 7
 */
export const formAtMost = (groups: readonly (readonly Uncertain[])[], limit: number): number => {
  if (limit < 0) return 0;
  let all = 1;
  for (const group of groups) if (group.length > 1) all *= rangeAtMost(group, limit);
  const widest = widestOf(groups.flatMap(pairsOf));
  if (!widest || all <= 0 || all >= 1) return Math.min(1, all);
  // As few degrees of freedom as are behind the repeats: a t value as far out as the normal one.
  return studentCumulative(normalQuantile(all), effectiveFreedom(widest.range));
};
