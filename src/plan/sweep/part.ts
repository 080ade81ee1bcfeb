/** @module Parts of the problem that share nothing with one another: each is swept by itself, and their costs add up. */
import type { Choice, Pair, Problem, Shared } from './problem.ts';
import { roots } from './roots.ts';

/** A problem of its own; its slots are numbered anew, in the same order. */
export interface Part {
  /** The slot's number in the whole problem. */
  readonly names: readonly number[];
  readonly slots: readonly (readonly Choice[])[];
  readonly pairs: readonly Pair[];
  readonly shared: readonly Shared[];
}

/** Slots that put in something; the others do not take part. */
const narrowed = (shared: Shared): Shared => ({
  ...shared,
  from: new Map([...shared.from].filter(([, puts]) => puts.some((each) => each !== 0))),
});

/** A set-up that only one slot can use is a part of that slot's prices. */
const foldedIn = ({
  slots,
  shared,
}: Pick<Problem, 'slots' | 'shared'>): Pick<Problem, 'slots' | 'shared'> => {
  let folded = slots;
  const kept: Shared[] = [];
  for (const each of shared.map(narrowed)) {
    const [[slot, puts] = [], ...others] = each.from;
    if (slot === undefined || puts === undefined) continue;
    if (each.kind !== 'set-up' || others.length > 0) kept.push(each);
    else
      folded = folded.with(
        slot,
        (folded[slot] ?? []).map((choice, index) => ({
          ...choice,
          cents: choice.cents + ((puts[index] ?? 0) > 0 ? (each.cents[0] ?? 0) : 0),
        })),
      );
  }
  return { slots: folded, shared: kept };
};

const ruledOut = ({ allows }: Pair): boolean => allows.includes(0);

export const partsOf = (problem: Problem): readonly Part[] => {
  const { slots, shared } = foldedIn(problem);
  const pairs = problem.pairs.filter(ruledOut);
  const root = roots(slots.length, [
    ...pairs.map(({ first, second }) => [first, second]),
    ...shared.map(({ from }) => [...from.keys()]),
  ]);
  const members = Map.groupBy(slots.keys(), (slot) => root[slot] ?? slot);
  const local = new Map([...members.values()].flatMap((own) => own.map((slot, at) => [slot, at] as const)));
  const at = (slot: number): number => local.get(slot) ?? 0;
  const pairsBy = Map.groupBy(pairs, ({ first }) => root[first]);
  const sharedBy = Map.groupBy(shared, ({ from }) => root[from.keys().next().value ?? 0]);
  return [...members].map(([name, names]) => ({
    names,
    slots: names.map((slot) => slots[slot] ?? []),
    pairs: (pairsBy.get(name) ?? []).map(({ first, second, allows }) => ({
      first: at(first),
      second: at(second),
      allows,
    })),
    shared: (sharedBy.get(name) ?? []).map((each) => ({
      ...each,
      from: new Map([...each.from].map(([slot, puts]) => [at(slot), puts])),
    })),
  }));
};
