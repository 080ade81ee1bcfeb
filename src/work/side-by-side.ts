/** @module Fitters side by side: who does what from when to when, so that the work is done soonest. */
import type { Operation } from '../engine/engine-type.ts';
import { type Answer, answer } from '../quantity/refusal.ts';
import type { Precedence } from './precedence.ts';
import { type SharedWork, sharedWork } from './shared-work.ts';
import { untold } from './untold.ts';

export interface Shift {
  readonly operation: Operation;
  /** Minutes from the start. */
  readonly from: number;
  readonly to: number;
  /** The fitters at it, from 1. */
  readonly fitters: readonly number[];
}

export interface SideBySide {
  readonly shifts: readonly Shift[];
  readonly minutes: number;
  /** No way of sharing the work is quicker. */
  readonly atLeast: number;
  readonly proved: boolean;
}

/** At one moment: what was begun and when, and what is going on. */
interface Moment {
  readonly at: number;
  readonly begun: ReadonlyMap<number, number>;
  readonly going: readonly number[];
}

const searchFor = (
  { before }: Precedence,
  { minutes, hands, clash, tail, atLeast }: SharedWork,
  fitters: number,
  moments: number,
): { readonly best: ReadonlyMap<number, number>; readonly minutes: number; readonly ended: boolean } => {
  const all = minutes.length;
  let best: ReadonlyMap<number, number> = new Map();
  let shortest = Infinity;
  let looked = 0;
  const seen = new Map<string, number>();
  const endOf = ({ begun }: Moment, at: number): number => (begun.get(at) ?? 0) + (minutes[at] ?? 0);

  /** No end of this moment is earlier. */
  const leastFrom = (moment: Moment): number => {
    let most = 0;
    let work = 0;
    for (let at = 0; at < all; at += 1) {
      if (moment.begun.has(at)) continue;
      most = Math.max(most, moment.at + (tail[at] ?? 0));
      work += (minutes[at] ?? 0) * (hands[at] ?? 1);
    }
    for (const at of moment.going) {
      const end = endOf(moment, at);
      most = Math.max(most, end - (minutes[at] ?? 0) + (tail[at] ?? 0));
      work += (end - moment.at) * (hands[at] ?? 1);
    }
    return Math.max(most, moment.at + work / fitters);
  };

  const isOver = (moment: Moment, one: number): boolean =>
    moment.begun.has(one) && endOf(moment, one) <= moment.at;

  const canBegin = (moment: Moment, at: number): boolean =>
    !moment.begun.has(at) &&
    (before[at] ?? []).every((one) => isOver(moment, one)) &&
    (hands[at] ?? 1) + moment.going.reduce((sum, one) => sum + (hands[one] ?? 1), 0) <= fitters &&
    !moment.going.some((one) => clash(one, at));

  const later = (moment: Moment): void => {
    if (moment.going.length === 0) return;
    const at = Math.min(...moment.going.map((one) => endOf(moment, one)));
    const next = { at, begun: moment.begun, going: moment.going.filter((one) => endOf(moment, one) > at) };
    const going = [...next.going].sort((a, b) => a - b).map((one) => `${one}:${endOf(next, one) - at}`);
    const key = `${[...next.begun.keys()].sort((a, b) => a - b).join()}|${going.join()}`;
    if ((seen.get(key) ?? Infinity) <= at) return;
    seen.set(key, at);
    look(next, new Set());
  };

  /** Begins what can be begun in every way, then waits; `passed` were looked at and left for later. */
  const look = (moment: Moment, passed: ReadonlySet<number>): void => {
    looked += 1;
    if (moment.begun.size === all) {
      const end = Math.max(0, ...[...moment.begun.keys()].map((one) => endOf(moment, one)));
      if (end < shortest) [shortest, best] = [end, moment.begun];
      return;
    }
    if (leastFrom(moment) >= shortest || shortest <= atLeast) return;
    if (looked > moments && shortest < Infinity) return;
    const free = [...minutes.keys()]
      .filter((at) => !passed.has(at) && canBegin(moment, at))
      .sort((a, b) => (tail[b] ?? 0) - (tail[a] ?? 0) || a - b);
    const left = new Set(passed);
    for (const at of free) {
      look(
        { at: moment.at, begun: new Map([...moment.begun, [at, moment.at]]), going: [...moment.going, at] },
        new Set(left),
      );
      left.add(at);
    }
    later(moment);
  };
  look({ at: 0, begun: new Map(), going: [] }, new Set());
  return { best, minutes: shortest, ended: looked <= moments };
};

/** Gives each operation its fitters: those who are free, the lowest number first. */
const shared = (
  operations: readonly Operation[],
  begun: ReadonlyMap<number, number>,
  { minutes, hands }: SharedWork,
  fitters: number,
): readonly Shift[] => {
  const free = Array.from({ length: fitters }, () => 0);
  return [...begun]
    .sort(([a, from], [b, other]) => from - other || a - b)
    .flatMap(([at, from]) => {
      const operation = operations[at];
      const to = from + (minutes[at] ?? 0);
      const taken = [...free.keys()].filter((one) => (free[one] ?? 0) <= from).slice(0, hands[at] ?? 1);
      for (const one of taken) free[one] = to;
      return operation === undefined ? [] : [{ operation, from, to, fitters: taken.map((one) => one + 1) }];
    });
};

/**
 * The quickest way for so many fitters to share the work. One special tool of each kind is there, the engine lies one
 * way at a time, turning it takes no time of its own, and what is begun is ended. An operation for more people than
 * there are takes them all.
 *
 * Exact as long as the search ends within `moments`; beyond that the best found, and a proved least.
 *
 * @param work     operations free of circles, each with its minutes
 * @param fitters  1 to 4
 * @param moments  how many moments may be looked at before it settles for a proved least
 */
export const sideBySide = (
  work: Precedence,
  fitters: number,
  moments = Math.ceil(4_000_000 / Math.max(20, work.operations.length)),
): Answer<SideBySide> => {
  const lacks = untold(work, 'order of work');
  if (lacks.kind === 'refused') return lacks;
  const minutes = work.operations.map((operation) => operation.minutes ?? 0);
  const known = sharedWork(work, minutes, fitters);
  const found = searchFor(work, known, fitters, moments);
  const proved = found.ended || found.minutes <= known.atLeast;
  return answer({
    shifts: shared(work.operations, found.best, known, fitters),
    minutes: found.best.size === 0 ? 0 : found.minutes,
    atLeast: proved ? (found.best.size === 0 ? 0 : found.minutes) : known.atLeast,
    proved,
  });
};
