/** @module The normal and Student's t distributions agree with scipy. */
import { describe, expect, it } from 'vitest';
import { normalCumulative, normalQuantile } from '../../src/quantity/normal.ts';
import { studentCumulative, studentQuantile } from '../../src/quantity/student.ts';
import { ask, lacking } from './program.ts';

const range = (from: number, to: number, step: number): readonly number[] =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, index) => from + index * step);

const z = [...range(-37, 6, 0.173), 0, 0.46875 * Math.SQRT2, -4 * Math.SQRT2];
const probabilities = [
  1e-300, 1e-100, 1e-20, 1e-12, 1e-6, 1e-3, 0.0249, 0.025, 0.0749, 0.075, 0.0751, 0.1, 0.2, 0.25, 0.26, 0.49,
  0.51, 0.6, 0.8, 0.9249, 0.925, 0.9251, 0.95, 0.975, 0.995, 0.99865, 0.9999,
];
/** Where a t quantile is asked for; scipy's own is searched for, to some nine digits, so its cumulative is asked back. */
const asked = probabilities.filter((p) => p >= 1e-12);
const freedoms = [
  0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 7.3, 9, 16, 16.7, 19, 25.6, 30, 50, 100, 333, 1000, 9999, 10_000, 1e6,
];
const t = [0, 1e-6, 0.01, 0.3, 1, 2, 2.12, 3.5, 6, 12, 50, 1000];

const program = `
import json, sys
from scipy.stats import norm, t
asked = json.load(sys.stdin)
print(json.dumps({
  'below': [norm.cdf(z) for z in asked['z']],
  'at': [norm.ppf(p) for p in asked['probabilities']],
  'studentBelow': [[t.cdf(-x, nu) for x in asked['t']] for nu in asked['freedoms']],
  'studentBack': [[t.cdf(x, nu) for x in row] for nu, row in zip(asked['freedoms'], asked['quantiles'])],
  'studentAt': [[t.ppf(p, nu) for p in asked['asked']] for nu in asked['freedoms']],
}))
`;

interface Told {
  readonly below: readonly number[];
  readonly at: readonly number[];
  readonly studentBelow: readonly (readonly number[])[];
  readonly studentBack: readonly (readonly number[])[];
  readonly studentAt: readonly (readonly number[])[];
}

const off = (got: number, expected: number): number =>
  got === expected ? 0 : Math.abs(got - expected) / Math.abs(expected);
const worst = (got: readonly number[], expected: readonly number[] | undefined): number =>
  Math.max(...got.map((each, index) => off(each, expected?.[index] ?? Number.NaN)));

describe('against scipy', () => {
  const lacks = lacking('scipy');
  const quantiles = freedoms.map((freedom) => asked.map((p) => studentQuantile(p, freedom)));
  const input = JSON.stringify({ z, probabilities, asked, freedoms, t, quantiles });
  const told: Told | undefined =
    lacks === undefined ? JSON.parse(ask('/usr/bin/python3', ['-c', program], input)) : undefined;

  it('the normal distribution agrees both ways', (context) => {
    context.skip(lacks !== undefined, `${lacks}`);
    expect(worst(z.map(normalCumulative), told?.below)).toBeLessThan(1e-12);
    expect(worst(probabilities.map(normalQuantile), told?.at)).toBeLessThan(2e-15);
  });

  it.for(freedoms.map((freedom, row) => ({ freedom, row })))(
    "Student's t with $freedom degrees of freedom agrees both ways",
    ({ freedom, row }, context) => {
      context.skip(lacks !== undefined, `${lacks}`);
      const below = t.map((x) => studentCumulative(-x, freedom));
      expect(worst(below, told?.studentBelow[row])).toBeLessThan(1e-12);
      expect(worst(asked, told?.studentBack[row])).toBeLessThan(1e-12);
      expect(worst(quantiles[row] ?? [], told?.studentAt[row])).toBeLessThan(5e-9);
    },
  );
});
