/** @module Shim packs for all pumps together, chosen exactly from the shims in the box. */
import { type Millimetres, mm, type Radians, radians } from '../quantity/brand.ts';
import { formatFigure } from '../quantity/figure.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { Box, Candidate } from './shim-pack-candidates.ts';
import { type BestPacks, bestPacks } from './shim-pack-ranks.ts';

export interface BoxShim {
  readonly thickness: Millimetres;
  readonly count: number;
}

export interface PackNeed {
  readonly pump: string;
  /** Datum dimension less the depth measured at the timing point. */
  readonly needed: Millimetres;
}

export interface ShimPack {
  readonly pump: string;
  readonly needed: Millimetres;
  /** Thickest first. */
  readonly shims: readonly Millimetres[];
  readonly thickness: Millimetres;
  /** Fitted less needed. */
  readonly error: Millimetres;
  /** The same as crank angle; positive is early (advanced). */
  readonly timingError: Radians;
}

export interface PackSet {
  readonly packs: readonly ShimPack[];
  readonly greatestError: Millimetres;
  /** Greatest less least error, cylinder to cylinder. */
  readonly spread: Millimetres;
  readonly shimsUsed: number;
  /** Whether it is certain that no set of packs is better; false only when the bound on effort was reached. */
  readonly proved: boolean;
  /** What the fitter should know of the box: a pump out of reach, too few shims, a set not proved the best. */
  readonly notes: readonly string[];
}

export interface ShimQuestion {
  readonly needs: readonly PackNeed[];
  readonly box: readonly BoxShim[];
  /** At most so many shims in one pack, 1 and up. */
  readonly mostShims: number;
  /** Crank angle per millimetre of shim, unsigned. */
  readonly rate: Radians;
  readonly addingShims: 'retards' | 'advances';
  /** Bound on the search, in packs looked at; the default takes some seconds at the worst. */
  readonly effort?: number;
}

/** Steps in a millimetre: 10 nm, in which tenths of a micrometre and of a ten-thousandth of an inch are whole. */
const stepsPerMillimetre = 100_000;
const thickest = 20;
const deepest = 50;
const usualEffort = 30_000_000;

const stepsOf = (length: number): number => Math.round(length * stepsPerMillimetre);
const lengthOf = (steps: number): Millimetres => mm(steps / stepsPerMillimetre);
const written = (length: number): string => `${formatFigure(length, 3)} mm`;

/** What makes no sense in the question, or undefined. */
const nonsense = ({ needs, box, mostShims, rate }: ShimQuestion): Answer<never> | undefined => {
  if (needs.length === 0)
    return refuse('no pump needs a pack', 'pumps', 'give the pack needed for each pump');
  const pumps = new Set<string>();
  for (const { pump, needed } of needs) {
    if (pumps.has(pump)) return refuse('a pump is given twice', pump, 'give each pump once');
    pumps.add(pump);
    if (!Number.isFinite(needed) || Math.abs(needed) > deepest) {
      return refuse('the pack needed is no usable length', pump, 'check the depth and its unit');
    }
    if (needed < 0) {
      return refuse(
        `the pack needed is ${written(needed)}, less than nothing`,
        pump,
        'measure the depth again and check the datum dimension and the timing point',
      );
    }
  }
  for (const { thickness, count } of box) {
    if (!(thickness > 0 && thickness <= thickest) || stepsOf(thickness) === 0) {
      return refuse(
        `a shim of ${thickness} mm`,
        'box',
        `check the unit: shims are above 0 and up to ${thickest} mm`,
      );
    }
    if (!Number.isInteger(count) || count < 0) {
      return refuse(`${count} shims of ${written(thickness)}`, 'box', 'count the shims: 0, 1, 2 …');
    }
  }
  if (!box.some(({ count }) => count > 0)) {
    return refuse('there is no shim in the box', 'box', 'put in the shims that are to hand');
  }
  if (!Number.isInteger(mostShims) || mostShims < 1) {
    return refuse(`at most ${mostShims} shims in a pack`, 'shims in a pack', 'give a whole number from 1 up');
  }
  if (!Number.isFinite(rate) || rate <= 0) {
    return refuse(
      'the rate is not above 0',
      'rate',
      'give crank degrees per millimetre of shim, such as 0.95 deg/mm',
    );
  }
  return undefined;
};

const boxOf = (shims: readonly BoxShim[], mostShims: number): Box => {
  const counts = new Map<number, number>();
  for (const { thickness, count } of shims) {
    if (count > 0) counts.set(stepsOf(thickness), (counts.get(stepsOf(thickness)) ?? 0) + count);
  }
  const rows = [...counts].sort(([one], [other]) => other - one);
  return { thicknesses: rows.map(([steps]) => steps), counts: rows.map(([, count]) => count), mostShims };
};

