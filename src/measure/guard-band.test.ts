/** @module Checks of verdicts against published conformity decisions. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../quantity/normal.ts';
import { conformanceProbability, guardBand, verdictOf } from './guard-band.ts';

const known = Number.POSITIVE_INFINITY;

describe('conformance probability', () => {
  it.each([
    // source: JCGM 106:2012, 7.3, table 1 (one limit, normal); z to two decimals, values from memory and recomputed
    [0.8, 0.84],
    [0.9, 1.28],
    [0.95, 1.64],
    [0.99, 2.33],
    [0.999, 3.09],
  ])('is %f at %f standard uncertainties inside one limit', (probability, z) => {
    expect(conformanceProbability(10 - z, 1, known, { greatest: 10 })).toBeCloseTo(probability, 2);
    expect(conformanceProbability(10 + z, 1, known, { least: 10 })).toBeCloseTo(probability, 2);
    expect(Math.abs(normalQuantile(probability) - z)).toBeLessThan(0.006);
  });

  it('gives the breakdown voltage example', () => {
    // source: JCGM 106:2012, 7.4 (diode, limit -5.40 V, -5.47 V with u 0.05 V): 0.92; from memory and recomputed
    expect(conformanceProbability(-5.47, 0.05, known, { greatest: -5.4 })).toBeCloseTo(0.919, 3);
  });

  it('gives the speed limit example', () => {
    // source: JCGM 106:2012 (limit 100 km/h, u = 2 % of the reading, 99.9 % sure): act from 107 km/h; from memory
    const sure = (speed: number) => 1 - conformanceProbability(speed, 0.02 * speed, known, { greatest: 100 });
    expect(sure(106)).toBeLessThan(0.999);
    expect(sure(107)).toBeGreaterThan(0.999);
  });

  it('counts both tails of a narrow tolerance: none is wide enough to accept below 3.92 u', () => {
    // source: recomputed, 2 × 1.960; check with ISO 14253-1:2017, tolerance not large against u
    const best = (width: number) =>
      conformanceProbability(0, 1, known, { least: -width / 2, greatest: width / 2 });
    expect(best(3.91)).toBeLessThan(0.95);
    expect(best(3.93)).toBeGreaterThan(0.95);
  });

  it('uses Student where the uncertainty is itself not well known', () => {
    // source: JCGM 100:2008, table G.2: t 2.13 leaves 95 % between its tails at 15 degrees of freedom
    expect(conformanceProbability(0, 1, 15, { least: -2.131, greatest: 2.131 })).toBeCloseTo(0.95, 3);
  });

  it('is a probability, and sums to one with nonconformance', () => {
    const figure = fc.double({ min: -1e3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(figure, fc.double({ min: 0, max: 100, noNaN: true }), figure, (value, u, bound) => {
        const below = conformanceProbability(value, u, known, { greatest: bound });
        const above = conformanceProbability(value, u, known, { least: bound });
        expect(below).toBeGreaterThanOrEqual(0);
        expect(below).toBeLessThanOrEqual(1);
        if (u > 0) expect(below + above).toBeCloseTo(1, 9);
      }),
    );
  });

  it('never falls as a value moves inwards', () => {
    const step = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(step, step, (a, b) => {
        const [near, far] = a < b ? [a, b] : [b, a];
        const at = (depth: number) => conformanceProbability(10 - depth, 1, 9, { greatest: 10 });
        expect(at(far)).toBeGreaterThanOrEqual(at(near));
      }),
    );
  });
});

describe('verdict', () => {
  it('turns exactly at the guard band of a wide tolerance', () => {
    // source: ISO 14253-1:2017: 1.65·u at 95 % (1.645 rounded up)
    expect(guardBand(1, 0.95)).toBeCloseTo(1.645, 3);
    const limits = { least: 54.9, greatest: 55 };
    const band = guardBand(0.002, 0.95);
    const at = (value: number) => verdictOf(value, 0.002, known, limits, 0.95);
    expect(at(55 - band - 1e-9)).toBe('within');
    expect(at(55 - band + 1e-9)).toBe('unsure');
    expect(at(55 + band - 1e-9)).toBe('unsure');
    expect(at(55 + band + 1e-9)).toBe('outside');
    expect(at(54.9 - band - 1e-9)).toBe('outside');
    expect(at(54.9 + band + 1e-9)).toBe('within');
  });

  it('is wider with few degrees of freedom', () => {
    // source: JCGM 100:2008, table G.2, 5 degrees of freedom, 90 % between the tails: 2.02
    expect(guardBand(1, 0.95, 5)).toBeCloseTo(2.015, 3);
  });

  it('takes an exact value on its limit as within', () => {
    expect(verdictOf(55, 0, known, { greatest: 55 }, 0.95)).toBe('within');
    expect(verdictOf(55.001, 0, known, { greatest: 55 }, 0.95)).toBe('outside');
  });

  it('is unsure, not outside, where the instrument is too poor for the tolerance', () => {
    expect(verdictOf(10, 5, known, { least: 9.9, greatest: 10.1 }, 0.95)).toBe('unsure');
  });

  it('is within where there is no limit', () => {
    expect(verdictOf(10, 5, known, {}, 0.95)).toBe('within');
  });
});
