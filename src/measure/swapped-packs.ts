/** @module Shim packs that look swapped between pumps: the exchange that best explains the packs as found. */
import { type Exchange, exchanges } from './exchange.ts';

export interface PackQuestion {
  /** The pumps, in any order. */
  readonly places: readonly string[];
  /** Pack that each pump needs, mm: datum dimension less the depth measured. */
  readonly needed: readonly number[];
  /** Pack found under each pump, mm. */
  readonly found: readonly number[];
  /** How far a fitted pack may be from the pack needed, mm. */
  readonly tolerance: number;
}

/** Packs are swapped in one overhaul in fifty: common practice, no source. */
const swapChance = 0.02;
/** One pack in fifty was never right, by up to about a millimetre: common practice, no source. */
const neverRight = 0.02;

/** -ln of the density of a found pack where another is needed. */
const surprise = (off: number, spread: number): number => {
  const bell = Math.exp(-0.5 * (off / spread) ** 2) / (spread * Math.sqrt(2 * Math.PI));
  return -Math.log((1 - neverRight) * bell + neverRight / (Math.PI * (1 + off ** 2)));
};

/**
 * Exchanges of packs between pumps that explain the packs as found better than packs in their places do.
 *
 * A pack that was right when it was fitted is off by a normal error of one tolerance (setting and wear since);
 * one in fifty was never right.
 *
 * @param question  pumps with packs needed and found, mm; tolerance above 0, mm
 * @returns exchanges, each with its odds, also those below any threshold; none for fewer than two pumps
 * @source  Bayes's rule; the error model is common practice, no source
 * @example swappedPacks({
 *   places: ['pump.1', 'pump.2', 'pump.3'],
 *   needed: [0.6, 1, 0.8],
 *   found: [1.02, 0.61, 0.79],
 *   tolerance: 0.05,
 * }).map(({ cycle }) => cycle) // [['pump.1', 'pump.2']]
 */
export const swappedPacks = ({ places, needed, found, tolerance }: PackQuestion): readonly Exchange[] =>
  exchanges({
    places,
    chance: swapChance,
    surprise: (pump, pack) => surprise((found[pack] ?? Number.NaN) - (needed[pump] ?? Number.NaN), tolerance),
  });
