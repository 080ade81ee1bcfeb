/** @module What a millimetre of shim comes to in crank angle, against a pump whose cam, roller and port are moved by scipy. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { camRate, flankLift } from '../../src/engine/cam-law.ts';
import { mm, radians } from '../../src/quantity/brand.ts';
import { between } from '../between.ts';
import { known } from '../known.ts';
import { ask, lacking } from './program.ts';

const cases = fc.sample(
  fc.noBias(
    fc.record({
      base: between(8, 40),
      more: between(4, 200),
      roller: between(3, 25),
      at: between(0.08, 0.6),
      crankPerAngle: fc.constantFrom(1 as const, 2 as const),
    }),
  ),
  { seed: 2_356, numRuns: 120 },
);

// Coordinates only: the roller's centre moves on its line and touches the circle of the flank; the crank turns once or
// twice for one turn of the cam; the port closes when the plunger has risen by its lift at the timing point, and by a
// hundredth of a millimetre more with a hundredth more of shim under the flange.
const program = `
import json, math, sys
from scipy.optimize import brentq
told = []
for case in json.load(sys.stdin):
  b, R, r = case['base'], case['base'] + case['more'], case['roller']
  def lift(at):
    cx, cy = -(R - b) * math.cos(at), (R - b) * math.sin(at)
    return brentq(lambda x: math.hypot(x - cx, -cy) - (R + r), b + r - 1e-9, b + r + 10 * R, xtol=1e-13) - (b + r)
  k = case['crankPerAngle']
  crank = lambda rise: k * brentq(lambda at: lift(at) - rise, 0, 1.3, xtol=1e-14, rtol=1e-14)
  rise = lift(case['at'])
  told.append([rise, (crank(rise + 1e-4) - crank(rise - 1e-4)) / 2e-4])
print(json.dumps(told))
`;

describe('the rate of shims by a cam', () => {
  it('is how much further the crank turns until the port closes', (context) => {
    const lacks = lacking('scipy');
    context.skip(lacks !== undefined, `${lacks}`);
    const told: readonly (readonly number[])[] = JSON.parse(
      ask('/usr/bin/python3', ['-c', program], JSON.stringify(cases)),
    );
    for (const [index, { base, more, roller, at, crankPerAngle }] of cases.entries()) {
      const flank = { base: mm(base), radius: mm(base + more), tappet: mm(roller) };
      const [lift = Number.NaN, rate = Number.NaN] = told[index] ?? [];
      expect(known(flankLift(flank, radians(at))).lift).toBeCloseTo(lift, 8);
      const law = { crankPerAngle, timingPoint: radians(at), shape: { kind: 'flank', flank } as const };
      expect(known(camRate(law)).rate / rate).toBeCloseTo(1, 5);
    }
  });
});
