/** @module Two parts to a place, such as two half shells: an exact search over pairs of sizes. */

/** Two sizes that together serve a place; the same size twice where there are two of it. */
export interface Pair {
  /** Which size, from 0. */
  readonly first: number;
  readonly second: number;
  /** A whole number, 0 and up. */
  readonly cost: number;
}

export interface PairQuestion {
  /** How many parts there are of each size. */
  readonly counts: readonly number[];
  /** For each place the pairs that serve it, least cost first. */
  readonly pairs: readonly (readonly Pair[])[];
  /** Bound on the search, in pairs looked at. */
  readonly effort: number;
}

interface PairSet {
  readonly kind: 'assigned';
  readonly pairs: readonly Pair[];
  readonly greatest: number;
  readonly sum: number;
  /** Whether it is certain that none is better. */
  readonly proved: boolean;
}

interface Crowded {
  readonly kind: 'crowded';
  /** Places none of which can be left out: the others of them can be served without it. All where the search was cut short. */
  readonly places: readonly number[];
  readonly proved: boolean;
}

/** The effort of one question, used up as pairs are looked at. */
interface Purse {
  left: number;
}

/** How many parts of each size are left. */
type Stock = number[];

const holds = (stock: Stock, { first, second }: Pair): boolean => {
  const one = stock[first] ?? 0;
  return first === second ? one > 1 : one > 0 && (stock[second] ?? 0) > 0;
};

const change = (stock: Stock, { first, second }: Pair, by: 1 | -1): void => {
  stock[first] = (stock[first] ?? 0) + by;
  stock[second] = (stock[second] ?? 0) + by;
};

interface Choice {
  readonly place: number;
  readonly pairs: readonly Pair[];
}

/** The place that has the fewest pairs to choose from, with those; none where one of the places has no pair left. */
const tightest = (
  { pairs }: PairQuestion,
  open: ReadonlySet<number>,
  most: number,
  stock: Stock,
  purse: Purse,
): { readonly choice?: Choice; readonly bound: number } => {
  let choice: Choice | undefined;
  let bound = 0;
  for (const place of open) {
    const usable: Pair[] = [];
    const enough = choice?.pairs.length ?? Number.POSITIVE_INFINITY;
    for (const pair of pairs[place] ?? []) {
      purse.left -= 1;
      if (pair.cost > most) break;
      if (!holds(stock, pair)) continue;
      usable.push(pair);
      if (usable.length >= enough) break;
    }
    const [cheapest] = usable;
    if (!cheapest) return { bound: Number.POSITIVE_INFINITY };
    bound += cheapest.cost;
    if (usable.length < enough) choice = { place, pairs: usable };
  }
  return { bound, ...(choice && { choice }) };
};

type Chosen = ReadonlyMap<number, Pair>;

/** A set of pairs none of which costs more; undefined where there is none, or where the purse ran out. */
const anySet = (
  question: PairQuestion,
  places: readonly number[],
  most: number,
  purse: Purse,
): Chosen | undefined => {
  const stock = [...question.counts];
  const open = new Set(places);
  const chosen = new Map<number, Pair>();
  const search = (): boolean => {
    if (open.size === 0) return true;
    if (purse.left <= 0) return false;
    const { choice } = tightest(question, open, most, stock, purse);
    if (!choice) return false;
    open.delete(choice.place);
    for (const pair of choice.pairs) {
      change(stock, pair, -1);
      chosen.set(choice.place, pair);
      if (search()) return true;
      change(stock, pair, 1);
    }
    chosen.delete(choice.place);
    open.add(choice.place);
    return false;
  };
  return search() ? chosen : undefined;
};

const sumOf = (chosen: Chosen): number => [...chosen.values()].reduce((sum, { cost }) => sum + cost, 0);

/** The set with the least sum none of whose pairs costs more, from one that is known. */
const leastSum = (question: PairQuestion, most: number, known: Chosen, purse: Purse): Chosen => {
  const stock = [...question.counts];
  const open = new Set(question.pairs.keys());
  const chosen = new Map<number, Pair>();
  let best = known;
  let bestSum = sumOf(known);
  const search = (spent: number): void => {
    if (open.size === 0) {
      best = new Map(chosen);
      bestSum = spent;
      return;
    }
    if (purse.left <= 0) return;
    const { choice, bound } = tightest(question, open, most, stock, purse);
    if (!choice || spent + bound >= bestSum) return;
    const [cheapest] = choice.pairs;
    const others = bound - (cheapest?.cost ?? 0);
    open.delete(choice.place);
    for (const pair of choice.pairs) {
      if (spent + pair.cost + others >= bestSum) break;
      change(stock, pair, -1);
      chosen.set(choice.place, pair);
      search(spent + pair.cost);
      change(stock, pair, 1);
    }
    chosen.delete(choice.place);
    open.add(choice.place);
  };
  search(0);
  return best;
};

/** Places that cannot all be served, thinned out until each of the rest can be served without any one of them. */
const thinned = (question: PairQuestion, purse: Purse): readonly number[] => {
  let places = [...question.pairs.keys()];
  for (const place of [...places]) {
    const without = places.filter((other) => other !== place);
    const before = purse.left;
    if (
      anySet(question, without, Number.POSITIVE_INFINITY, purse) === undefined &&
      before > 0 &&
      purse.left > 0
    )
      places = without;
  }
  return places;
};

/**
 * A pair of parts for each place: the greatest cost least, then the sum of costs least.
 *
 * To find such pairs is as hard as packing, so the search is bounded: what it finds is the best, or is said not to be
 * proved. Twenty places with some hundred parts of some twenty sizes are within its reach.
 *
 * @internal
 */
export const pairsForPlaces = (question: PairQuestion): PairSet | Crowded => {
  const purse: Purse = { left: question.effort };
  const all = [...question.pairs.keys()];
  const fits = (most: number): Chosen | undefined => anySet(question, all, most, purse);
  let known = fits(Number.POSITIVE_INFINITY);
  if (!known) {
    const proved = purse.left > 0;
    return { kind: 'crowded', places: proved ? thinned(question, purse) : all, proved };
  }
  const costs = [...new Set(question.pairs.flat().map(({ cost }) => cost))].sort((a, b) => a - b);
  const least = Math.max(0, ...question.pairs.map(([first]) => first?.cost ?? 0));
  const greatestOf = (chosen: Chosen) => Math.max(0, ...[...chosen.values()].map(({ cost }) => cost));
  let low = costs.indexOf(least);
  let high = costs.indexOf(greatestOf(known));
  while (low < high && purse.left > 0) {
    // The least is tried first: more often than not it can be had.
    const middle = costs[low] === least ? low : Math.floor((low + high) / 2);
    const found = fits(costs[middle] ?? 0);
    if (found) {
      known = found;
      high = costs.indexOf(greatestOf(found));
    } else low = middle + 1;
  }
  const greatest = greatestOf(known);
  const best = leastSum(question, greatest, known, purse);
  return {
    kind: 'assigned',
    pairs: all.flatMap((place) => best.get(place) ?? []),
    greatest,
    sum: sumOf(best),
    proved: purse.left > 0,
  };
};
