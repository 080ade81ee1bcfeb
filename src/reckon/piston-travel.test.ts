/** @module Piston travel agrees with printed figures, and with a crank solved point by point. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { crankOf, cranks } from '../../test/cranks.ts';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { degrees, mm, type Radians, radians } from '../quantity/brand.ts';
import { type Crank, topAngle, turning, wholeTravel } from './crank.ts';
import { reckonByName } from './list.ts';
import { pistonTravel, travelPerDegree } from './piston-travel.ts';

const travel = (crank: Crank, angle: Radians): number => known(pistonTravel(crank, angle));
const rate = (crank: Crank, angle: Radians): number => known(travelPerDegree(crank, angle));

const angles = between(-2 * Math.PI, 2 * Math.PI).map(radians);

/** Height of the piston pin from coordinates alone: where the rod is as long as it is, by halving. */
const heightByHalving = ({ stroke, rod, pinOffset }: Crank, at: number): number => {
  const across = (stroke / 2) * Math.sin(at);
  const up = (stroke / 2) * Math.cos(at);
  let low = up;
  let high = up + 2 * rod;
  for (let turn = 0; turn < 80; turn += 1) {
    const middle = (low + high) / 2;
    if (Math.hypot(pinOffset - across, middle - up) < rod) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** Crank position at which the pin stands highest, by narrowing three ways. */
const topByNarrowing = (crank: Crank): number => {
  let low = -Math.PI / 2;
  let high = Math.PI / 2;
  for (let turn = 0; turn < 200; turn += 1) {
    const third = (high - low) / 3;
    if (heightByHalving(crank, low + third) < heightByHalving(crank, high - third)) low += third;
    else high -= third;
  }
  return (low + high) / 2;
};

describe('piston travel', () => {
  // recomputed from s = r + l - r cos θ - √(l² - r² sin² θ), mm
  it.each([
    [80, 120, '0.809 1.163 1.579 2.057 2.596 3.195 3.852 4.566 5.336 6.161 7.037'],
    [100, 200, '0.948 1.363 1.851 2.412 3.045 3.748 4.520 5.359 6.265 7.235 8.267'],
  ])('with stroke %d and rod %d is as tabulated from 10 to 30 degrees', (stroke, rod, printed) => {
    const table = printed.split(' ').map((_, index) => travel(crankOf(stroke, rod), degrees(10 + 2 * index)));
    expect(table.map((value) => value.toFixed(3)).join(' ')).toBe(printed);
  });

  it.each([
    [80, 120, 46.863],
    [100, 200, 56.351],
  ])('with stroke %d and rod %d is %f mm at 90 degrees', (stroke, rod, printed) => {
    expect(travel(crankOf(stroke, rod), degrees(90)).toFixed(3)).toBe(printed.toFixed(3));
  });

  it('is the printed 0.32 cm, at 6.90 m/s, 20 degrees after top', () => {
    // source: Pulkrabek, Engineering Fundamentals of the Internal Combustion Engine, Example 2-1:
    // six cylinders, 3.0 L, bore = stroke, rod 16.6 cm, 3600 rev/min
    const stroke = Math.cbrt((500 * 4) / Math.PI) * 10;
    const crank = crankOf(stroke, 166);
    const source = 'Pulkrabek, Engineering Fundamentals of the Internal Combustion Engine, Example 2-1';
    outsideCheck('piston-travel', source, 'cm', 0.005)(travel(crank, degrees(20)) / 10, 0.32);
    const degreesPerSecond = (3600 / 60) * 360;
    outsideCheck(
      'piston-travel',
      source,
      'm/s',
      0.005,
    )((rate(crank, degrees(20)) * degreesPerSecond) / 1000, 6.9);
  });

  it('is fastest near 75 degrees, at about 6.54 m/s', () => {
    // source: Khurmi, Theory of Machines: r 300 mm, l 1 m, 200 rev/min. Printed from the first two terms of
    // a series; the terms left out come to 0.4 % of the speed and less than a degree
    const crank = crankOf(600, 1000);
    const metresPerSecond = (angle: number): number => (rate(crank, degrees(angle)) * 200 * 6) / 1000;
    outsideCheck(
      'piston-travel',
      'Khurmi, Theory of Machines, fastest piston',
      '%',
      0.4,
    )(metresPerSecond(75), 6.54);
    const fastest = Array.from({ length: 180 }, (_, angle) => angle).reduce((best, angle) =>
      metresPerSecond(angle) > metresPerSecond(best) ? angle : best,
    );
    expect(Math.abs(fastest - 75)).toBeLessThanOrEqual(1);
  });

  it('grows per degree as tabulated', () => {
    // recomputed, mm per degree, stroke 80, rod 120 (0.28449 at 18 degrees)
    for (const [angle, printed] of [
      [10, '0.161'],
      [14, '0.224'],
      [18, '0.284'],
      [22, '0.343'],
      [26, '0.399'],
    ] as const) {
      expect(rate(crankOf(80, 120), degrees(angle)).toFixed(3)).toBe(printed);
    }
  });

  it('is what a crank solved point by point gives, with the top found by trying', () => {
    fc.assert(
      fc.property(cranks, angles, (crank, angle) => {
        const top = topByNarrowing(crank);
        // the highest point is flat: trying finds it to some 1e-7 rad
        expect(Math.abs(topAngle(crank) - top)).toBeLessThan(1e-5);
        const solved = heightByHalving(crank, top) - heightByHalving(crank, topAngle(crank) + angle);
        expect(Math.abs(travel(crank, angle) - solved)).toBeLessThan(1e-9 * crank.rod);
      }),
    );
  });

  it('is nothing at top, repeats every turn, and never leaves the stroke', () => {
    fc.assert(
      fc.property(cranks, angles, (crank, angle) => {
        const here = travel(crank, angle);
        expect(travel(crank, radians(0))).toBeLessThan(1e-10);
        expect(here).toBeGreaterThanOrEqual(0);
        expect(here).toBeLessThanOrEqual(wholeTravel(crank) + 1e-9);
        expect(travel(crank, radians(angle + 2 * Math.PI))).toBeCloseTo(here, 8);
      }),
    );
  });

  it('is the same before and after top without an offset, and twice the throw at the bottom', () => {
    fc.assert(
      fc.property(cranks, angles, ({ stroke, rod }, angle) => {
        const crank = crankOf(stroke, rod);
        expect(travel(crank, radians(-angle))).toBeCloseTo(travel(crank, angle), 9);
        expect(travel(crank, radians(Math.PI))).toBeCloseTo(stroke, 9);
      }),
    );
  });

  it('mirrors when the pin stands off to the other side', () => {
    fc.assert(
      fc.property(cranks, angles, (crank, angle) => {
        const mirrored = { ...crank, pinOffset: mm(-crank.pinOffset) };
        expect(travel(mirrored, radians(-angle))).toBeCloseTo(travel(crank, angle), 9);
      }),
    );
  });

  it('with the pin off to the side to which the crank pin moves, is slower after top than before it', () => {
    const crank = crankOf(98, 168, 5);
    expect(topAngle(crank)).toBeGreaterThan(0);
    expect(travel(crank, degrees(60))).toBeLessThan(travel(crank, degrees(-60)));
    expect(wholeTravel(crank)).toBeGreaterThan(98);
  });

  it('changes by its rate', () => {
    fc.assert(
      fc.property(cranks, angles, (crank, angle) => {
        const step = 1e-4;
        const ahead = travel(crank, radians(angle + step)) - travel(crank, radians(angle - step));
        const perDegree = (ahead / (2 * step)) * (Math.PI / 180);
        expect(Math.abs(rate(crank, angle) - perDegree)).toBeLessThan(1e-5 * crank.stroke);
      }),
    );
  });

  it('is refused for a crank that cannot turn', () => {
    expect(turning(crankOf(98, 49)).kind).toBe('refused');
    expect(turning(crankOf(98, 168, 119)).kind).toBe('refused');
    expect(turning(crankOf(98, Number.NaN)).kind).toBe('refused');
    expect(turning(crankOf(98, 168, Number.NaN)).kind).toBe('refused');
    expect(pistonTravel(crankOf(0, 168), degrees(20)).kind).toBe('refused');
    expect(travelPerDegree(crankOf(98, 30_000), degrees(20)).kind).toBe('refused');
  });
});

describe('piston travel asked for by name', () => {
  const ask = (texts: Readonly<Record<string, string>>) => known(reckonByName('piston-travel', texts));

  it('gives travel and millimetres per degree, inches taken too', () => {
    // recomputed, see above
    expect(ask({ stroke: '80mm', rod: '120mm', angle: '20deg' }).results).toEqual({
      travel: { value: expect.closeTo(3.195, 3), unit: 'mm' },
      'per-degree': { value: expect.closeTo(0.314, 3), unit: 'mm/deg' },
    });
    const inches = ask({ stroke: '3.14961in', rod: '4.72441in', angle: '0.349066rad' });
    expect(inches.results.travel?.value).toBeCloseTo(3.195, 3);
  });

  it('carries what the inputs are known to, as ten thousand cranks made at random do', () => {
    const half = { stroke: 0.3, rod: 0.4, 'pin-offset': 0.2, angle: 2 };
    const asked = (angle: number) =>
      ask({
        stroke: `98 ± ${half.stroke} mm`,
        rod: `168 ± ${half.rod} mm`,
        'pin-offset': `1.5 ± ${half['pin-offset']} mm`,
        angle: `${angle} ± ${half.angle} deg`,
      }).results.travel?.u ?? 0;
    // a fixed sequence (Park and Miller), two numbers of it made normal (Box and Muller)
    let state = 20_260_101;
    const uniform = (): number => {
      state = (state * 48_271) % 2_147_483_647;
      return state / 2_147_483_647;
    };
    const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
    for (const angle of [0, 3, 20, 75]) {
      const made = Array.from({ length: 10_000 }, () => {
        const off = (width: number): number => (normal() * width) / 1.96;
        const crank = crankOf(98 + off(half.stroke), 168 + off(half.rod), 1.5 + off(half['pin-offset']));
        return travel(crank, degrees(angle + off(half.angle)));
      });
      const middle = made.reduce((sum, each) => sum + each, 0) / made.length;
      const spread = Math.sqrt(made.reduce((sum, each) => sum + (each - middle) ** 2, 0) / made.length);
      expect(Math.abs(asked(angle) / spread - 1)).toBeLessThan(0.03);
    }
  });

  it('says where the true top lies when the pin stands off', () => {
    const { notes } = ask({ stroke: '98mm', rod: '168mm', 'pin-offset': '0.8mm', angle: '20deg' });
    expect(notes).toEqual([
      "Angle and travel count from the true top of the stroke. There the crank pin stands 0.211 deg past the cylinder's direction.",
    ]);
  });

  it.each([
    ['2000deg', 'an angle of 2000 deg is out of range'],
    ['20mm', 'mm is a unit of length, not of angle'],
    ['20', 'the unit is missing: an angle is asked for'],
  ])('refuses an angle of %s', (angle, what) => {
    const refused = reckonByName('piston-travel', { stroke: '98mm', rod: '168mm', angle });
    expect(refused.kind === 'refused' && refused.refusal.what).toBe(what);
  });
});
