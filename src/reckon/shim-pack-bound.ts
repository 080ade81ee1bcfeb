/** @module What serving the remaining pumps costs at least, by putting prices on scarce stock. */
import type { Effort, Open, Sharing } from './shim-pack-sharing.ts';

export interface PriceBound {
  /** No sharing out of what is left costs less. */
  readonly least: number;
  /** The pumps with those choices that may still beat the best known. */
  readonly open: readonly Open[];
  readonly prices: readonly number[];
  /** A whole sharing out met on the way, one choice for each open pump, and its cost. */
  readonly picks?: readonly number[];
  readonly cost: number;
  /** The open choices of one pump, the most promising first. */
  readonly order: (open: Open) => readonly number[];
}

/** Costs are whole numbers; anything nearer to one than this is rounding. */
const rounding = 1e-6;
const firstRounds = 300;
const laterRounds = 12;

/**
 * With any prices p ≥ 0 on the stocks, Σ over pumps of the least (cost + p · use) less p · stock is a bound
 * from below on every sharing out (Lagrangian relaxation); the prices are raised where the cheapest choices
 * ask for more than there is and lowered where they ask for less.
 *
 * @internal
 * @source  Lagrangian relaxation with subgradient steps, any text on integer programming
 */
export const priceBound = (sharing: Sharing, effort: Effort) => {
  let first = true;
  return (
    open: readonly Open[],
    left: readonly number[],
    target: number,
    from: readonly number[],
  ): PriceBound => {
    let bestPrices = from;
    let least = Number.NEGATIVE_INFINITY;
    let cheapest: number[] = [];
    let picks: number[] | undefined;
    let cost = Number.POSITIVE_INFINITY;
    const priced = (pump: number, at: number, by: readonly number[]): number => {
      const choice = sharing.pumps[pump]?.[at];
      if (!choice) return Number.POSITIVE_INFINITY;
      let sum = choice.cost;
      for (let place = 0; place < choice.stocks.length; place += 1) {
        sum += (by[choice.stocks[place] ?? 0] ?? 0) * (choice.amounts[place] ?? 0);
      }
      return sum;
    };
    const climb = (start: readonly number[], rounds: number): void => {
      let prices = start;
      let pace = 1;
      let since = 0;
      for (let round = 0; round < rounds && effort.spent < effort.limit; round += 1) {
        const lacking = left.map((amount) => -amount);
        let total = 0;
        let paid = 0;
        const taken: number[] = [];
        const minima: number[] = [];
        for (const { pump, choices } of open) {
          effort.spent += choices.length;
          let low = Number.POSITIVE_INFINITY;
          let pick = -1;
          for (const at of choices) {
            const value = priced(pump, at, prices);
            if (value < low) {
              low = value;
              pick = at;
            }
          }
          total += low;
          minima.push(low);
          taken.push(pick);
          const choice = sharing.pumps[pump]?.[pick];
          paid += choice?.cost ?? 0;
          choice?.stocks.forEach((stock, place) => {
            lacking[stock] = (lacking[stock] ?? 0) + (choice.amounts[place] ?? 0);
          });
        }
        left.forEach((amount, stock) => {
          total -= (prices[stock] ?? 0) * amount;
        });
        if (total > least + rounding * rounding) {
          least = total;
          bestPrices = prices;
          cheapest = minima;
          since = 0;
        } else {
          since += 1;
          if (since === 6) {
            pace /= 2;
            since = 0;
          }
        }
        if (paid < cost && lacking.every((amount) => amount <= 0)) {
          cost = paid;
          picks = taken;
        }
        const goal = Math.min(target, cost);
        if (Math.ceil(least - rounding) >= goal) return;
        const slope = lacking.map((amount, stock) => (amount < 0 && (prices[stock] ?? 0) <= 0 ? 0 : amount));
        const steep = slope.reduce((sum, amount) => sum + amount * amount, 0);
        if (steep === 0) return;
        const step = (pace * (goal - total)) / steep;
        prices = prices.map((price, stock) => Math.max(0, price + step * (slope[stock] ?? 0)));
      }
    };
    if (first) {
      // Where the box has too little metal in all, prices by thickness show it at once.
      climb(sharing.worth, firstRounds);
      climb(from, firstRounds);
    } else climb(bestPrices, laterRounds);
    first = false;
    const goal = Math.min(target, cost);
    const kept = open.map(({ pump, choices }, index) => {
      const slack = least - (cheapest[index] ?? 0);
      effort.spent += choices.length;
      return {
        pump,
        choices: choices.filter((at) => Math.ceil(slack + priced(pump, at, bestPrices) - rounding) < goal),
      };
    });
    return {
      least: Math.ceil(least - rounding),
      open: kept,
      prices: bestPrices,
      ...(picks ? { picks } : {}),
      cost,
      order: ({ pump, choices }) =>
        choices
          .map((at) => ({ at, value: priced(pump, at, bestPrices) }))
          .sort((one, other) => one.value - other.value || one.at - other.at)
          .map(({ at }) => at),
    };
  };
};
