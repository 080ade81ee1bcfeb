/** @module The sweep of a part laid out beforehand: slot by slot, what is kept in mind, and where each choice leads. */

import { keptRivals } from './kept-rivals.ts';
import { classesOf, laterNeighbours } from './kept-slot.ts';
import { keptSum } from './kept-sum.ts';
import { orderOf } from './order.ts';
import type { Part } from './part.ts';

/** Something kept in mind: one digit of the number that a state is. */
interface Digit {
  readonly of: string;
  readonly radix: number;
  readonly weight: number;
}

/** A digit that the step's choice changes: where each leads, times the weight of its place; -1 where not allowed. */
interface Turned {
  readonly weight: number;
  readonly radix: number;
  readonly next: Float64Array;
  readonly cents: Float64Array;
}

export interface Step {
  /** The slot, as numbered in the part. */
  readonly slot: number;
  readonly choices: number;
  /** Digits that only move to another place. */
  readonly moved: readonly { readonly weight: number; readonly radix: number; readonly to: number }[];
  readonly turned: readonly Turned[];
  /** Digits after the step that are set-ups, 1 where paid, with what each costs. */
  readonly paid: readonly { readonly weight: number; readonly cents: number }[];
  /** Choices that lead to the same in every respect have the same number. */
  readonly alike: readonly number[];
}

/** Greatest number that counts every state apart. */
const greatestKey = Number.MAX_SAFE_INTEGER;

interface Turning {
  readonly of: string;
  readonly radix: number;
  readonly next: readonly number[];
  readonly cents: readonly number[];
}

const placed = (of: readonly { readonly of: string; readonly radix: number }[]): readonly Digit[] => {
  let weight = 1;
  return of.map((each) => {
    const digit = { ...each, weight };
    weight *= each.radix;
    return digit;
  });
};

const alikeOf = (choices: number, turnings: readonly Turning[]): readonly number[] => {
  const known = new Map<string, number>();
  return Array.from({ length: choices }, (_, choice) => {
    let sign = '';
    for (const { next, cents } of turnings)
      for (let at = choice; at < next.length; at += choices) sign += `${next[at]} ${cents[at]},`;
    const found = known.get(sign) ?? known.size;
    known.set(sign, found);
    return found;
  });
};

/** Where a digit of one value or none leads. */
const stepOf = (
  slot: number,
  choices: number,
  before: readonly Digit[],
  turnings: readonly Turning[],
  prices: ReadonlyMap<string, number>,
) => {
  const turnedOf = new Set(turnings.map(({ of }) => of));
  const staying = before.filter(({ of }) => !turnedOf.has(of));
  const after = placed([...staying, ...turnings.filter(({ radix }) => radix > 1)]);
  const toOf = new Map(after.map(({ of, weight }) => [of, weight]));
  const fromOf = new Map(before.map((digit) => [digit.of, digit]));
  const step: Step = {
    slot,
    choices,
    moved: staying.map(({ of, weight, radix }) => ({ weight, radix, to: toOf.get(of) ?? 0 })),
    turned: turnings.map(({ of, next, cents }) => ({
      weight: fromOf.get(of)?.weight ?? 1,
      radix: fromOf.get(of)?.radix ?? 1,
      next: Float64Array.from(next, (to) => (to < 0 ? -1 : to * (toOf.get(of) ?? 0))),
      cents: Float64Array.from(cents),
    })),
    paid: after.flatMap(({ of, weight }) => {
      const cents = prices.get(of);
      return cents === undefined ? [] : [{ weight, cents }];
    }),
    alike: alikeOf(choices, turnings),
  };
  return { step, after };
};

/** How the slots that touch this one, or that it will touch, are kept from here on. */
const slotTurnings = (part: Part, order: readonly number[]): ((slot: number) => readonly Turning[]) => {
  const later = laterNeighbours(part, order);
  const widthOf = (slot: number): number => part.slots[slot]?.length ?? 0;
  const stages = later.map((neighbours, slot) => classesOf(widthOf(slot), neighbours, widthOf));
  const earlier: { readonly slot: number; readonly turn: number }[][] = part.slots.map(() => []);
  for (const [slot, neighbours] of later.entries())
    for (const [turn, neighbour] of neighbours.entries()) earlier[neighbour.slot]?.push({ slot, turn });
  return (slot) => {
    const choices = widthOf(slot);
    const none = new Array<number>(choices).fill(0);
    const own = stages[slot]?.at(-1);
    const kept: readonly Turning[] =
      own && (later[slot]?.length ?? 0) > 0
        ? [{ of: `slot ${slot}`, radix: own.count, next: own.of, cents: none }]
        : [];
    return [
      ...(earlier[slot] ?? []).map(({ slot: other, turn }): Turning => {
        const neighbours = later[other] ?? [];
        const before = stages[other]?.[neighbours.length - turn];
        const after = stages[other]?.[neighbours.length - turn - 1];
        const count = before?.count ?? 1;
        const next = new Array<number>(count * choices).fill(-1);
        for (const [choice, digit] of (before?.of ?? []).entries())
          for (let mine = 0; mine < choices; mine += 1)
            if (neighbours[turn]?.allows(choice, mine)) next[digit * choices + mine] = after?.of[choice] ?? 0;
        return { of: `slot ${other}`, radix: after?.count ?? 1, next, cents: new Array(next.length).fill(0) };
      }),
      ...kept,
    ];
  };
};

/** How what is shared is kept from here on. */
const sharedTurnings = (part: Part, order: readonly number[]): ((slot: number) => readonly Turning[]) => {
  const turn = new Map(order.map((slot, index) => [slot, index]));
  const states = part.shared.map((shared) => ({
    kept: shared.kind === 'rivals' ? keptRivals(shared) : keptSum(shared),
    left: [...shared.from.keys()].sort((a, b) => (turn.get(a) ?? 0) - (turn.get(b) ?? 0)),
  }));
  const at: number[][] = part.slots.map(() => []);
  for (const [index, { from }] of part.shared.entries())
    for (const slot of from.keys()) at[slot]?.push(index);
  return (slot) =>
    (at[slot] ?? []).flatMap((index): readonly Turning[] => {
      const state = states[index];
      if (!state) return [];
      const later = state.left.slice(1);
      const { radix, next, cents, kept } = state.kept(slot, later);
      states[index] = { kept, left: later };
      return [{ of: `shared ${index}`, radix, next, cents }];
    });
};

/** @returns undefined where more would have to be kept in mind than can be counted */
export const stepsOf = (part: Part, widest: number): readonly Step[] | undefined => {
  const order = orderOf(part);
  const slots = slotTurnings(part, order);
  const shared = sharedTurnings(part, order);
  const prices = new Map(
    part.shared.flatMap((shared, index) =>
      shared.kind === 'set-up' ? [[`shared ${index}`, shared.cents[0] ?? 0] as const] : [],
    ),
  );
  const steps: Step[] = [];
  let before: readonly Digit[] = [];
  for (const slot of order) {
    const turnings = [...slots(slot), ...shared(slot)];
    if (turnings.some(({ radix }) => radix > widest)) return undefined;
    const { step, after } = stepOf(slot, part.slots[slot]?.length ?? 0, before, turnings, prices);
    if (after.reduce((product, { radix }) => product * radix, 1) > greatestKey) return undefined;
    steps.push(step);
    before = after;
  }
  return steps;
};
