/** @module The evenest assignment: published bottleneck, every way of small tables, who cannot be served and why. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eightByEight } from '../../test/eight-by-eight.ts';
import { everyWay } from '../../test/every-way.ts';
import { evenAssignment } from './even-assignment.ts';

const table = fc
  .tuple(fc.integer({ min: 1, max: 5 }), fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 12 }))
  .chain(([rows, columns, most]) =>
    fc.array(
      fc.array(fc.oneof({ weight: 4, arbitrary: fc.integer({ min: 0, max: most }) }, fc.constant(Infinity)), {
        minLength: columns,
        maxLength: columns,
      }),
      { minLength: rows, maxLength: rows },
    ),
  );

/** Greatest, sum, then columns one by one: as the evenest comes first. */
const ranked = (costs: readonly (readonly number[])[]) =>
  everyWay(
    costs.length,
    (costs[0] ?? []).map((_, column) => column),
  )
    .map((columns) => {
      const paid = columns.map((column, row) => costs[row]?.[column] ?? Infinity);
      return { columns, greatest: Math.max(...paid), sum: paid.reduce((a, b) => a + b, 0) };
    })
    .filter(({ greatest }) => greatest < Infinity)
    .sort((a, b) => {
      const at = a.columns.findIndex((column, row) => column !== b.columns[row]);
      return a.greatest - b.greatest || a.sum - b.sum || (a.columns[at] ?? 0) - (b.columns[at] ?? 0);
    });

describe('the evenest assignment', () => {
  it('of the published 8 by 8 problem has a greatest cost of 16', () => {
    // source: N. Christofides, Graph Theory (1975), p. 381, every order of the columns weighed
    const even = evenAssignment(eightByEight.costs);
    expect(even.kind === 'assigned' && even.greatest).toBe(16);
  });

  it('is the first of every way by greatest, sum and order, or names a crowd that is too large', () => {
    let crowds = 0;
    fc.assert(
      fc.property(table, (costs) => {
        const [best] = ranked(costs);
        const even = evenAssignment(costs);
        if (even.kind === 'assigned') {
          const { columns, greatest, sum } = even;
          expect({ columns, greatest, sum }).toEqual(best);
          return;
        }
        crowds += 1;
        expect(best).toBeUndefined();
        expect(even.columns.length).toBeLessThan(even.rows.length);
        const may = new Set(
          even.rows.flatMap((row) =>
            (costs[row] ?? []).flatMap((cost, column) => (cost < Infinity ? [column] : [])),
          ),
        );
        expect([...may].sort((a, b) => a - b)).toEqual(even.columns);
      }),
      { numRuns: 3000 },
    );
    expect(crowds).toBeGreaterThan(100);
  });
});
