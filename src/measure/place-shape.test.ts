/** @module What the cells of a place lead to expect of one another, against programs from outside and by its laws. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { invert } from './inverse.ts';
import { type ShapeCell, shapeOf } from './place-shape.ts';

const spread = { middle: 54.99, level: 1.2, wear: 0.05, noise: 0.002 };

/** Planes × axes, row by row. */
const grid = (axes: number, ...sizes: readonly number[]): readonly ShapeCell[] =>
  sizes.map((size, at) => ({ size, plane: Math.floor(at / axes), axis: at % axes }));

const mostAt = (density: (size: number) => number, from: number, to: number): number => {
  const sizes = Array.from({ length: 2001 }, (_, at) => from + ((to - from) * at) / 2000);
  return sizes.reduce((best, size) => (density(size) > density(best) ? size : best));
};

const integral = (density: (size: number) => number): number => {
  let sum = 0;
  for (let at = 0; at < 400_000; at += 1) sum += density(45 + at * 5e-5) * 5e-5;
  return sum;
};

describe('the inverse of a matrix', () => {
  it('undoes it, and its determinant is that of the Hilbert matrix', () => {
    // source: the inverse Hilbert matrix of order 3 is [9 -36 30; -36 192 -180; 30 -180 180], determinant 1/2160
    // (any text on numerical linear algebra).
    const hilbert = [0, 1, 2].map((row) => [0, 1, 2].map((column) => 1 / (row + column + 1)));
    const { entries, logDeterminant } = invert(hilbert);
    const printed = [
      [9, -36, 30],
      [-36, 192, -180],
      [30, -180, 180],
    ];
    for (const [row, each] of printed.entries()) {
      for (const [column, entry] of each.entries()) expect(entries[row]?.[column]).toBeCloseTo(entry, 8);
    }
    expect(Math.exp(logDeterminant)).toBeCloseTo(1 / 2160, 12);
  });
});

describe('a cell of a place is expected', () => {
  it('where the others lie, when they are all alike', () => {
    const [bells] = shapeOf(grid(2, 54.4, 54.97, 54.97, 54.97), spread, []);
    expect(mostAt(bells?.density ?? Math.abs, 54.9, 55.05)).toBeCloseTo(54.97, 3);
  });

  it('where planes and axes together put it: what the others have in common is taken over', () => {
    // The second plane is 0.05 more worn, the second axis 0.03: the last cell follows, though nothing lies there.
    const cells = grid(2, 54.99, 54.96, 54.94, 54.5);
    const bells = shapeOf(cells, spread, [])[3];
    expect(mostAt(bells?.density ?? Math.abs, 54.85, 55)).toBeCloseTo(54.91, 2);
  });

  it('where the shape of another place puts it, more or less worn', () => {
    const barrel = [54.98, 54.95, 54.9];
    const cells = barrel.map((size, plane) => ({ size: size - 0.004, plane, axis: 0 }));
    const alone = shapeOf(cells.slice(0, 3), spread, [])[2];
    const followed = shapeOf(cells, spread, [barrel])[2];
    expect(followed?.density(54.896)).toBeGreaterThan(3 * (alone?.density(54.896) ?? Number.NaN));
  });

  it('with a probability that sums to one, and no further than its peak', () => {
    const all = shapeOf(grid(2, 54.97, 54.96, 54.95, 54.9, 54.93, 54.91), spread, []);
    for (const bells of all.slice(0, 2)) {
      expect(integral(bells.density)).toBeCloseTo(1, 3);
      for (let size = 54.8; size < 55; size += 0.01) {
        expect(bells.density(size)).toBeLessThanOrEqual(bells.peak);
      }
    }
  });

  it('the same wherever the place lies and whichever way it is turned', () => {
    const size = fc.integer({ min: 54_900, max: 55_000 }).map((microns) => microns / 1000);
    fc.assert(
      fc.property(fc.array(size, { minLength: 4, maxLength: 4 }), (sizes) => {
        const here = shapeOf(grid(2, ...sizes), spread, []);
        const there = shapeOf(
          grid(2, ...sizes.map((each) => each + 1)),
          { ...spread, middle: spread.middle + 1 },
          [],
        );
        const turned = shapeOf(
          grid(2, ...sizes).map(({ size: each, plane, axis }) => ({ size: each, plane: axis, axis: plane })),
          spread,
          [],
        );
        for (const [at, bells] of here.entries()) {
          const density = bells.density(54.95);
          expect(there[at]?.density(55.95)).toBeCloseTo(density, 6);
          expect(turned[at]?.density(54.95)).toBeCloseTo(density, 6);
        }
      }),
      { numRuns: 30 },
    );
  });
});
