/** @module Conformance probabilities held against scipy's distributions. */
import { describe, expect, it } from 'vitest';
import { conformanceProbability, guardBand } from '../../src/measure/guard-band.ts';
import { askPython, lacking } from './program.ts';

const absent = lacking('scipy');

/** value, u, freedom (0 for the normal distribution), least, greatest */
const cases = [
  [54.95, 0.003, 0, 54.93, 55],
  [54.931, 0.003, 0, 54.93, 55],
  [54.92, 0.003, 0, 54.93, 55],
  [54.998, 0.0034, 41.7, 54.93, 55],
  [55.01, 0.0034, 3.2, 54.93, 55],
  [10, 0.5, 1, 9.9, 10.1],
  [0.028, 0.0022, 18, -1, 0.03],
  [0.04, 0.0022, 9, -1, 0.03],
] as const;

describe('conformance probability', () => {
  it('agrees with the normal and t distributions of scipy', (context) => {
    context.skip(absent !== undefined, absent);
    const theirs = askPython(`
import json
from scipy import stats
def p(y, u, nu, least, greatest):
    d = stats.norm if nu == 0 else stats.t(nu)
    return d.cdf((greatest - y) / u) - d.cdf((least - y) / u)
print(json.dumps([p(*row) for row in ${JSON.stringify(cases)}]))`);
    const ours = cases.map(([value, u, freedom, least, greatest]) =>
      conformanceProbability(value, u, freedom === 0 ? Number.POSITIVE_INFINITY : freedom, {
        least,
        greatest,
      }),
    );
    expect(theirs).toHaveLength(cases.length);
    for (const [index, each] of (theirs as readonly number[]).entries()) {
      expect(ours[index]).toBeCloseTo(each, 11);
    }
  });

  it('turns where the distributions of scipy reach what is asked', (context) => {
    context.skip(absent !== undefined, absent);
    const ours = [guardBand(1, 0.95), guardBand(1, 0.99), guardBand(1, 0.95, 9), guardBand(1, 0.9, 4.5)];
    // By its distribution and not by its inverse, which for 4.5 degrees of freedom is itself off by 1e-10.
    const theirs = askPython(`
import json
from scipy import stats
a, b, c, d = ${JSON.stringify(ours)}
print(json.dumps([stats.norm.cdf(a), stats.norm.cdf(b), stats.t(9).cdf(c), stats.t(4.5).cdf(d)]))`);
    for (const [index, asked] of [0.95, 0.99, 0.95, 0.9].entries()) {
      expect((theirs as readonly number[])[index]).toBeCloseTo(asked, 12);
    }
  });
});