const thickestPack = ({ thicknesses, counts, mostShims }: Box): readonly number[] =>
  thicknesses
    .flatMap((steps, at) => Array<number>(Math.min(counts[at] ?? 0, mostShims)).fill(steps))
    .slice(0, mostShims);

/**
 * Shim packs for all pumps together, from the shims in the box, each used once.
 *
 * Of all sets of packs it gives one with the least greatest error (without its sign); of those with the least
 * spread (greatest less least signed error); of those with the fewest shims in all; of those with the least
 * sum of errors (without their signs). What is still equal is settled by the search, which takes pumps by
 * need and name and shims by thickness, so that the order in which pumps or shims are given changes nothing.
 * A pack may be empty. Lengths are compared in steps of 10 nm.
 *
 * The choice is proved, not tried out: branch and bound over the stock of each thickness. Should its bound on
 * effort be reached, `proved` is false and a note says how much better a set could be.
 *
 * @param question  needed 0 to 50 mm for each pump; shims above 0 and up to 20 mm with whole counts; rate > 0
 * @returns packs in the order of the needs; errors in mm (fitted less needed) and radians (positive is early)
 * @source  an exhaustive search and a mixed-integer program in the tests; ranks: common practice, no source
 * @example
 * chooseShims({
 *   needs: [{ pump: 'pump.1', needed: mm(1.23) }],
 *   box: [{ thickness: mm(0.6), count: 3 }],
 *   mostShims: 4,
 *   rate: degrees(0.95),
 *   addingShims: 'retards',
 * }).value.greatestError // 0.03 mm
 */
export const chooseShims = (question: ShimQuestion): Answer<PackSet> => {
  const refused = nonsense(question);
  if (refused) return refused;
  const { needs, mostShims, rate, addingShims, effort = usualEffort } = question;
  const box = boxOf(question.box, mostShims);
  const inTurn = needs
    .map((need, at) => ({ need, at, steps: stepsOf(need.needed) }))
    .sort((one, other) => one.steps - other.steps || (one.need.pump < other.need.pump ? -1 : 1));
  const best = bestPacks(
    box,
    inTurn.map(({ steps }) => steps),
    effort,
  );
  const sign = addingShims === 'retards' ? -1 : 1;
  const packOf = ({ pump, needed }: PackNeed, { shims, error }: Candidate): ShimPack => ({
    pump,
    needed,
    shims: shims.map((at) => lengthOf(box.thicknesses[at] ?? 0)),
    thickness: lengthOf(stepsOf(needed) + error),
    error: lengthOf(error),
    // Adding 0 keeps a packet that fits exactly from being 'minus nothing' early.
    timingError: radians((sign * error * rate) / stepsPerMillimetre + 0),
  });
  const packs = needs.flatMap((need, at) => {
    const pack = best.packs[inTurn.findIndex((one) => one.at === at)];
    return pack ? [packOf(need, pack)] : [];
  });
  const errors = packs.map(({ error }) => stepsOf(error));
  const greatest = Math.max(...errors.map(Math.abs));
  return answer({
    packs,
    greatestError: lengthOf(greatest),
    spread: lengthOf(Math.max(...errors) - Math.min(...errors)),
    shimsUsed: packs.reduce((sum, { shims }) => sum + shims.length, 0),
    proved: best.unproved.length === 0,
    notes: notesOn(needs, box, best, greatest),
  });
};

const notesOn = (
  needs: readonly PackNeed[],
  box: Box,
  best: BestPacks,
  greatest: number,
): readonly string[] => {
  const notes: string[] = [];
  const stack = thickestPack(box);
  const reach = stack.reduce((sum, steps) => sum + steps, 0);
  for (const { pump, needed } of needs) {
    if (stepsOf(needed) <= reach) continue;
    notes.push(
      `${pump} needs ${written(needed)}, and the ${stack.length} thickest shims in the box make ${written(lengthOf(reach))}`,
    );
  }
  if (best.errorBound > best.errorAlone) {
    notes.push(
      `the box runs short: with the whole box to itself each pump could come within ${written(lengthOf(best.errorAlone))}, together they come within ${written(lengthOf(greatest))}`,
    );
  }
  if (best.unproved.length > 0) {
    notes.push(
      `the search reached its bound of effort: not proved the best in ${best.unproved.join(', ')}; no set comes nearer than ${written(lengthOf(best.errorBound))}`,
    );
  }
  return notes;
};
