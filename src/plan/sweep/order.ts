/** @module In which order the slots of a part are swept: so that as little as can be has to be kept in mind. */
import type { Part } from './part.ts';
import type { Shared } from './problem.ts';

/** What a slot is tied to: a neighbour, or something shared; `weight` is the logarithm of what keeping it open costs. */
interface Thread {
  readonly slots: readonly number[];
  readonly weight: number;
}

/** About how many states it is kept in. */
const widthOf = (shared: Shared, slots: number): number => {
  switch (shared.kind) {
    case 'set-up':
      return 2;
    case 'rivals':
      return shared.marks.length;
    case 'count':
    case 'sum':
      return 1 + Math.min(slots, shared.from.size);
    default:
      return shared satisfies never;
  }
};

const threadsOf = ({ slots, shared }: Part): readonly Thread[] =>
  shared.map((each) => ({ slots: [...each.from.keys()], weight: Math.log(widthOf(each, slots.length)) }));

/**
 * Takes the slot next that leaves least open: slots with neighbours still to come, and shared things not complete.
 * Starts where least is tied; equal ones go in their own order.
 */
export const orderOf = (part: Part): readonly number[] => {
  const count = part.slots.length;
  const neighbours: number[][] = part.slots.map(() => []);
  for (const { first, second } of part.pairs) {
    neighbours[first]?.push(second);
    neighbours[second]?.push(first);
  }
  const threads = threadsOf(part);
  const threadsAt: Thread[][] = part.slots.map(() => []);
  for (const thread of threads) for (const slot of thread.slots) threadsAt[slot]?.push(thread);
  const open = neighbours.map(({ length }) => length);
  const left = new Map(threads.map((thread) => [thread, thread.slots.length]));
  const weight = part.slots.map(({ length }) => Math.log(Math.max(1, length)));
  const done = new Set<number>();

  /** By how much the width grows if this slot comes next. */
  const growth = (slot: number): number => {
    const own = (open[slot] ?? 0) > 0 ? (weight[slot] ?? 0) : 0;
    const closed = (neighbours[slot] ?? [])
      .filter((other) => done.has(other) && open[other] === 1)
      .reduce((sum, other) => sum + (weight[other] ?? 0), 0);
    const shared = (threadsAt[slot] ?? []).reduce((sum, thread) => {
      const still = left.get(thread) ?? 0;
      const started = still < thread.slots.length;
      return sum + (started ? (still === 1 ? -thread.weight : 0) : still > 1 ? thread.weight : 0);
    }, 0);
    return own - closed + shared;
  };

  const order: number[] = [];
  const near = new Set<number>(part.slots.keys());
  let tied = false;
  while (order.length < count) {
    let best = -1;
    let least = Number.POSITIVE_INFINITY;
    for (const slot of near) {
      const grows = growth(slot);
      if (grows < least - 1e-9 || (grows < least + 1e-9 && slot < best)) [best, least] = [slot, grows];
    }
    if (!tied) near.clear();
    tied = true;
    near.delete(best);
    done.add(best);
    order.push(best);
    const reached = [...(neighbours[best] ?? []), ...(threadsAt[best] ?? []).flatMap(({ slots }) => slots)];
    for (const other of neighbours[best] ?? []) open[other] = (open[other] ?? 0) - 1;
    for (const thread of threadsAt[best] ?? []) left.set(thread, (left.get(thread) ?? 0) - 1);
    for (const other of reached) if (!done.has(other)) near.add(other);
  }
  return order;
};
