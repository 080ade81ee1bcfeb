/** @module The assignment problem: published cases, every order of small ones, and the proof that comes with each. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eightByEight } from '../../test/eight-by-eight.ts';
import { everyWay } from '../../test/every-way.ts';
import { assign } from './assignment.ts';

const sumOf = (cost: readonly (readonly number[])[], columns: readonly number[]): number =>
  columns.reduce((total, column, row) => total + (cost[row]?.[column] ?? Number.NaN), 0);

const table = fc.tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 0, max: 2 })).chain(([rows, more]) =>
  fc.array(
    fc.array(fc.oneof({ weight: 5, arbitrary: fc.integer({ min: -9, max: 9 }) }, fc.constant(Infinity)), {
      minLength: rows + more,
      maxLength: rows + more,
    }),
    { minLength: rows, maxLength: rows },
  ),
);

describe('assignment', () => {
  it('solves a published 8 by 8 problem', () => {
    const best = assign(eightByEight.costs);
    expect(best?.columns.map((column) => column + 1)).toEqual(eightByEight.columns);
  });

  it('solves a published 3 by 3 problem', () => {
    // source: SciPy's reference of linear_sum_assignment (from memory): sum 5, columns 2 1 3
    const cost = [
      [4, 1, 3],
      [2, 0, 5],
      [3, 2, 2],
    ];
    expect(assign(cost)?.columns).toEqual([1, 0, 2]);
    expect(sumOf(cost, assign(cost)?.columns ?? [])).toBe(5);
  });

  it.each([[[[Number.NaN]]], [[[-Infinity]]], [[[1], [1]]], [[[1, 2], [1]]]])(
    'does not search for ever among %j',
    (cost) => {
      expect(() => assign(cost)).toThrow(RangeError);
    },
  );

  it('costs no more than any other way, says when there is none, and proves itself by its prices', () => {
    fc.assert(
      fc.property(table, (cost) => {
        const columns = (cost[0] ?? []).map((_, column) => column);
        const least = Math.min(...everyWay(cost.length, columns).map((way) => sumOf(cost, way)));
        const best = assign(cost);
        expect(best === undefined).toBe(least === Infinity);
        if (!best) return;
        expect(new Set(best.columns).size).toBe(cost.length);
        expect(sumOf(cost, best.columns)).toBe(least);
        for (const [row, costs] of cost.entries())
          for (const [column, one] of costs.entries()) {
            const over = one - (best.rowPrices[row] ?? 0) - (best.columnPrices[column] ?? 0);
            expect(over).toBeGreaterThanOrEqual(0);
            if (best.columns[row] === column) expect(over).toBe(0);
            else if (!best.columns.includes(column)) expect(best.columnPrices[column]).toBe(0);
          }
      }),
      { numRuns: 2000 },
    );
  });
});
