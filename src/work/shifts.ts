/** @module The work in shifts: the fewest shifts of so many minutes, no operation begun before what it waits for, none cut in two. */
import type { Operation } from '../engine/engine-type.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { Precedence } from './precedence.ts';
import { untold } from './untold.ts';

export interface WorkShift {
  readonly operations: readonly Operation[];
  /** What they take, one after another. */
  readonly minutes: number;
}

export interface InShifts {
  readonly shifts: readonly WorkShift[];
  /** It cannot be done in fewer shifts than this. */
  readonly atLeast: number;
  readonly proved: boolean;
}

/** The work by number, in an order that can be worked: whatever has more work hanging on it comes first. */
interface Numbered {
  readonly operations: readonly Operation[];
  readonly minutes: readonly number[];
  readonly before: readonly (readonly number[])[];
  /** How many shifts come at least after the one that it is in. */
  readonly behind: readonly number[];
}

/** Tenths of a minute do not add up to the last bit. */
const slack = 1e-9;

const sum = (figures: readonly number[]): number => figures.reduce((all, one) => all + one, 0);

/** Of each, all that is reached along arcs, itself left out. */
const reachedFrom = (arcs: readonly (readonly number[])[]): readonly ReadonlySet<number>[] =>
  arcs.map((next) => {
    const reached = new Set<number>();
    const ahead = [...next];
    for (let at = ahead.pop(); at !== undefined; at = ahead.pop()) {
      if (reached.has(at)) continue;
      reached.add(at);
      ahead.push(...(arcs[at] ?? []));
    }
    return reached;
  });

const numbered = ({ operations, before, after }: Precedence, shift: number): Numbered => {
  const minutes = operations.map((one) => one.minutes ?? 0);
  const hanging = reachedFrom(after).map((later) => sum([...later].map((at) => minutes[at] ?? 0)));
  const weight = (at: number): number => (minutes[at] ?? 0) + (hanging[at] ?? 0);
  const order = [...operations.keys()].sort((a, b) => weight(b) - weight(a) || a - b);
  const number = new Map(order.map((at, index) => [at, index]));
  return {
    operations: order.flatMap((at) => operations[at] ?? []),
    minutes: order.map((at) => minutes[at] ?? 0),
    before: order.map((at) => (before[at] ?? []).map((one) => number.get(one) ?? 0)),
    behind: order.map((at) => Math.ceil(weight(at) / shift - slack) - 1),
  };
};

/** Shifts that some work takes at least: shared out evenly; and by what is too long for two, or for three, in a shift. */
const leastFor = (minutes: readonly number[], shift: number): number => {
  const evenly = Math.ceil(sum(minutes) / shift - slack);
  const two = sum(minutes.map((one) => (2 * one > shift ? 1 : 2 * one === shift ? 0.5 : 0)));
  const three = sum(
    minutes.map((one) => {
      const thirds = (3 * one) / shift;
      if (thirds > 2) return 1;
      if (thirds === 2) return 2 / 3;
      if (thirds > 1) return 0.5;
      return thirds === 1 ? 1 / 3 : 0;
    }),
  );
  return Math.max(evenly, Math.ceil(two), Math.ceil(three - slack));
};

type Found =
  | { readonly kind: 'found'; readonly shiftOf: readonly number[] }
  | { readonly kind: 'impossible' }
  | { readonly kind: 'stopped' };

