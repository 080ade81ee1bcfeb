/** @module Student's t gives the printed table and undoes itself. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { coverageFactor } from './coverage.ts';
import { normalCumulative } from './normal.ts';
import { studentCumulative, studentQuantile } from './student.ts';

// source: JCGM 100:2008, Table G.2, every column, for the rows that follow
const probabilities = [0.6827, 0.9, 0.95, 0.9545, 0.99, 0.9973];
const tableG2: readonly (readonly [freedom: number, factors: string])[] = [
  [1, '1.84 6.31 12.71 13.97 63.66 235.8'],
  [2, '1.32 2.92 4.30 4.53 9.92 19.21'],
  [3, '1.20 2.35 3.18 3.31 5.84 9.22'],
  [4, '1.14 2.13 2.78 2.87 4.60 6.62'],
  [5, '1.11 2.02 2.57 2.65 4.03 5.51'],
  [6, '1.09 1.94 2.45 2.52 3.71 4.90'],
  [7, '1.08 1.89 2.36 2.43 3.50 4.53'],
  [8, '1.07 1.86 2.31 2.37 3.36 4.28'],
  [9, '1.06 1.83 2.26 2.32 3.25 4.09'],
  [10, '1.05 1.81 2.23 2.28 3.17 3.96'],
  [15, '1.03 1.75 2.13 2.18 2.95 3.59'],
  [16, '1.03 1.75 2.12 2.17 2.92 3.54'],
  [20, '1.03 1.72 2.09 2.13 2.85 3.42'],
  [30, '1.02 1.70 2.04 2.09 2.75 3.27'],
  [50, '1.01 1.68 2.01 2.05 2.68 3.16'],
  [Infinity, '1.000 1.645 1.960 2.000 2.576 3.000'],
];

const freedoms = fc.oneof(fc.integer({ min: 1, max: 60 }), between(0.5, 1e6));

describe("Student's t", () => {
  it.each(tableG2)('prints the row of %d degrees of freedom', (freedom, printed) => {
    const factors = printed.split(' ');
    const found = probabilities.map((probability, index) =>
      coverageFactor(probability, freedom).toFixed(factors[index]?.split('.')[1]?.length ?? 0),
    );
    expect(found).toEqual(factors);
  });

  it('with one degree of freedom is the arc tangent', () => {
    fc.assert(
      fc.property(between(-1e3, 1e3), (t) => {
        expect(studentCumulative(t, 1)).toBeCloseTo(0.5 + Math.atan(t) / Math.PI, 14);
      }),
    );
  });

  it('undoes itself, far out too', () => {
    fc.assert(
      fc.property(freedoms, fc.double({ min: -12, max: Math.log10(0.5), noNaN: true }), (freedom, power) => {
        const probability = 10 ** power;
        const t = studentQuantile(probability, freedom);
        expect(Math.abs(studentCumulative(t, freedom) / probability - 1)).toBeLessThan(1e-10);
        expect(studentQuantile(1 - probability, freedom)).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  it('is whole on both sides together, grows with t, and narrows with freedom', () => {
    fc.assert(
      fc.property(freedoms, between(0, 50), (freedom, t) => {
        const below = studentCumulative(-t, freedom);
        expect(below + studentCumulative(t, freedom)).toBeCloseTo(1, 14);
        expect(studentCumulative(-t - 0.01, freedom)).toBeLessThanOrEqual(below);
        expect(studentCumulative(-t, freedom * 2)).toBeLessThanOrEqual(below * (1 + 1e-12));
      }),
    );
  });

  it.each([0.1, 1, 3, 10])('is smooth where its formula changes to the nearly normal one, at t = %f', (t) => {
    const below = studentCumulative(-t, 10_000 * (1 - 1e-12));
    expect(Math.abs(studentCumulative(-t, 10_000) / below - 1)).toBeLessThan(1e-11);
  });

  it('becomes the normal distribution', () => {
    expect(studentCumulative(-2, Infinity)).toBe(normalCumulative(-2));
    expect(studentCumulative(-2, 1e15)).toBeCloseTo(normalCumulative(-2), 14);
    expect(studentQuantile(0.975, 1e300)).toBeCloseTo(1.959963984540054, 12);
  });

  it('knows its ends, and what makes no sense', () => {
    expect([0, 0.5, 1].map((p) => studentQuantile(p, 7))).toEqual([-Infinity, 0, Infinity]);
    for (const freedom of [0.5, 7, 10_000, 1e37, Infinity]) {
      expect(studentCumulative(Infinity, freedom)).toBe(1);
      expect(studentCumulative(-Infinity, freedom)).toBe(0);
    }
    expect(() => studentQuantile(2, 7)).toThrow(RangeError);
    expect(() => studentQuantile(0.9, 0)).toThrow(RangeError);
  });
});

describe('a coverage factor', () => {
  it('takes the next lower whole number of degrees of freedom', () => {
    // source: JCGM 100:2008, H.1.6: 16.7 is truncated to 16, t99 = 2.92
    expect(coverageFactor(0.99, 16.7)).toBe(coverageFactor(0.99, 16));
    expect(coverageFactor(0.99, 16.7)).toBeCloseTo(2.92, 2);
    expect(coverageFactor(0.95, 5 - 1e-12)).toBe(coverageFactor(0.95, 5));
    expect(coverageFactor(0.95, 0.5)).toBe(studentQuantile(0.975, 0.5));
  });

  it('is the same asked again, and when other ones were asked for between', () => {
    const first = coverageFactor(0.95, 12);
    for (let freedom = 1; freedom < 2500; freedom += 1) coverageFactor(freedom % 2 ? 0.99 : 0.9, freedom);
    expect(coverageFactor(0.95, 12)).toBe(first);
    for (let freedom = 1; freedom < 2500; freedom += 1) coverageFactor(0.95, freedom);
    expect(coverageFactor(0.95, 12)).toBe(first);
  });
});
