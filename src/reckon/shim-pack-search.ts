/** @module Sharing out: one choice for each pump so that no thickness is used more often than the box holds it. */
import { priceBound } from './shim-pack-bound.ts';
import { repaired } from './shim-pack-repair.ts';
import type { Choice, Effort, Open, Sharing } from './shim-pack-sharing.ts';

export interface Shared {
  /** For each pump the place of its choice; missing when none was found that costs less than asked. */
  readonly picks?: readonly number[];
  readonly cost: number;
  /** Whether it is certain that nothing cheaper exists. */
  readonly proved: boolean;
}

/** Changes that the repair may make: for any sharing out at all, and for each try at a cheaper one. */
const changesAtFirst = 300;
const changesForAny = 8_000;
const changesForCheaper = 1_500;

const fits = (choice: Choice, left: readonly number[]): boolean =>
  choice.stocks.every((stock, at) => (choice.amounts[at] ?? 0) <= (left[stock] ?? 0));

/**
 * Branch and bound: the pump with the fewest open choices is served first; a branch is left when the prices
 * put on scarce stocks (shim-pack-bound.ts) show that it cannot beat the best known, or when the same pumps
 * were already left with the same stock in vain. Pumps with the same need are interchangeable and are tried
 * in one order only. The answer depends on the order of pumps and choices, never on time.
 */
const searched = (sharing: Sharing, below: number, effort: Effort): Shared => {
  const { pumps, likeness } = sharing;
  const price = priceBound(sharing, effort);
  const picks: number[] = pumps.map(() => -1);
  /** What serving the rest costs at least, by what was left: pumps, floors of likes, stock. */
  const known = new Map<string, number>();
  let best = below;
  let bestPicks: readonly number[] | undefined;
  let cut = false;

  const keyOf = (open: readonly Open[], left: readonly number[]): string => {
    const use = sharing.stock.map(() => 0);
    for (const { pump, choices } of open) {
      const most = new Map<number, number>();
      for (const at of choices) {
        const choice = pumps[pump]?.[at];
        choice?.stocks.forEach((stock, place) => {
          most.set(stock, Math.max(most.get(stock) ?? 0, choice.amounts[place] ?? 0));
        });
      }
      for (const [stock, amount] of most) use[stock] = (use[stock] ?? 0) + amount;
    }
    // More than the rest can use counts as just enough, so that like states meet.
    return `${open.map(({ pump, choices }) => `${pump}.${choices[0]}`).join()};${left.map((amount, stock) => Math.min(amount, use[stock] ?? 0)).join()}`;
  };

  const serve = (
    waiting: readonly Open[],
    left: number[],
    spent: number,
    prices: readonly number[],
  ): void => {
    if (waiting.length === 0) {
      best = spent;
      bestPicks = [...picks];
      return;
    }
    if (effort.spent > effort.limit) {
      cut = true;
      return;
    }
    const open: Open[] = [];
    for (const { pump, choices } of waiting) {
      const offered = pumps[pump] ?? [];
      effort.spent += choices.length;
      const stay = choices.filter((at) => {
        const choice = offered[at];
        return choice !== undefined && fits(choice, left);
      });
      if (stay.length === 0) return;
      open.push({ pump, choices: stay });
    }
    const key = keyOf(open, left);
    if (spent + (known.get(key) ?? 0) >= best) return;
    const bound = price(open, left, best - spent, prices);
    if (bound.picks && spent + bound.cost < best) {
      best = spent + bound.cost;
      const whole = [...picks];
      open.forEach(({ pump }, index) => {
        whole[pump] = bound.picks?.[index] ?? -1;
      });
      bestPicks = whole;
    }
    if (spent + bound.least >= best) return;
    // The pump with fewest choices left after those that cannot beat the best are struck.
    let next = 0;
    bound.open.forEach(({ choices }, index) => {
      if (choices.length < (bound.open[next]?.choices.length ?? 0)) next = index;
    });
    const chosen = bound.open[next];
    if (!chosen || bound.open.some(({ choices }) => choices.length === 0)) return;
    const rest = bound.open.filter((_, index) => index !== next);
    const offered = pumps[chosen.pump] ?? [];
    for (const at of bound.order(chosen)) {
      const choice = offered[at];
      if (!choice || spent + choice.cost >= best) continue;
      choice.stocks.forEach((stock, place) => {
        left[stock] = (left[stock] ?? 0) - (choice.amounts[place] ?? 0);
      });
      picks[chosen.pump] = at;
      const alike = likeness[chosen.pump];
      serve(
        rest.map((one) =>
          likeness[one.pump] === alike
            ? { ...one, choices: one.choices.filter((other) => other >= at) }
            : one,
        ),
        left,
        spent + choice.cost,
        bound.prices,
      );
      picks[chosen.pump] = -1;
      choice.stocks.forEach((stock, place) => {
        left[stock] = (left[stock] ?? 0) + (choice.amounts[place] ?? 0);
      });
      if (cut || spent + bound.least >= best) return;
    }
    if (known.size < 400_000) known.set(key, best - spent);
  };

  serve(
    pumps.map((choices, pump) => ({ pump, choices: choices.map((_, at) => at) })),
    [...sharing.stock],
    0,
    sharing.stock.map(() => 0),
  );
  return { ...(bestPicks ? { picks: bestPicks } : {}), cost: best, proved: !cut };
};

