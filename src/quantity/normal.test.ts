/** @module The normal distribution gives the printed figures and undoes itself. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { normalCumulative, normalQuantile } from './normal.ts';

describe('the normal distribution', () => {
  // source: JCGM 106:2012, Table 1: coverage factor for a conformance probability at one limit
  it.each([
    [0.8, 0.84],
    [0.9, 1.28],
    [0.95, 1.64],
    [0.99, 2.33],
    [0.999, 3.09],
  ])('holds %f below the printed %f', (probability, z) => {
    expect(Math.abs(normalQuantile(probability) - z)).toBeLessThanOrEqual(0.005);
  });

  it('undoes itself far out on both sides', () => {
    fc.assert(
      fc.property(between(-37, 7), (z) => {
        const back = normalQuantile(normalCumulative(z));
        // above the middle a probability near 1 has no digits left for what is beyond it
        const digits = z > 2 ? 1e-16 / Math.max(1e-300, normalCumulative(-z)) : 0;
        expect(Math.abs(back - z)).toBeLessThanOrEqual((1e-12 + digits) * (1 + Math.abs(z)));
      }),
    );
  });

  it('is whole on both sides together, and grows', () => {
    fc.assert(
      fc.property(between(-9, 9), between(1e-6, 1), (z, step) => {
        expect(normalCumulative(z) + normalCumulative(-z)).toBeCloseTo(1, 15);
        expect(normalCumulative(z + step)).toBeGreaterThanOrEqual(normalCumulative(z));
      }),
    );
  });

  it.each([0.46875 * Math.SQRT2, 4 * Math.SQRT2])('is smooth where its formula changes, at %f', (z) => {
    const below = normalCumulative(-z * (1 - 1e-13));
    const above = normalCumulative(-z * (1 + 1e-13));
    expect(Math.abs(below / above - 1)).toBeLessThan(1e-11);
  });

  it.each([0.075, 0.925, Math.exp(-25)])('turns round smoothly where its formula changes, at %f', (p) => {
    const step = 1e-13;
    expect(Math.abs(normalQuantile(p * (1 + step)) / normalQuantile(p * (1 - step)) - 1)).toBeLessThan(1e-11);
  });

  it('knows its ends, and what is no probability', () => {
    expect([normalQuantile(0), normalQuantile(0.5), normalQuantile(1)]).toEqual([-Infinity, 0, Infinity]);
    expect([normalCumulative(-Infinity), normalCumulative(Infinity)]).toEqual([0, 1]);
    expect(() => normalQuantile(1.1)).toThrow(RangeError);
    expect(() => normalQuantile(Number.NaN)).toThrow(RangeError);
  });
});
