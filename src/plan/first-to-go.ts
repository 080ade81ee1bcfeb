/** @module Which of several parts goes first, and when: the least of their lives, whatever these are. */

import { hoursAt } from '../quantity/falls-to.ts';

/** Probability of lasting longer than so many hours, 0 and up; falls, and comes to nothing in the end. */
export type Survival = (run: number) => number;

/** Parts whose lives are alike and independent. */
export interface Alike {
  readonly survival: Survival;
  readonly count: number;
}

export interface FirstToGo {
  /** Of all together. */
  readonly curve: readonly { readonly hours: number; readonly share: number }[];
  /** Probability that it is one certain part of these that goes first, in the order given. */
  readonly shares: readonly number[];
}

/** Followed until one in ten thousand is left. */
const follow = 1e-4;
/** Steps in the logarithm of the hours, halved so often at most where more than this share goes in one of them. */
const steps = 24;
const mostGone = 0.02;
const halvings = 6;

const logarithm = (share: number): number => Math.log(Math.max(share, 1e-300));

/** The hours at which a curve of survival comes down to a probability, its hazard between two points a power of the hours. */
export const hoursOn = (curve: FirstToGo['curve'], probability: number): number => {
  const after = curve.findIndex(({ share }) => share <= probability);
  const [a, b] = [curve[after - 1], curve[after]];
  if (!a || !b) return 0;
  const [low, high, wanted] = [a.share, b.share, probability].map((share) => -logarithm(share));
  if (low === undefined || high === undefined || wanted === undefined) return 0;
  if (low <= 0 || a.hours <= 0) return a.hours + ((b.hours - a.hours) * (wanted - low)) / (high - low);
  return a.hours * (b.hours / a.hours) ** (Math.log(wanted / low) / Math.log(high / low));
};

export const survivalOfAll =
  (parts: readonly Alike[]): Survival =>
  (run) =>
    Math.exp(parts.reduce((sum, { survival, count }) => sum + count * logarithm(survival(run)), 0));

/** Hazards summed up to so many hours, of each part and of all. */
interface At {
  readonly run: number;
  readonly each: readonly number[];
  readonly left: number;
}

const at = (parts: readonly Alike[], run: number): At => {
  const each = parts.map(({ survival }) => -logarithm(survival(run)));
  return {
    run,
    each,
    left: Math.exp(-each.reduce((all, one, index) => all + one * (parts[index]?.count ?? 0), 0)),
  };
};

/** What lies between two of them, close enough that little goes from one to the next. */
const halved = (parts: readonly Alike[], from: At, to: At, times: number): readonly At[] => {
  if (times === 0 || from.run === 0 || from.left - to.left <= mostGone) return [to];
  const middle = at(parts, Math.sqrt(from.run * to.run));
  return [...halved(parts, from, middle, times - 1), ...halved(parts, middle, to, times - 1)];
};

/**
 * The least of independent lives: its survival is the product of theirs.
 *
 * Shares are summed over 24 steps in the logarithm of the hours, halved until no more than 0.02 goes in one, within each
 * of which the parts' hazards keep their proportion: exact where they keep it throughout, as with exponential lives or
 * Weibull's of one shape, and good to 0.001 else. What goes at 0 h (a part that may be past its limit already) goes in a
 * step of its own.
 *
 * @param parts  at least one
 * @param start  hours from which to look about
 * @source  competing risks, any text on reliability
 */
export const firstToGo = (parts: readonly Alike[], start: number): FirstToGo => {
  const survival = survivalOfAll(parts);
  const atOnce = survival(0);
  const end = Math.max(1, hoursAt(survival, follow, start));
  const earliest = atOnce > 0.5 ? hoursAt(survival, atOnce - 1e-3, start) : 0;
  const begin = Math.max(end * 1e-6, Math.min(end / 2, earliest));
  const grid = Array.from({ length: steps + 1 }, (_, step) => begin * (end / begin) ** (step / steps));

  const coarse = grid.map((run) => at(parts, run));
  const points = coarse.flatMap((to, index) => {
    const from = coarse[index - 1];
    return from ? halved(parts, from, to, halvings) : [at(parts, 0), to];
  });

  const shares = parts.map(() => 0);
  let [before, left] = [parts.map(() => 0), 1];
  for (const { each, left: share } of points) {
    const grown = each.map((hazard, index) => Math.max(0, hazard - (before[index] ?? 0)));
    const sum = grown.reduce((all, one, index) => all + one * (parts[index]?.count ?? 0), 0);
    for (const [index, one] of grown.entries()) {
      if (sum > 0) shares[index] = (shares[index] ?? 0) + ((left - share) * one) / sum;
    }
    [before, left] = [[...each], share];
  }
  // What is left after the last step goes as what went.
  const total = shares.reduce((all, share, index) => all + share * (parts[index]?.count ?? 0), 0);
  const curve = points.map(({ run, left: share }) => ({ hours: run, share }));
  return { curve, shares: shares.map((share) => share / total) };
};
