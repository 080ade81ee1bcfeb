/** @module Hours that a worn part has left: its wear so far carried on to its limit, as a distribution. */
import { integral } from '../quantity/gauss-legendre.ts';
import { normalCumulative } from '../quantity/normal.ts';

/** What is known of the wear of one size; plain figures, so that it can be sent and kept. */
export interface WearSoFar {
  readonly wears: 'smaller' | 'larger';
  /** As found, mm (or in the unit of whatever figure wears). */
  readonly size: number;
  /** Standard uncertainty of the size as found. */
  readonly uncertainty: number;
  /** As made it lay somewhere between these, nowhere likelier than elsewhere. */
  readonly made: { readonly least: number; readonly greatest: number };
  readonly limit: number;
  /** Hours run since new or last machined, above 0. */
  readonly run: number;
  /** Standard deviation of the logarithm of (rate to come / rate so far): about the share by which it varies. */
  readonly scatter: number;
}

/** How far out the size as found is followed, in standard uncertainties. */
const reach = 5.5;

/** Below this scatter the rate is taken as all but steady. */
const steady = 0.1;

/** Mean of how far a normal value lies above a bound, nothing where it lies below. */
const meanAbove = (value: number, uncertainty: number, bound: number): number => {
  const above = value - bound;
  if (uncertainty === 0) return Math.max(0, above);
  const z = above / uncertainty;
  const bell = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  return above * normalCumulative(z) + uncertainty * bell;
};

/** ∫ P(w × factor < most) dw from 0 to w, the factor lognormal about 1. */
const wornUpTo = (w: number, most: number, scatter: number): number => {
  if (w <= 0) return 0;
  if (scatter === 0) return Math.min(w, most);
  const z = Math.log(most / w) / scatter;
  return w * normalCumulative(z) + most * Math.exp((scatter * scatter) / 2) * normalCumulative(-z - scatter);
};

/** All sizes as if wear made them larger: from how little to how much it had been as made, and how far it may go. */
const along = ({ wears, size, made, limit }: WearSoFar) =>
  wears === 'larger'
    ? { found: size, from: made.least, to: made.greatest, end: limit }
    : { found: -size, from: -made.greatest, to: -made.least, end: -limit };

/** Sum of f over what the size may be, each weighed by how likely it is; split where f has corners. */
const overSizes = (
  found: number,
  uncertainty: number,
  corners: readonly number[],
  f: (size: number) => number,
): number => {
  if (uncertainty === 0) return f(found);
  const [low, high] = [found - reach * uncertainty, found + reach * uncertainty];
  const inside = corners.filter((corner) => corner > low && corner < high).toSorted((a, b) => a - b);
  const cuts = [low, ...inside, high];
  const weighed = (size: number): number => {
    const z = (size - found) / uncertainty;
    return (f(size) * Math.exp((-z * z) / 2)) / (uncertainty * Math.sqrt(2 * Math.PI));
  };
  let sum = 0;
  for (let index = 1; index < cuts.length; index += 1) {
    sum += integral(weighed, cuts[index - 1] ?? low, cuts[index] ?? high);
  }
  return sum;
};

/**
 * Probability that a worn part lasts longer than so many hours.
 *
 * hours = hours run × (limit - size) / ((size - size as made) × factor), the size as found normal, the size as made
 * anywhere within its limits alike (JCGM 100, 4.3.7), the factor by which the rate to come differs from the rate so far
 * lognormal about 1, and no part grown since it was made. The integral over the size as made is in closed form, that
 * over the size as found by Gauss and Legendre's points: good to 0.0001.
 *
 * @param wear   of one size, mm, hours
 * @param hours  0 and up
 * @returns 0 to 1, falling with the hours; at 0 h the probability that it is not past its limit yet; undefined where
 *   the size as found shows no wear that could be carried on
 * @source  ratio of wear left to rate (TM 5-3895-346-14: wear over hours, carried on to the next overhaul); the
 *   distribution derived from it by JCGM 101:2008; the factor is common practice, no source
 * @example wearLasts({ wears: 'smaller', size: 54.95, uncertainty: 0, made: { least: 54.98, greatest: 54.98 }, limit: 54.93, run: 6000, scatter: 0.25 }, 4000) // 0.5000
 */
export const wearLasts = (wear: WearSoFar, hours: number): number | undefined => {
  const { uncertainty, run, scatter } = wear;
  const { found, from, to, end } = along(wear);
  const width = to - from;
  const rest = hours > 0 ? run / hours : Infinity;
  // Where wear and rest are as the hours it is sheer, if the rate is steady.
  const sheer = scatter < steady ? [from, to].map((made) => end - (end - made) / (1 + rest)) : [];
  const corners = [from, to, end, ...sheer];
  const everWorn = (size: number): number =>
    width > 0 ? (Math.max(0, size - from) - Math.max(0, size - to)) / width : size > from ? 1 : 0;
  const lasting = (size: number): number => {
    if (size >= end) return 0;
    if (hours <= 0) return everWorn(size);
    const most = (end - size) * rest;
    if (width > 0) {
      return (wornUpTo(size - from, most, scatter) - wornUpTo(size - to, most, scatter)) / width;
    }
    const worn = size - from;
    if (worn <= 0) return 0;
    return scatter === 0 ? (worn < most ? 1 : 0) : normalCumulative(Math.log(most / worn) / scatter);
  };
  const worn =
    width > 0
      ? (meanAbove(found, uncertainty, from) - meanAbove(found, uncertainty, to)) / width
      : uncertainty > 0
        ? normalCumulative((found - from) / uncertainty)
        : everWorn(found);
  if (worn < 1e-6) return undefined;
  return Math.max(0, Math.min(1, overSizes(found, uncertainty, corners, lasting) / worn));
};
