/** @module Chances that several sizes conform, and that parts are accepted wrongly, against scipy and published tables. */
import { describe, expect, it } from 'vitest';
import { conformanceProbability } from '../../src/measure/guard-band.ts';
import { jointConformance } from '../../src/measure/joint-conformance.ts';
import { normalQuantile } from '../../src/quantity/normal.ts';
import type { Uncertain } from '../../src/quantity/uncertain.ts';
import { ask, lacking } from './program.ts';

interface Case {
  readonly values: readonly number[];
  readonly shared: number;
  readonly own: number;
  readonly greatest: number;
}

/** Spread over what happens at a bench: few and many sizes, much and little in common, near and far from the limit. */
const cases: readonly Case[] = [2, 3, 4, 6].flatMap((count) =>
  [0, 0.5, 1, 3].flatMap((shared) =>
    [0.2, 1, 2.5].map((greatest) => ({
      values: Array.from({ length: count }, (_, index) => -((index * 37) % 11) / 5),
      shared,
      own: 1,
      greatest,
    })),
  ),
);

const sizesOf = ({ values, shared, own }: Case): readonly Uncertain[] =>
  values.map((value, index) => ({
    value,
    terms: [
      { name: 'calibration', share: shared, freedom: Infinity },
      { name: `repeat ${index}`, share: own, freedom: Infinity },
    ].filter(({ share }) => share > 0),
  }));

const program = `
import json, sys
import numpy as np
from scipy.stats import multivariate_normal
told = []
for case in json.load(sys.stdin):
  n = len(case['values'])
  cov = np.full((n, n), case['shared'] ** 2) + np.eye(n) * case['own'] ** 2
  limits = np.full(n, case['greatest'])
  told.append(float(multivariate_normal.cdf(limits, case['values'], cov, False, 2000000, 1e-6, 1e-6)))
print(json.dumps(told))
`;

describe('the chance that all of several sizes conform', () => {
  it('is the distribution function of a multivariate normal', (context) => {
    const lacks = lacking('scipy');
    context.skip(lacks !== undefined, `${lacks}`);
    const told: readonly number[] = JSON.parse(
      ask('/usr/bin/python3', ['-W', 'ignore', '-c', program], JSON.stringify(cases)),
    );
    expect(told).toHaveLength(cases.length);
    for (const [index, each] of cases.entries()) {
      expect(jointConformance(sizesOf(each), { greatest: each.greatest })).toBeCloseTo(
        told[index] ?? Number.NaN,
        4,
      );
    }
  });
});

describe('parts accepted as measured', () => {
  /** Shares of a process about the middle of limits ±1 that are accepted or rejected wrongly, by plain summation. */
  const wrongly = (process: number, u: number, accepted = 1) => {
    // What is measured of a part lies about it as the part lies about what is measured.
    const passes = (part: number) =>
      conformanceProbability(part, u, Infinity, { least: -accepted, greatest: accepted });
    const share = (from: number, to: number, chance: (part: number) => number) => {
      const steps = 4000;
      const step = (to - from) / steps;
      return Array.from({ length: steps }, (_, index) => from + (index + 0.5) * step).reduce(
        (sum, part) =>
          sum +
          ((step * Math.exp(-((part / process) ** 2) / 2)) / process / Math.sqrt(2 * Math.PI)) * chance(part),
        0,
      );
    };
    return {
      falselyAccepted: 2 * share(1, 1 + 9 * process, passes),
      falselyRejected: share(-1, 1, (part) => 1 - passes(part)),
    };
  };

  it.each([
    // source: draft NCSLI RP-19, table of false acceptance in per cent by the share in tolerance, test s = process s / 4
    [0.6, 4.838603],
    [0.7, 3.922341],
    [0.8, 2.855831],
    [0.9, 1.599953],
    [0.95, 0.871009],
    [0.99, 0.199917],
  ])('of a process with %f in tolerance are bad in the printed share', (inTolerance, percent) => {
    const process = 1 / normalQuantile((1 + inTolerance) / 2);
    expect(wrongly(process, process / 4).falselyAccepted * 100).toBeCloseTo(percent, 2);
  });

  it.each([
    // source: D. Deaver, How to maintain your confidence (1993), pp. 7 and 10: limits in process s, ratio of spreads,
    // accepted up to so much of the limit: share falsely accepted and rejected
    [2, 4, 1, 0.008, 0.015],
    [2, 2, 0.91, 0.008, 0.066],
  ])('within %f s with a ratio of %f are wrong as often as printed', (limit, ratio, accepted, bad, good) => {
    const process = 1 / limit;
    const told = wrongly(process, process / ratio, accepted);
    expect(told.falselyAccepted).toBeCloseTo(bad, 3);
    expect(told.falselyRejected).toBeCloseTo(good, 3);
  });
});
