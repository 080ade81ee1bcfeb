/** @module The step from a place to those next to it, and how likely it is within a limit. */
import { normalCumulative, normalQuantile } from '../quantity/normal.ts';
import { studentCumulative } from '../quantity/student.ts';
import { effectiveFreedom, type Uncertain } from '../quantity/uncertain.ts';
import { greatestRange, ownOf } from './form.ts';
import { meanOverNormal } from './mean-over-normal.ts';

/**
 * Probability that a size lies within a limit of each of its neighbours.
 *
 * Both steps have the size in the middle in them, so that they are not independent: it is averaged over, and given it
 * the neighbours are. What all share is out of every step.
 *
 * @param here        in any one unit
 * @param neighbours  one or two as a rule, in that unit
 * @param limit       greatest step allowed, in that unit
 * @returns 0 to 1; 0 where the limit is below nothing, 1 without neighbours
 * @source  JCGM 106:2012, 7; the integral is written out from independent normal values
 */
export const stepAtMost = (here: Uncertain, neighbours: readonly Uncertain[], limit: number): number => {
  if (limit < 0) return 0;
  if (neighbours.length === 0) return 1;
  const [own = 0, ...others] = ownOf([here, ...neighbours]);
  const all = meanOverNormal((z) => {
    const middle = here.value + own * z;
    let within = 1;
    for (const [index, { value }] of neighbours.entries()) {
      const u = others[index] ?? 0;
      const off = middle - value;
      within *=
        u === 0
          ? Number(Math.abs(off) <= limit)
          : normalCumulative((off + limit) / u) - normalCumulative((off - limit) / u);
    }
    return within;
  });
  const bounded = Math.min(1, Math.max(0, all));
  if (bounded <= 0 || bounded >= 1) return bounded;
  // As few degrees of freedom as are behind the repeats: a t value as far out as the normal one.
  const widest = greatestRange(
    neighbours.map((next) => [here, next]),
    'widest step',
  );
  return studentCumulative(normalQuantile(bounded), effectiveFreedom(widest));
};
