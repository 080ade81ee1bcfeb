/** @module Piston travel and crank angle agree with the rod's constraint solved by scipy. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm, radians } from '../../src/quantity/brand.ts';
import { crankAngles } from '../../src/reckon/crank-angle.ts';
import { pistonTravel, travelPerDegree } from '../../src/reckon/piston-travel.ts';
import { ask, lacking } from './program.ts';

const cases = fc.sample(
  fc.noBias(
    fc
      .record({
        stroke: between(40, 400),
        longer: between(1.2, 6),
        off: fc.oneof(fc.constant(0), between(-0.5, 0.5)),
        // short of the bottom, which a pin offset brings nearer
        angle: between(0.05, 1.8),
      })
      .map(({ stroke, longer, off, angle }) => {
        const rod = (stroke / 2) * longer;
        return { stroke, rod, off: off * (rod - stroke / 2), angle };
      }),
  ),
  { seed: 6_155, numRuns: 200 },
);

// Coordinates only: the crank pin on its circle, the piston pin on its line, the rod's length between them.
// The top is where the height stops growing; the way back is a root of the travel on each side.
const program = `
import json, math, sys
from scipy.optimize import brentq
told = []
for case in json.load(sys.stdin):
  r, l, e = case['stroke'] / 2, case['rod'], case['off']
  def height(at):
    px, py = r * math.sin(at), r * math.cos(at)
    return brentq(lambda y: math.hypot(e - px, y - py) - l, py, py + l + 1, xtol=1e-13, rtol=1e-15)
  def slope(at):
    return (height(at + 1e-4) - height(at - 1e-4)) / 2e-4
  top = brentq(slope, -1.2, 1.2, xtol=1e-13)
  travel = lambda angle: height(top) - height(top + angle)
  s = travel(case['angle'])
  rate = (travel(case['angle'] + 1e-5) - travel(case['angle'] - 1e-5)) / 2e-5
  bottom = brentq(slope, math.pi - 1.5, math.pi + 1.5, xtol=1e-13) - top
  before = brentq(lambda a: travel(a) - s, bottom - 2 * math.pi, 0, xtol=1e-12)
  told.append([s, rate * math.pi / 180, before])
print(json.dumps(told))
`;

import { between } from '../between.ts';
import { known } from '../known.ts';
import { outsideCheck } from '../outside-check.ts';

describe('a slider-crank solved by scipy', () => {
  it('agrees in travel, rate and the angle on either side, pin offset or none', (context) => {
    const lacks = lacking('scipy');
    context.skip(lacks !== undefined, `${lacks}`);
    const told: readonly (readonly number[])[] = JSON.parse(
      ask('/usr/bin/python3', ['-c', program], JSON.stringify(cases)),
    );
    expect(told).toHaveLength(cases.length);
    const source = "the rod's constraint solved by scipy, 200 cranks";
    const inTravel = outsideCheck('piston-travel', source, 'mm', 1e-6);
    const inRate = outsideCheck('piston-travel', `${source}, per degree`, 'mm', 1e-4);
    const inAngle = outsideCheck('crank-angle', source, 'rad', 1e-6);
    cases.forEach(({ stroke, rod, off, angle }, index) => {
      const [s = Number.NaN, rate = Number.NaN, before = Number.NaN] = told[index] ?? [];
      const crank = { stroke: mm(stroke), rod: mm(rod), pinOffset: mm(off) };
      const angles = known(crankAngles(crank, mm(s)));
      inTravel(known(pistonTravel(crank, radians(angle))), s);
      inRate(known(travelPerDegree(crank, radians(angle))), rate);
      inAngle(angles.after, angle);
      inAngle(angles.before, before);
    });
  });
});
