/** @module Degrees of crank come out as the length that a tape along the flywheel rim shows. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { certain } from '../quantity/uncertain.ts';
import { reckonByName } from './list.ts';
import { rimLength } from './rim-length.ts';

const crank = { stroke: '98mm', rod: '168mm' };

describe('length on the rim', () => {
  it('of the travel’s angle is the arc', () => {
    const { results } = known(reckonByName('piston-travel', { ...crank, angle: '20deg', rim: '380mm' }));
    // source: GNU units 2.22, `380 mm / 2 * 20 degree` in mm
    outsideCheck(
      'piston-travel',
      'GNU units: 380 mm / 2 × 20 degree',
      'mm',
      1e-6,
    )(Number(results['rim-length']?.value), 66.322512);
  });

  it('of a travel is told before and after the top, and goes with the angles', () => {
    const { results } = known(
      reckonByName('crank-angle', { ...crank, 'pin-offset': '0.8mm', travel: '3.75mm', rim: '380±0.5mm' }),
    );
    // source: GNU units 2.22, `380 mm / 2 * 19.880361 degree` in mm, for the angle of which the tests of crank-angle tell
    const perDegree = 65.925774 / 19.880361;
    const check = outsideCheck('crank-angle', 'GNU units: 380 mm / 2 × 1 degree', 'mm', 1e-5);
    for (const side of ['before', 'after'])
      check(Number(results[`rim-${side}`]?.value), Number(results[side]?.value) * perDegree);
    // a rim known to 0.5 mm in 380 mm gives its arc no better than that share of it
    const arc = results['rim-before'];
    expect((arc?.u ?? 0) / Number(arc?.value)).toBeCloseTo(0.5 / 1.96 / 380, 6);
  });

  it('is left out where no rim is given, and refused for one that is none', () => {
    expect(known(reckonByName('piston-travel', { ...crank, angle: '20deg' })).results).not.toHaveProperty(
      'rim-length',
    );
    for (const rim of ['0mm', '-380mm', '380m'])
      expect(reckonByName('piston-travel', { ...crank, angle: '20deg', rim })).toMatchObject({
        refusal: { where: 'rim' },
      });
    expect(reckonByName('crank-angle', { ...crank, travel: '3.75mm', rim: '0mm' })).toMatchObject({
      refusal: { where: 'rim' },
    });
  });

  it('adds up: two angles one after the other are as long as both together', () => {
    fc.assert(
      fc.property(between(100, 2000), between(-6, 6), between(-6, 6), (rim, a, b) => {
        const arc = (angle: number) => known(rimLength(certain(rim), certain(angle))).value;
        expect(arc(a) + arc(b)).toBeCloseTo(arc(a + b), 8);
      }),
    );
  });
});
