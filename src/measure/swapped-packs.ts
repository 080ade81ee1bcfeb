/** @module Shim packs that look swapped between pumps: the exchange that best explains the packs as found. */
import { assign } from './assignment.ts';
import { greatestOdds } from './odds.ts';

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

export interface PackSwap {
  /** Pumps whose packs went round, each one's own pack now under the next, the last one's under the first. */
  readonly cycle: readonly string[];
  /** For each pump of the cycle, the pump under which its own pack was found. */
  readonly from: readonly string[];
  /** Odds of the swap against packs that sit where they belong. */
  readonly odds: number;
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

const cyclesOf = (columns: readonly number[]): readonly (readonly number[])[] => {
  const seen = new Set<number>();
  return columns.flatMap((_, start) => {
    const cycle: number[] = [];
    for (let at = start; !seen.has(at); at = columns[at] ?? at) {
      seen.add(at);
      cycle.push(at);
    }
    return cycle.length > 1 ? [cycle] : [];
  });
};

/** In how many ways packs can go round among a number of pumps out of all: n! / ((n - k)! k). */
const waysRound = (pumps: number, among: number): number => {
  let ways = 1 / among;
  for (let taken = 0; taken < among; taken += 1) ways *= pumps - taken;
  return ways;
};

/**
 * Exchanges of packs between pumps that explain the packs as found better than packs in their places do.
 *
 * A pack that was right when it was fitted is off by a normal error of one tolerance (setting and wear since);
 * one in fifty was never right. The likeliest assignment of found packs to pumps is found exactly; each round of
 * it is one exchange, and each move is paid for, so that equal packs are never exchanged for nothing.
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
export const swappedPacks = ({ places, needed, found, tolerance }: PackQuestion): readonly PackSwap[] => {
  const count = places.length;
  const cost = (pump: number, pack: number): number =>
    surprise((found[pack] ?? Number.NaN) - (needed[pump] ?? Number.NaN), tolerance);
  const move = -Math.log(swapChance) / 2;
  const columns = assign(
    places.map((_, pump) => places.map((_pack, pack) => cost(pump, pack) + (pump === pack ? 0 : move))),
  );
  const name = (index: number): string => places[index] ?? '';
  return cyclesOf(columns).map((cycle) => {
    const gain = cycle.reduce((sum, pump) => sum + cost(pump, pump) - cost(pump, columns[pump] ?? pump), 0);
    return {
      cycle: cycle.map(name),
      from: cycle.map((pump) => name(columns[pump] ?? pump)),
      odds: Math.min(greatestOdds, (swapChance / waysRound(count, cycle.length)) * Math.exp(gain)),
    };
  });
};