/** Fills shift after shift in every way that leaves nothing out that would still go in, the heaviest first. */
const fillIn = (work: Numbered, shift: number, most: number, steps: number): Found => {
  const { minutes, before, behind } = work;
  const size = minutes.length;
  const shiftOf: number[] = new Array(size).fill(-1);
  /** Work done at the end of a shift that did not lead to the end, and in which shift at the earliest. */
  const failed = new Map<string, number>();
  let looked = 0;
  const free = (at: number, left: number): boolean =>
    shiftOf[at] === -1 &&
    (minutes[at] ?? 0) <= left + slack &&
    (before[at] ?? []).every((one) => shiftOf[one] !== -1);
  const keyOf = (): string => {
    let key = '';
    for (let at = 0; at < size; at += 15) {
      let bits = 0;
      for (let bit = 0; bit < 15; bit += 1)
        bits = bits * 2 + (at + bit < size && shiftOf[at + bit] !== -1 ? 1 : 0);
      key += String.fromCharCode(bits);
    }
    return key;
  };
  /** Whether the rest can still go into the shifts after this one, as far as a bound can tell. */
  const hopeful = (done: number): boolean => {
    const rest: number[] = [];
    for (let at = 0; at < size; at += 1) {
      if (shiftOf[at] !== -1) continue;
      if (done + 1 + (behind[at] ?? 0) > most) return false;
      rest.push(minutes[at] ?? 0);
    }
    return done + leastFor(rest, shift) <= most;
  };
  const nextShift = (now: number): boolean => {
    if (shiftOf.every((one) => one !== -1)) return true;
    const done = now + 1;
    const key = keyOf();
    if ((failed.get(key) ?? Infinity) <= done) return false;
    if (hopeful(done) && fill(done, 0, shift)) return true;
    failed.set(key, done);
    return false;
  };
  const fill = (now: number, from: number, left: number): boolean => {
    looked += 1;
    if (looked > steps) return false;
    for (let at = from; at < size; at += 1) {
      if (!free(at, left)) continue;
      shiftOf[at] = now;
      if (fill(now, at + 1, left - (minutes[at] ?? 0))) return true;
      shiftOf[at] = -1;
      if (looked > steps) return false;
    }
    for (let at = 0; at < size; at += 1) if (free(at, left)) return false;
    return nextShift(now);
  };
  if (nextShift(-1)) return { kind: 'found', shiftOf };
  return looked > steps ? { kind: 'stopped' } : { kind: 'impossible' };
};

const tooLong = (work: Precedence, shift: number): readonly Operation[] =>
  work.operations.filter(({ minutes = 0 }) => minutes > shift);

/**
 * The work in the fewest shifts, one operation after another as one crew does it.
 *
 * Exact as long as each search ends within `steps`; beyond that the fewest found, and a proved least.
 *
 * @param work   operations free of circles, each with its minutes
 * @param shift  minutes of a shift, above 0; none of the operations is longer
 * @param steps  how many part-filled shifts may be looked at for each number of shifts
 */
export const inShifts = (work: Precedence, shift: number, steps = 100_000): Answer<InShifts> => {
  const where = 'order of work';
  const lacks = untold(work, where);
  if (lacks.kind === 'refused') return lacks;
  if (!(shift > 0)) return refuse(`a shift of ${shift} minutes is none`, where, 'give its minutes, above 0');
  const [long] = tooLong(work, shift);
  if (long !== undefined)
    return refuse(
      `${long.name} takes ${long.minutes} minutes and does not go into a shift of ${shift}`,
      where,
      'give a longer shift, or make two operations of it',
    );
  const known = numbered(work, shift);
  let atLeast = Math.max(leastFor(known.minutes, shift), ...known.behind.map((one) => one + 1), 0);
  for (let most = atLeast; ; most += 1) {
    // As many shifts as operations are always enough; the last try is not cut short.
    const found = fillIn(known, shift, most, most >= known.minutes.length ? Infinity : steps);
    if (found.kind === 'impossible' && most === atLeast) atLeast = most + 1;
    if (found.kind !== 'found') continue;
    const shifts = Array.from({ length: most }, (_, at): WorkShift => {
      const operations = known.operations.filter((__, one) => found.shiftOf[one] === at);
      return { operations, minutes: sum(operations.map(({ minutes = 0 }) => minutes)) };
    }).filter(({ operations }) => operations.length > 0);
    return answer({ shifts, atLeast, proved: shifts.length === atLeast });
  }
};
