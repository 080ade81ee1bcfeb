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

/** How far out the size as found is followed, in standard uncertainties, where its integral is split at corners. */
const reach = 5.5;

/** How far out normal values are followed where they are summed at even steps. */
const evenReach = 4.5;

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

/**
 * Mean of f over a standard normal value, at even steps.
 *
 * Of a curve no steeper than a normal one of standard deviation 1/slope the error is exp(-2π²/(step² (1 + slope²))),
 * which the step keeps to a few in a million (Poisson's summation).
 */
const overNormal = (slope: number, f: (z: number) => number): number => {
  const step = 1.25 / Math.sqrt(1 + slope * slope);
  let sum = f(0);
  let weights = 1;
  for (let z = step; z < evenReach; z += step) {
    const weight = Math.exp((-z * z) / 2);
    sum += weight * (f(z) + f(-z));
    weights += 2 * weight;
  }
  return sum / weights;
};

/** Sum of f over what the size may be, each weighed by how likely it is; split where f has corners. */
const overSizes = (
  found: number,
  uncertainty: number,
  corners: readonly number[],
  f: (size: number) => number,
): number => {
  const [low, high] = [found - reach * uncertainty, found + reach * uncertainty];
  const cuts = [low, ...corners.toSorted((a, b) => a - b), high];
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

/** Mean of P(size as found < x) over x between two bounds. */
const below = (found: number, uncertainty: number, from: number, to: number): number =>
  to - from > 1e-6 * uncertainty
    ? (meanAbove(to, uncertainty, found) - meanAbove(from, uncertainty, found)) / (to - from)
    : normalCumulative(((from + to) / 2 - found) / uncertainty);

/**
 * P(worn and lasting), by the rate to come: at each, the size must lie between the size as made and the one from which
 * it just lasts, which moves evenly with the size as made.
 */
const overRates = (
  { found, from, to, end }: ReturnType<typeof along>,
  { uncertainty, scatter }: WearSoFar,
  rest: number,
  slope: number,
): number => {
  if (from >= end) return 0;
  const last = Math.min(to, end);
  const share = to > from ? (last - from) / (to - from) : 1;
  const notPast = (z: number): number => {
    const part = rest === Infinity ? 1 : rest / (rest + Math.exp(scatter * z));
    return below(found, uncertainty, from + (end - from) * part, last + (end - last) * part);
  };
  const lasting = scatter === 0 || rest === Infinity ? notPast(0) : overNormal(slope, notPast);
  return share * (lasting - below(found, uncertainty, from, last));
};

/**
 * Probability that a worn part lasts longer than so many hours.
 *
 * hours = hours run × (limit - size) / ((size - size as made) × factor), the size as found normal, the size as made
 * anywhere within its limits alike (JCGM 100, 4.3.7), the factor by which the rate to come differs from the rate so far
 * lognormal about 1, and no part grown since it was made. The integral over the size as made is in closed form, and so is
 * one of those over the size as found and the factor; the other, whichever is smoother, is summed at even steps, or by
 * Gauss and Legendre's points between corners: good to 0.0001.
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
  const sizes = along(wear);
  const { found, from, to, end } = sizes;
  const width = to - from;
  const rest = hours > 0 ? run / hours : Infinity;
  const everWorn = (size: number): number =>
    width > 0 ? (Math.max(0, size - from) - Math.max(0, size - to)) / width : size > from ? 1 : 0;
  const worn =
    width > 0
      ? (meanAbove(found, uncertainty, from) - meanAbove(found, uncertainty, to)) / width
      : uncertainty > 0
        ? normalCumulative((found - from) / uncertainty)
        : everWorn(found);
  if (worn < 1e-6) return undefined;
  const lasting = (size: number): number => {
    if (size >= end) return 0;
    if (hours <= 0) return everWorn(size);
    const most = (end - size) * rest;
    if (width > 0) {
      return (wornUpTo(size - from, most, scatter) - wornUpTo(size - to, most, scatter)) / width;
    }
    const far = size - from;
    if (far <= 0) return 0;
    return scatter === 0 ? (far < most ? 1 : 0) : normalCumulative(Math.log(most / far) / scatter);
  };
  const all = (): number => {
    if (uncertainty === 0) return lasting(found);
    // How steep the size from which it just lasts is in the factor's normal value, in standard uncertainties.
    const slope = (Math.max(0, end - from) * scatter) / (4 * uncertainty);
    if (slope <= 3 || hours <= 0) return overRates(sizes, wear, rest, slope);
    // Where wear and rest are as the hours it is sheer, if the rate is steady.
    const sheer = scatter < steady ? [from, to].map((made) => end - (end - made) / (1 + rest)) : [];
    const corners = [from, to, end, ...sheer].filter(
      (corner) => Math.abs(corner - found) < reach * uncertainty,
    );
    if (corners.length === 0) {
      const least = found - (found > to ? to : from) - 2 * uncertainty;
      const steep = (uncertainty / scatter) * (1 / least + 1 / (end - found - 2 * uncertainty));
      return overNormal(steep, (z) => lasting(found + z * uncertainty));
    }
    if (slope <= 30) return overRates(sizes, wear, rest, slope);
    return overSizes(found, uncertainty, corners, lasting);
  };
  return Math.max(0, Math.min(1, all() / worn));
};
