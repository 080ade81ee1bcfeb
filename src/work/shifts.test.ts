/** @module The work in shifts, held against every order and against published line balancing problems. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Operation } from '../../src/engine/engine-type.ts';
import { quillfeather } from '../../test/engines/demo-engines.ts';
import { known } from '../../test/known.ts';
import { anyWork, bookOf, everyOrder, operation } from '../../test/work/any-work.ts';
import { precedenceOf } from './precedence.ts';
import { type InShifts, inShifts } from './shifts.ts';

/** Shifts filled along an order, the next begun when an operation does not go in any more. */
const shiftsAlong = (order: readonly Operation[], shift: number): number => {
  let [count, left] = [0, 0];
  for (const { minutes = 0 } of order) {
    if (count === 0 || minutes > left) [count, left] = [count + 1, shift];
    left -= minutes;
  }
  return count;
};

const expectWorkable = (work: readonly Operation[], { shifts }: InShifts, shift: number) => {
  const at = new Map(
    shifts.flatMap(({ operations }, index) => operations.map(({ name }) => [name, index] as const)),
  );
  expect(at.size).toBe(work.length);
  for (const { name, after } of work)
    for (const one of after) expect(at.get(one) ?? Infinity).toBeLessThanOrEqual(at.get(name) ?? -1);
  for (const { operations, minutes } of shifts) {
    expect(minutes).toBeLessThanOrEqual(shift);
    // Within a shift they stand in an order that can be worked.
    for (const [index, { after }] of operations.entries())
      for (const one of after) expect(operations.slice(index).some(({ name }) => name === one)).toBe(false);
  }
};

/** Tasks by number, 1 and up, with their times and arcs. */
const tasks = (times: readonly number[], arcs: readonly (readonly [number, readonly number[]])[]) =>
  times.map((minutes, at) =>
    operation(`task-${at + 1}`, {
      minutes,
      after: arcs.flatMap(([from, to]) => (to.includes(at + 1) ? [`task-${from}`] : [])),
    }),
  );

const jackson = tasks(
  [6, 2, 5, 7, 1, 2, 3, 6, 5, 5, 4],
  [
    [1, [2, 3, 4, 5]],
    [2, [6]],
    [3, [7]],
    [4, [7]],
    [5, [7]],
    [6, [8]],
    [7, [9]],
    [8, [10]],
    [9, [11]],
    [10, [11]],
  ],
);

const mertens = tasks(
  [1, 5, 4, 3, 5, 6, 5],
  [
    [1, [2, 4]],
    [2, [3, 5]],
    [4, [6, 7]],
  ],
);

const bowman = tasks(
  [11, 17, 9, 5, 8, 12, 10, 3],
  [
    [1, [2]],
    [2, [3, 4]],
    [3, [5, 6]],
    [4, [6]],
    [5, [7]],
    [6, [8]],
  ],
);

describe('the work in shifts', () => {
  it('takes as few as the best of all orders', () => {
    // source: exhaustive enumeration of the orders, each filled shift by shift
    fc.assert(
      fc.property(anyWork(7, 0.3, 1), fc.integer({ min: 6, max: 12 }), (work, shift) => {
        const found = known(inShifts(precedenceOf(bookOf(work)), shift));
        expectWorkable(work, found, shift);
        expect(found.proved).toBe(true);
        expect(found.shifts).toHaveLength(
          Math.min(...[...everyOrder(work)].map((order) => shiftsAlong(order, shift))),
        );
      }),
      { numRuns: 150 },
    );
  });

  it('names a least that the best keeps to, where the search was cut short', () => {
    fc.assert(
      fc.property(anyWork(16, 0.15, 6), fc.integer({ min: 6, max: 14 }), (work, shift) => {
        const precedence = precedenceOf(bookOf(work));
        const cut = known(inShifts(precedence, shift, 3));
        const best = known(inShifts(precedence, shift));
        expectWorkable(work, cut, shift);
        expect(best.proved).toBe(true);
        expect(cut.atLeast).toBeLessThanOrEqual(best.shifts.length);
        expect(cut.shifts.length).toBeGreaterThanOrEqual(best.shifts.length);
      }),
      { numRuns: 60 },
    );
  });

  it.each([
    // source: J. R. Jackson, A computing procedure for a line balancing problem, Management Science 2 (1956)
    ['Jackson’s eleven tasks', jackson, { 7: 8, 9: 6, 10: 5, 13: 4, 14: 4, 21: 3 }],
    // source: Mertens’ seven tasks, optima of the line balancing data sets of Scholl 1993; arcs from memory
    ['Mertens’ seven tasks', mertens, { 6: 6, 7: 5, 8: 5, 10: 3, 15: 2, 18: 2 }],
    // source: E. H. Bowman, Assembly-line balancing by linear programming, Operations Research 8 (1960)
    ['Bowman’s eight tasks', bowman, { 20: 5 }],
  ] as const)('divides %s among as few stations as published', (_, work, optima) => {
    for (const [cycle, stations] of Object.entries(optima)) {
      const found = known(inShifts(precedenceOf(bookOf(work)), Number(cycle)));
      expectWorkable(work, found, Number(cycle));
      expect([cycle, found.shifts.length, found.proved]).toEqual([cycle, stations, true]);
    }
  });

  it('strips and builds the demonstration engine in shifts of eight hours', () => {
    const work = [...quillfeather().operations.values()];
    const found = known(inShifts(precedenceOf(bookOf(work)), 480));
    expectWorkable(work, found, 480);
    expect(found.proved).toBe(true);
  });

  it('adds tenths of a minute as they are written', () => {
    const work = Array.from({ length: 30 }, (_, at) => operation(`op-${at}`, { minutes: 0.1 }));
    expect(known(inShifts(precedenceOf(bookOf(work)), 0.3)).shifts).toHaveLength(10);
  });

  it('is none for no work', () => {
    expect(known(inShifts(precedenceOf(bookOf([])), 480))).toEqual({ shifts: [], atLeast: 0, proved: true });
  });

  it('is refused where an operation is longer than a shift, or of no said length', () => {
    const long = precedenceOf(bookOf([operation('run-in', { minutes: 300 })]));
    expect(inShifts(long, 240)).toMatchObject({
      refusal: { what: 'run-in takes 300 minutes and does not go into a shift of 240' },
    });
    expect(inShifts(long, 0)).toMatchObject({ kind: 'refused' });
    expect(inShifts(precedenceOf(bookOf([operation('run-in')])), 240)).toMatchObject({
      refusal: { what: 'it is not said how long this takes: run-in' },
    });
  });
});
