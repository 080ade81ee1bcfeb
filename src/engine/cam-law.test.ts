/** @module The lift of cams against published figures, numbers worked by hand and laws. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { known } from '../../test/known.ts';
import { degrees, mm, radians, toDegrees } from '../quantity/brand.ts';
import { camRate, flankLift, tableSlope } from './cam-law.ts';

const straight = (base: number, tappet: number) =>
  ({ base: mm(base), radius: 'straight', tappet: mm(tappet) }) as const;

describe('a flank', () => {
  it('that is straight begins to lift as the published example says', () => {
    // source: a worked example printed in several texts on theory of machines: least radius 30 mm, roller 17.5 mm,
    // 600 rpm; 187.6 m/s² as the lift begins, ω² times the second slope of the lift
    const speed = (2 * Math.PI * 600) / 60;
    const small = 1e-4;
    const bend = known(flankLift(straight(30, 17.5), radians(small))).slope / small;
    expect((speed ** 2 * bend) / 1000).toBeCloseTo(187.6, 0);
  });

  it('that is straight lifts (b + r)(1 − cos θ)/cos θ', () => {
    // source: texts on theory of machines, the tangent cam under a roller
    const { lift } = known(flankLift(straight(17, 8), degrees(22)));
    expect(lift).toBeCloseTo((25 * (1 - Math.cos(degrees(22)))) / Math.cos(degrees(22)), 12);
  });

  it('of a very large radius is straight', () => {
    const round = known(flankLift({ base: mm(17), radius: mm(1e7), tappet: mm(8) }, degrees(22)));
    const flat = known(flankLift(straight(17, 8), degrees(22)));
    expect(round.lift).toBeCloseTo(flat.lift, 4);
    expect(round.slope).toBeCloseTo(flat.slope, 4);
  });

  it('has the slope of its own lift, whatever its form', () => {
    const form = fc.record({
      base: fc.double({ min: 5, max: 40, noNaN: true }),
      more: fc.double({ min: 1, max: 200, noNaN: true }),
      roller: fc.option(fc.double({ min: 2, max: 25, noNaN: true })),
      at: fc.double({ min: 0.02, max: 0.7, noNaN: true }),
    });
    fc.assert(
      fc.property(form, ({ base, more, roller, at }) => {
        const flank = {
          base: mm(base),
          radius: mm(base + more),
          tappet: roller === null ? ('flat' as const) : mm(roller),
        };
        const lift = (angle: number) => known(flankLift(flank, radians(angle))).lift;
        const step = 1e-5;
        const rise = (lift(at + step) - lift(at - step)) / (2 * step);
        expect(known(flankLift(flank, radians(at))).slope).toBeCloseTo(rise, 5);
      }),
    );
  });
});

describe('a table of lifts', () => {
  it('is exact for any cubic, evenly spaced or not', () => {
    const table = fc.record({
      steps: fc.array(fc.double({ min: 0.01, max: 0.2, noNaN: true }), { minLength: 4, maxLength: 12 }),
      terms: fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 4, maxLength: 4 }),
      share: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
    });
    fc.assert(
      fc.property(table, ({ steps, terms: [a = 0, b = 0, c = 0, d = 0], share }) => {
        const angles = [0, ...steps].map((_, at, all) =>
          all.slice(0, at + 1).reduce((sum, step) => sum + step, 0),
        );
        const points = angles.map((x) => ({
          angle: radians(x),
          lift: mm(a + b * x + c * x ** 2 + d * x ** 3),
        }));
        // Between the second point and the last but one, where four points lie round it.
        const [from, to] = [angles[1] ?? 0, angles.at(-2) ?? 0];
        const at = from + share * (to - from);
        const slope = known(tableSlope(points, radians(at)));
        expect(slope).toBeCloseTo(b + 2 * c * at + 3 * d * at ** 2, 5);
      }),
    );
  });

  it('is refused where its angles do not rise or do not reach', () => {
    const point = (angle: number, lift: number) => ({ angle: degrees(angle), lift: mm(lift) });
    const rising = [point(10, 1), point(20, 2), point(30, 3)];
    expect(tableSlope(rising, degrees(30))).toMatchObject({ kind: 'refused' });
    expect(tableSlope([point(10, 1), point(10, 2), point(30, 3)], degrees(20))).toMatchObject({
      kind: 'refused',
    });
    expect(tableSlope(rising.slice(1), degrees(25))).toMatchObject({ kind: 'refused' });
    expect(known(tableSlope(rising, degrees(25)))).toBeCloseTo(180 / Math.PI / 10, 9);
  });
});

describe('a millimetre of shim', () => {
  const points = [0, 5, 10, 15].map((at) => ({ angle: degrees(at), lift: mm(at / 10) }));
  const law = (crankPerAngle: 1 | 2) => ({
    crankPerAngle,
    timingPoint: degrees(8),
    shape: { kind: 'table', points } as const,
  });

  it('comes to a degree for each tenth of a millimetre where the cam lifts a tenth a degree', () => {
    // source: published rates of pumps with a cam of their own, 0.1 mm about 1 degree of crank (common practice)
    expect(toDegrees(known(camRate(law(1))).rate)).toBeCloseTo(10, 9);
  });

  it('comes to twice as many degrees of crank where the angles are of a camshaft at half its speed', () => {
    expect(toDegrees(known(camRate(law(2))).rate)).toBeCloseTo(20, 9);
  });

  it('comes to nothing that could be told where the cam does not lift', () => {
    const level = {
      ...law(2),
      shape: { kind: 'table', points: points.map((one) => ({ ...one, lift: mm(2) })) },
    } as const;
    expect(camRate(level)).toMatchObject({ refusal: { what: 'the cam does not lift at the timing point' } });
  });
});
