/** @module Fitters side by side, held against every order and a published case. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Operation } from '../../src/engine/engine-type.ts';
import { known } from '../../test/known.ts';
import { anyWork, bookOf, everyOrder, operation } from '../../test/work/any-work.ts';
import { precedenceOf } from './precedence.ts';
import { type Shift, sideBySide } from './side-by-side.ts';

const together = (one: Operation, other: Operation): boolean =>
  (one.stand === undefined || other.stand === undefined || one.stand === other.stand) &&
  !one.tools.some((tool) => other.tools.includes(tool));

/** The end of the work when each operation of an order begins as early as it can, minute by minute. */
const endOf = (order: readonly Operation[], fitters: number): number => {
  const minutes: Operation[][] = [];
  const ends = new Map<string, number>();
  for (const one of order) {
    const long = one.minutes ?? 0;
    let from = Math.max(0, ...one.after.map((name) => ends.get(name) ?? 0));
    const free = (minute: number): boolean => {
      const going = minutes[minute] ?? [];
      const hands = [one, ...going].reduce((sum, { people }) => sum + Math.min(people, fitters), 0);
      return hands <= fitters && going.every((other) => together(one, other));
    };
    while (!Array.from({ length: long }, (_, at) => from + at).every(free)) from += 1;
    for (let at = from; at < from + long; at += 1) {
      minutes[at] ??= [];
      minutes[at]?.push(one);
    }
    ends.set(one.name, from + long);
  }
  return Math.max(0, ...ends.values());
};

const expectWorkable = (shifts: readonly Shift[], fitters: number) => {
  const ends = new Map(shifts.map(({ operation: { name }, to }) => [name, to]));
  for (const one of shifts) {
    expect(one.fitters).toHaveLength(Math.min(one.operation.people, fitters));
    for (const name of one.operation.after) expect(one.from).toBeGreaterThanOrEqual(ends.get(name) ?? 0);
    for (const other of shifts) {
      if (other === one || other.from >= one.to || one.from >= other.to) continue;
      expect(together(one.operation, other.operation)).toBe(true);
      expect(one.fitters.filter((fitter) => other.fitters.includes(fitter))).toEqual([]);
    }
  }
};

describe('fitters side by side', () => {
  it('are done as soon as by the best of all orders', () => {
    // source: exhaustive enumeration; of the schedules in which nothing can begin earlier one is the quickest
    fc.assert(
      fc.property(anyWork(6, 0.3, 3), fc.integer({ min: 1, max: 3 }), (work, fitters) => {
        const found = known(sideBySide(precedenceOf(bookOf(work)), fitters));
        expect(found.proved).toBe(true);
        expect(found.minutes).toBe(Math.min(...[...everyOrder(work)].map((order) => endOf(order, fitters))));
        expect(found.shifts).toHaveLength(work.length);
        expectWorkable(found.shifts, fitters);
      }),
      { numRuns: 150 },
    );
  });

  it('name a least that the best keeps to, where the search was cut short', () => {
    fc.assert(
      fc.property(anyWork(9, 0.2, 5), (work) => {
        const precedence = precedenceOf(bookOf(work));
        const cut = known(sideBySide(precedence, 2, 0));
        const best = known(sideBySide(precedence, 2));
        expect(best.proved).toBe(true);
        expectWorkable(cut.shifts, 2);
        expect(cut.atLeast).toBeLessThanOrEqual(best.minutes);
        expect(cut.minutes).toBeGreaterThanOrEqual(best.minutes);
      }),
      { numRuns: 60 },
    );
  });

  it.each([
    ['as it stands', [3, 2, 2, 2, 4, 4, 4, 4, 9], 12],
    ['with each a minute shorter', [2, 1, 1, 1, 3, 3, 3, 3, 8], 10],
  ])('share Graham’s nine operations among three, %s', (_, minutes, end) => {
    // source: R. L. Graham, Bounds on multiprocessing timing anomalies, 1969, from memory; the chain 1, 9 is as long
    const after = [[], [], [], [], [4], [4], [4], [4], [1]];
    const work = minutes.map((long, at) =>
      operation(`op-${at + 1}`, { minutes: long, after: (after[at] ?? []).map((one) => `op-${one}`) }),
    );
    expect(sideBySide(precedenceOf(bookOf(work)), 3)).toMatchObject({
      value: { minutes: end, atLeast: end, proved: true },
    });
  });

  it('keep the published end of six jobs on six machines between their least and what they find', () => {
    // source: H. Fisher, G. L. Thompson, 1963, six jobs by six machines: the quickest schedule ends after 55
    const jobs = [
      [2, 1, 0, 3, 1, 6, 3, 7, 5, 3, 4, 6],
      [1, 8, 2, 5, 4, 10, 5, 10, 0, 10, 3, 4],
      [2, 5, 3, 4, 5, 8, 0, 9, 1, 1, 4, 7],
      [1, 5, 0, 5, 2, 5, 3, 3, 4, 8, 5, 9],
      [2, 9, 1, 3, 4, 5, 5, 4, 0, 3, 3, 1],
      [1, 3, 3, 3, 5, 9, 0, 10, 4, 4, 2, 1],
    ];
    // A machine is a special tool of which there is one; a job is a chain of operations.
    const work = jobs.flatMap((job, row) =>
      Array.from({ length: job.length / 2 }, (_, step) =>
        operation(`job-${row}-${step}`, {
          tools: [`machine-${job[2 * step]}`],
          minutes: job[2 * step + 1] ?? 0,
          after: step === 0 ? [] : [`job-${row}-${step - 1}`],
        }),
      ),
    );
    const found = known(sideBySide(precedenceOf(bookOf(work)), 6, 20_000));
    expectWorkable(found.shifts, 6);
    expect(found.shifts).toHaveLength(36);
    expect(found.atLeast).toBeLessThanOrEqual(55);
    expect(found.minutes).toBeGreaterThanOrEqual(55);
    // As good as a schedule can be told to be without a proof: no more than a tenth above the best.
    expect(found.minutes).toBeLessThanOrEqual(60.5);
  });

  it('refuses work of which it is not said how long it takes', () => {
    const work = [operation('lift-head', { minutes: 30 }), operation('drop-sump')];
    expect(sideBySide(precedenceOf(bookOf(work)), 2)).toMatchObject({
      kind: 'refused',
      refusal: { what: 'it is not said how long this takes: drop-sump' },
    });
  });
});
