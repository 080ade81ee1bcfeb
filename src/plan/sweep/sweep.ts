/** @module Finds the best of all combinations of a part: slot after slot, the best way to everything that must be kept in mind. */
import { worthFollowing } from './dearer.ts';
import type { Part } from './part.ts';
import type { Choice } from './problem.ts';
import type { Step } from './steps.ts';

export interface Swept {
  /** Chosen of each slot of the part. */
  readonly choices: readonly Choice[];
  readonly cents: number;
}

/** Ways found so far: each is one choice after another way. */
interface Ways {
  readonly before: number[];
  readonly choice: number[];
}

/** The best ways to each state, the state being the number that its digits make. */
interface Front {
  readonly at: Map<number, number>;
  readonly keys: number[];
  readonly cents: number[];
  readonly newParts: number[];
  readonly ways: number[];
}

const emptyFront = (): Front => ({ at: new Map(), keys: [], cents: [], newParts: [], ways: [] });

/** Of choices that lead to the same the best stays: least cost, then fewest new parts, then the first. */
const bestAlike = (
  { alike }: Step,
  choices: readonly Choice[],
  allowed: (choice: Choice) => boolean,
): readonly number[] => {
  const best = new Map<number, number>();
  for (const [index, choice] of choices.entries()) {
    if (!allowed(choice)) continue;
    const kind = alike[index] ?? index;
    const rival = choices[best.get(kind) ?? -1];
    if (
      !rival ||
      choice.cents < rival.cents ||
      (choice.cents === rival.cents && choice.newParts < rival.newParts)
    )
      best.set(kind, index);
  }
  return [...best.values()];
};

/** @returns for each step the choices that can be in a best plan */
export const openOf = (
  part: Part,
  steps: readonly Step[],
  allowed: (choice: Choice) => boolean,
): readonly (readonly number[])[] =>
  steps.map((step) => bestAlike(step, part.slots[step.slot] ?? [], allowed));

/**
 * Whether one way beats another of the same slots, cost and parts: at the first slot where they differ it takes the
 * earlier choice. Whatever follows is the same for both, so that the lesser way stays the lesser one.
 */
const comesFirst = (
  steps: readonly Step[],
  ways: Ways,
  turn: number,
  one: readonly [before: number, choice: number],
  other: number,
): boolean => {
  let first = false;
  let slot = Number.POSITIVE_INFINITY;
  let [left, choice] = one;
  let [right, rival] = [ways.before[other] ?? -1, ways.choice[other] ?? -1];
  for (let at = turn; at >= 0; at -= 1) {
    const own = steps[at]?.slot ?? 0;
    if (choice !== rival && own < slot) {
      slot = own;
      first = choice < rival;
    }
    if (left === right) break;
    choice = ways.choice[left] ?? -1;
    left = ways.before[left] ?? -1;
    rival = ways.choice[right] ?? -1;
    right = ways.before[right] ?? -1;
  }
  return first;
};

/**
 * The best of all combinations of the choices that are open: least cost, then fewest new parts, then the earliest
 * choices in the order of the slots. Every combination is weighed: one is dropped only for another that leaves the
 * same open and is no worse.
 *
 * @param open    choices of each step, by `openOf`
 * @param widest  states that may be open at once
 * @returns 'too wide' where more would have to be kept; 'none' where nothing keeps the rules
 */
export const sweep = (
  part: Part,
  steps: readonly Step[],
  open: readonly (readonly number[])[],
  widest: number,
): Swept | 'none' | 'too wide' => {
  const ways: Ways = { before: [], choice: [] };
  let front = emptyFront();
  front.keys.push(0);
  front.cents.push(0);
  front.newParts.push(0);
  front.ways.push(-1);
  let follow: readonly number[] = [0];
  for (const [turn, step] of steps.entries()) {
    const next = emptyFront();
    const choices = part.slots[step.slot] ?? [];
    const offsets = new Array<number>(step.turned.length).fill(0);
    for (const state of follow) {
      const key = front.keys[state] ?? 0;
      const before = front.ways[state] ?? -1;
      const spent = front.cents[state] ?? 0;
      const used = front.newParts[state] ?? 0;
      let stays = 0;
      for (const { weight, radix, to } of step.moved) stays += (Math.floor(key / weight) % radix) * to;
      for (const [index, { weight, radix }] of step.turned.entries())
        offsets[index] = (Math.floor(key / weight) % radix) * step.choices;
      for (const choice of open[turn] ?? []) {
        const taken = choices[choice];
        if (!taken) continue;
        let to = stays;
        let cents = spent + taken.cents;
        for (let index = 0; index < offsets.length && to >= 0; index += 1) {
          const turned = step.turned[index];
          const at = (offsets[index] ?? 0) + choice;
          const leads = turned?.next[at] ?? -1;
          cents += turned?.cents[at] ?? 0;
          to = leads < 0 ? -1 : to + leads;
        }
        if (to < 0) continue;
        const newParts = used + taken.newParts;
        const found = next.at.get(to);
        if (found === undefined) {
          next.at.set(to, next.keys.length);
          next.keys.push(to);
          next.cents.push(cents);
          next.newParts.push(newParts);
          next.ways.push(ways.before.push(before) - 1);
          ways.choice.push(choice);
          continue;
        }
        const rival = next.cents[found] ?? 0;
        const rivalParts = next.newParts[found] ?? 0;
        if (
          cents < rival ||
          (cents === rival &&
            (newParts < rivalParts ||
              (newParts === rivalParts &&
                comesFirst(steps, ways, turn, [before, choice], next.ways[found] ?? -1))))
        ) {
          next.cents[found] = cents;
          next.newParts[found] = newParts;
          next.ways[found] = ways.before.push(before) - 1;
          ways.choice.push(choice);
        }
      }
    }
    front = next;
    follow = worthFollowing(front, step);
    if (follow.length > widest) return 'too wide';
  }
  if (front.keys.length === 0) return 'none';
  const chosen = new Map<number, Choice>();
  let way = front.ways[0] ?? -1;
  for (const step of steps.toReversed()) {
    const taken = part.slots[step.slot]?.[ways.choice[way] ?? -1];
    if (taken) chosen.set(step.slot, taken);
    way = ways.before[way] ?? -1;
  }
  return {
    choices: part.slots.flatMap((_, slot) => chosen.get(slot) ?? []),
    cents: front.cents[0] ?? 0,
  };
};