const allOpen = ({ pumps }: Sharing): readonly Open[] =>
  pumps.map((choices, pump) => ({ pump, choices: choices.map((_, at) => at) }));

/** The same question with what it may cost in all as one more stock. */
const costingAtMost = ({ stock, worth, pumps, likeness }: Sharing, most: number): Sharing => ({
  stock: [...stock, most],
  worth: [...worth, 0],
  pumps: pumps.map((choices) =>
    choices.map(({ stocks, amounts, cost }) => ({
      stocks: cost > 0 ? [...stocks, stock.length] : stocks,
      amounts: cost > 0 ? [...amounts, cost] : amounts,
      cost: 0,
    })),
  ),
  likeness,
});

/**
 * The cheapest sharing out that costs less than `below`.
 *
 * A bound by prices and a quick look by repair mostly meet; what lies between them is searched.
 *
 * @internal
 */
export const shareOut = (sharing: Sharing, below: number, effort: Effort): Shared => {
  const firsts = sharing.pumps.map(() => 0);
  const anyWillDo = sharing.pumps.every((choices) => choices.every(({ cost: price }) => price === 0));
  if (anyWillDo) {
    // Mostly one is at hand.
    const found = repaired(sharing, firsts, changesAtFirst, effort);
    if (found) return { picks: found, cost: 0, proved: true };
  }
  const open = allOpen(sharing);
  const bound = priceBound(sharing, effort)(
    open,
    sharing.stock,
    below,
    sharing.stock.map(() => 0),
  );
  const costOf = (picks: readonly number[]): number =>
    picks.reduce((sum, at, pump) => sum + (sharing.pumps[pump]?.[at]?.cost ?? 0), 0);
  let picks = bound.cost < below ? bound.picks : undefined;
  let cost = picks ? bound.cost : below;
  let low = Math.max(0, bound.least);
  // Halving between the bound and the best known: a ceiling on cost that the repair cannot meet proves nothing.
  while (low < cost) {
    const ceiling = (low + cost - 1) >> 1;
    const start = picks ?? firsts;
    const found = repaired(
      costingAtMost(sharing, ceiling),
      start,
      anyWillDo ? changesForAny : changesForCheaper,
      effort,
    );
    if (found) {
      picks = found;
      cost = costOf(found);
    } else low = ceiling + 1;
  }
  if (bound.least >= cost) return { ...(picks ? { picks } : {}), cost, proved: true };
  const better = searched(sharing, cost, effort);
  return { ...(picks ? { picks } : {}), ...better };
};
