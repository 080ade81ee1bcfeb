/** @module What honest sizes may show in a cell that was measured at a former overhaul: worn since, and not grown back. */
import type { Characteristic } from '../engine/engine-type.ts';
import type { Expectation } from './expectation.ts';

/** What is known of a cell from a former overhaul. */
export interface Since {
  /** The size that it was left with, mm. */
  readonly size: number;
  /** Standard uncertainty of that and of the reading now, together, mm. */
  readonly u: number;
  readonly wears: Characteristic['wears'];
  /** Share of the wear that the manual allows which the hours since lead to expect. */
  readonly share: number;
  /** Chance that another part has been fitted since, or that it has been machined, and nobody wrote it down. */
  readonly changed: number;
}

/** A part is changed between two overhauls and nobody wrote it down, once in fifty: common practice, no source. */
const changedUnnoted = 0.02;

/** Two in ten wear as if nobody knew the hours: common practice, no source. */
const fast = 0.2;
/** One in thirty has been seized or ruined since, as of all parts: common practice, no source. */
const ruined = 0.03;
/** No size repeats itself more closely over the years, mm: common practice, no source. */
const finest = 0.002;
/** Where hours or life are not known, half of what the manual allows is nothing out of the ordinary. */
const usualShare = 0.5;
const leastShare = 0.05;
/** Seldom is a size so far from all expectation that its neighbours are not to be believed at all. */
const leastRoom = 0.002;

/** Share of the wear allowed that so many hours lead to expect: 0.05 to 2; half where they are not known. */
export const wearShare = (hours: number | undefined, life: number | undefined): number =>
  hours === undefined || life === undefined || !(life > 0)
    ? usualShare
    : Math.min(2, Math.max(leastShare, hours / life));

const decaying = (y: number, mean: number): number => Math.exp(-y / mean) / mean;

/** Half a bell below nothing, an exponential above it; both together come to one. */
const wornSince = (y: number, mean: number, u: number): number => {
  const below = (u * Math.sqrt(Math.PI / 2)) / mean;
  return (y < 0 ? Math.exp(-0.5 * (y / u) ** 2) / mean : decaying(y, mean)) / (1 + below);
};

const ruinSince = (y: number, scale: number): number =>
  y < 0 ? 0 : (Math.exp(-0.5 * (y / scale) ** 2) * Math.sqrt(2 / Math.PI)) / scale;

/**
 * Honest sizes of a cell that was measured at a former overhaul.
 *
 * @param own    what the limits lead to expect of it
 * @param since  what is known from then
 * @returns density per mm: worn since by what the hours lead to expect, seldom by much more, never grown back but for
 *   what readings are uncertain by; or, where the part was changed, as `own` has it
 * @source  worn parts do not grow; the shapes are common practice, no source
 */
export const sinceFormer = (own: Expectation, since: Since): Expectation => {
  const { size: then, share, wears, changed } = since;
  const signs: readonly (1 | -1)[] = wears === 'either' ? [1, -1] : [wears === 'larger' ? 1 : -1];
  const [first = 1] = signs;
  const mean = Math.max(finest, own.ordinary * share);
  // As of any part: see expectation.ts.
  const anyMean = Math.max(mean, own.ordinary / 2);
  const u = Math.max(finest, since.u);
  const same = (size: number): number =>
    signs.reduce((sum, sign) => {
      const y = sign * (size - then);
      const worn = (1 - fast) * wornSince(y, mean, u) + fast * wornSince(y, anyMean, u);
      return sum + (1 - ruined) * worn + ruined * ruinSince(y, 2 * own.ordinary);
    }, 0) / signs.length;
  const notGrown = (size: number): number =>
    Math.max(...signs.map((sign) => Math.exp(-0.5 * (Math.min(0, sign * (size - then)) / u) ** 2)));
  const density = (size: number): number => (1 - changed) * same(size) + changed * own.density(size);
  const usual = same(then + first * mean);
  return {
    density,
    peak: (1 - changed) * (1 / mean + ruined / own.ordinary) + changed * own.peak,
    usual: (1 - changed) * usual + changed * own.usual,
    ordinary: mean,
    middle: then + (signs.length > 1 ? 0 : first * mean),
    grownBy: (size) => Math.max(own.grownBy(size), signs.length > 1 ? 0 : Math.max(0, first * (then - size))),
    // How much a place has worn, its other cells know better; that none has grown back holds for each.
    room: (size) => own.room(size) * Math.max(leastRoom, (1 - changed) * notGrown(size) + changed),
    roomByOthers: (size) =>
      own.roomByOthers(size) * Math.max(leastRoom, (1 - changed) * Math.min(1, same(size) / usual) + changed),
    machinedTo: (size) => changed > 0.5 && own.machinedTo(size),
  };
};

/**
 * Chance that the part was changed, as the other cells of its place tell.
 *
 * @param told  of each other cell, its density as the same part and as any part, per mm
 * @returns 0.02 where there are none; hardly any where others lie as the same part would
 * @source  Bayes's rule; cells of one place speak together, so that no more than three are counted
 */
export const changedAsTold = (told: readonly { readonly same: number; readonly any: number }[]): number => {
  if (told.length === 0) return changedUnnoted;
  const mean = told.reduce((sum, { same, any }) => sum + Math.log(any / same), 0) / told.length;
  const odds = (changedUnnoted / (1 - changedUnnoted)) * Math.exp(mean * Math.min(3, told.length));
  return Math.min(0.999, Math.max(1e-5, odds / (1 + odds)));
};
