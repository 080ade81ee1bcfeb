/** @module What operations ask to be set up, the engine's lie or the tools in hand, and what going from one to the next costs. */
import type { Precedence } from './precedence.ts';

/** Asks are numbered: each is a set of things, the engine's lie or special tools. */
export interface SettingUp {
  /** Of each operation: the number of its ask, -1 where it asks for nothing and any will do. */
  readonly asks: readonly number[];
  /** How many things must be brought when one ask follows another; from -1, nothing set up yet. */
  readonly cost: (from: number, to: number) => number;
  /** The fewest things still to be brought for the operations left, whatever their order. */
  readonly left: (from: number, isDone: (at: number) => boolean) => number;
  /** The fewest things brought along any chain of operations from one on, by the ask that comes first in it. */
  readonly chains: readonly ReadonlyMap<number, number>[];
}

const chainsOf = (
  { operations, after }: Precedence,
  asks: readonly number[],
  cost: SettingUp['cost'],
  backwards: readonly number[],
): readonly ReadonlyMap<number, number>[] => {
  const chains: Map<number, number>[] = operations.map(() => new Map());
  for (const at of backwards) {
    const own = asks[at] ?? -1;
    const mine = chains[at];
    if (mine === undefined) continue;
    if (own >= 0) mine.set(own, 0);
    for (const later of after[at] ?? [])
      for (const [ask, dear] of chains[later] ?? []) {
        const key = own < 0 ? ask : own;
        const sum = own < 0 ? dear : dear + cost(own, ask);
        mine.set(key, Math.max(mine.get(key) ?? 0, sum));
      }
  }
  return chains;
};

/**
 * @param things     what each operation asks for, in the order of the operations
 * @param firstFree  whether the first ask costs nothing, as the engine lies somehow from the start
 * @param backwards  the operations, every one before those that precede it
 */
export const settingUp = (
  work: Precedence,
  things: readonly (readonly string[])[],
  firstFree: boolean,
  backwards: readonly number[],
): SettingUp => {
  const sets: ReadonlySet<string>[] = [];
  const numbers = new Map<string, number>();
  const asks = things.map((asked) => {
    if (asked.length === 0) return -1;
    const key = [...asked].sort().join(' ');
    const known = numbers.get(key);
    if (known !== undefined) return known;
    numbers.set(key, sets.length);
    return sets.push(new Set(asked)) - 1;
  });
  const brought = (from: number, to: number): number =>
    [...(sets[to] ?? [])].filter((thing) => !sets[from]?.has(thing)).length;
  const costs = sets.map((_, to) => [-1, ...sets.keys()].map((from) => brought(from, to)));
  const cost = (from: number, to: number): number =>
    from < 0 && firstFree ? 0 : (costs[to]?.[from + 1] ?? 0);
  const left: SettingUp['left'] = (from, isDone) => {
    const wanted = new Set<string>();
    const seen = new Set<number>();
    for (const [at, ask] of asks.entries()) {
      if (ask < 0 || seen.has(ask) || isDone(at)) continue;
      seen.add(ask);
      for (const thing of sets[ask] ?? []) if (!sets[from]?.has(thing)) wanted.add(thing);
    }
    return firstFree && from < 0 ? Math.max(0, wanted.size - 1) : wanted.size;
  };
  return { asks, cost, left, chains: chainsOf(work, asks, cost, backwards) };
};
