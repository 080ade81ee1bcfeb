/** @module Things that went to one another's places: the exchange that explains best what was found where. */
import { assign } from './assignment.ts';
import { greatestOdds } from './odds.ts';

export interface ExchangeQuestion {
  /** Names of the places, in any order. */
  readonly places: readonly string[];
  /** -ln of the density of what was found at one place (second) if it belongs to another (first). */
  readonly surprise: (owner: number, found: number) => number;
  /** How often things are exchanged, of all such sets. */
  readonly chance: number;
}

export interface Exchange {
  /** Places that exchanged, each one's own now at the next, the last one's at the first. */
  readonly cycle: readonly string[];
  /** For each place of the cycle, the place at which its own was found. */
  readonly from: readonly string[];
  /** Odds of the exchange against things that sit where they belong. */
  readonly odds: number;
}

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

/** In how many ways things can go round among a number of places out of all: n! / ((n - k)! k). */
const waysRound = (places: number, among: number): number => {
  let ways = 1 / among;
  for (let taken = 0; taken < among; taken += 1) ways *= places - taken;
  return ways;
};

/**
 * Exchanges that explain what was found better than things in their places do.
 *
 * The likeliest assignment is found exactly; each round of it is one exchange, and each move is paid for, so that
 * equal things are never exchanged for nothing.
 *
 * @param question  two or more places; surprises finite; chance above 0 and below 1
 * @returns exchanges, each with its odds, also those below any threshold
 * @source  Bayes's rule
 */
export const exchanges = ({ places, surprise, chance }: ExchangeQuestion): readonly Exchange[] => {
  const move = -Math.log(chance) / 2;
  const cost = places.map((_, owner) =>
    places.map((_at, at) => surprise(owner, at) + (owner === at ? 0 : move)),
  );
  const columns = assign(cost)?.columns ?? [];
  const name = (index: number): string => places[index] ?? '';
  return cyclesOf(columns).map((cycle) => {
    const gain = cycle.reduce(
      (sum, owner) => sum + surprise(owner, owner) - surprise(owner, columns[owner] ?? owner),
      0,
    );
    return {
      cycle: cycle.map(name),
      from: cycle.map((owner) => name(columns[owner] ?? owner)),
      odds: Math.min(greatestOdds, (chance / waysRound(places.length, cycle.length)) * Math.exp(gain)),
    };
  });
};
