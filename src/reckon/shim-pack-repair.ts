/** @module A quick look for any sharing out: choices are changed one at a time until no stock is overdrawn. */
import type { Choice, Effort, Sharing } from './shim-pack-sharing.ts';

/** Changes for which a choice that was given up is not taken back. */
const restFor = 7;

/**
 * One choice for each pump within the stock, or undefined when none was met: that proves nothing.
 *
 * Each change takes the choice that lessens the weighted overdraft most; where no change lessens it, the
 * overdrawn stocks weigh more from then on. Without randomness: the longest-rested choice breaks ties.
 *
 * @internal
 * @source  breakout local search with a short memory, any text on constraint satisfaction
 */
export const repaired = (
  { pumps, stock }: Sharing,
  start: readonly number[],
  mostChanges: number,
  effort: Effort,
): readonly number[] | undefined => {
  const picks = [...start];
  const over = stock.map((amount) => -amount);
  const weight = stock.map(() => 1);
  const restedFrom = pumps.map((choices) => choices.map(() => -restFor));
  const draw = (choice: Choice | undefined, sign: 1 | -1): void => {
    if (!choice) return;
    for (let place = 0; place < choice.stocks.length; place += 1) {
      const at = choice.stocks[place] ?? 0;
      over[at] = (over[at] ?? 0) + sign * (choice.amounts[place] ?? 0);
    }
  };
  const relief = (choice: Choice | undefined, sign: 1 | -1): number => {
    let sum = 0;
    if (!choice) return sum;
    for (let place = 0; place < choice.stocks.length; place += 1) {
      const at = choice.stocks[place] ?? 0;
      const now = over[at] ?? 0;
      const then = now + sign * (choice.amounts[place] ?? 0);
      sum += (weight[at] ?? 0) * (Math.max(0, then) - Math.max(0, now));
    }
    return sum;
  };
  picks.forEach((at, pump) => {
    draw(pumps[pump]?.[at], 1);
  });
  for (let change = 0; change < mostChanges && effort.spent < effort.limit; change += 1) {
    if (over.every((amount) => amount <= 0)) return picks;
    let best = Number.POSITIVE_INFINITY;
    let move: { readonly pump: number; readonly at: number } | undefined;
    for (let pump = 0; pump < pumps.length; pump += 1) {
      const choices = pumps[pump] ?? [];
      const current = choices[picks[pump] ?? 0];
      if (!current?.stocks.some((at) => (over[at] ?? 0) > 0)) continue;
      const given = relief(current, -1);
      draw(current, -1);
      effort.spent += choices.length;
      for (let at = 0; at < choices.length; at += 1) {
        const rested = restedFrom[pump]?.[at] ?? 0;
        if (at === picks[pump] || change - rested < restFor) continue;
        const gain = given + relief(choices[at], 1);
        const rests = move ? (restedFrom[move.pump]?.[move.at] ?? 0) : 0;
        if (gain < best || (gain === best && rested < rests)) {
          best = gain;
          move = { pump, at };
        }
      }
      draw(current, 1);
    }
    if (best >= 0) {
      over.forEach((amount, at) => {
        if (amount > 0) weight[at] = (weight[at] ?? 0) + 1;
      });
    }
    if (!move) continue;
    const left = picks[move.pump] ?? 0;
    draw(pumps[move.pump]?.[left], -1);
    draw(pumps[move.pump]?.[move.at], 1);
    picks[move.pump] = move.at;
    const rests = restedFrom[move.pump];
    if (rests) rests[left] = change;
  }
  return over.every((amount) => amount <= 0) ? picks : undefined;
};
