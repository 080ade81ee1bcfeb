/** @module The law by which a pump's cam lifts its tappet, and what a millimetre of shim comes to in crank angle. */
import type { Millimetres, Radians } from '../quantity/brand.ts';
import { mm, radians } from '../quantity/brand.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';

export interface LiftPoint {
  readonly angle: Radians;
  readonly lift: Millimetres;
}

/** The flank of a cam: of its own radius or straight, under a roller or a flat tappet. */
export interface Flank {
  readonly base: Millimetres;
  readonly radius: Millimetres | 'straight';
  /** Radius of the roller. */
  readonly tappet: Millimetres | 'flat';
}

export interface CamLaw {
  /** Degrees of crank for one of the angles in which the law is told: 2 for the camshaft of a four-stroke. */
  readonly crankPerAngle: 1 | 2;
  /** Angle at which the pump closes its port; of a flank from where it begins to lift. */
  readonly timingPoint: Radians;
  readonly shape:
    | { readonly kind: 'table'; readonly points: readonly LiftPoint[] }
    | { readonly kind: 'flank'; readonly flank: Flank };
}

/** Slope at `x` of the parabola or cubic through the points, by Lagrange. */
const slopeThrough = (points: readonly (readonly [x: number, y: number])[], x: number): number =>
  points.reduce((sum, [own, value], at) => {
    const others = points.filter((_, index) => index !== at).map(([other]) => other);
    const scale = others.reduce((product, other) => product * (own - other), 1);
    const slope = others.reduce(
      (terms, _, left) =>
        terms +
        others.reduce((product, other, index) => (index === left ? product : product * (x - other)), 1),
      0,
    );
    return sum + (value * slope) / scale;
  }, 0);

const where = 'cam';

/**
 * Lift for each radian at an angle of a table: the slope of the cubic through the two points before it and the two
 * behind it; of a parabola where the table ends.
 *
 * @param points  at least three, angles rising
 * @param at      between the first and the last
 * @returns mm for each radian of the table's own angle; refused where table and angle do not go together
 */
export const tableSlope = (points: readonly LiftPoint[], at: Radians): Answer<number> => {
  const rising = points.every(
    ({ angle }, index) => index === 0 || angle > (points[index - 1]?.angle ?? angle),
  );
  if (points.length < 3 || !rising)
    return refuse(
      'the angles of the table of lifts do not rise',
      where,
      'give at least three, smallest first',
    );
  const [first, last] = [points[0]?.angle ?? 0, points.at(-1)?.angle ?? 0];
  if (!(at > first && at < last))
    return refuse(
      'the timing point lies beyond the table of lifts',
      where,
      'count the timing point as the table counts its angles, or copy more of the table',
    );
  const behind = points.findIndex(({ angle }) => angle >= at);
  const near = points.slice(Math.max(0, behind - 2), behind + 2);
  return answer(
    slopeThrough(
      near.map(({ angle, lift }) => [angle, lift]),
      at,
    ),
  );
};

/**
 * Lift of a tappet on the flank of a cam, and lift for each radian.
 *
 * Under a roller the centre of the roller keeps its distance R + r from the centre of the flank, which lies R − b
 * beyond the cam's own: s = √((R + r)² − (R − b)² sin² θ) − (R − b) cos θ − (b + r). A straight flank is the limit,
 * s = (b + r) (1 / cos θ − 1); under a flat tappet s = (R − b) (1 − cos θ).
 *
 * @param flank  base radius b above 0, flank radius R above b, roller radius r above 0
 * @param at     θ from where the flank begins to lift, above 0 and below a quarter turn
 * @returns lift in mm and mm for each radian of cam; refused where no such cam can be made
 */
export const flankLift = (
  { base, radius, tappet }: Flank,
  at: Radians,
): Answer<{ readonly lift: number; readonly slope: number }> => {
  if (!(base > 0 && (tappet === 'flat' || tappet > 0)))
    return refuse('a radius of the cam is not above zero', where, 'compare it with the drawing');
  if (!(at > 0 && at < Math.PI / 2))
    return refuse(
      'the timing point does not lie on the flank',
      where,
      'count it from where the flank begins to lift, above 0 and below 90 deg',
    );
  const [sine, cosine] = [Math.sin(at), Math.cos(at)];
  if (radius === 'straight') {
    if (tappet === 'flat')
      return refuse(
        'a flat tappet cannot follow a straight flank',
        where,
        "give the roller's radius, or the flank's",
      );
    const centre = base + tappet;
    return answer({ lift: centre * (1 / cosine - 1), slope: (centre * sine) / cosine ** 2 });
  }
  const beyond = radius - base;
  if (!(beyond > 0))
    return refuse(
      'the flank is no rounder than the base circle',
      where,
      'give the larger radius to the flank',
    );
  if (tappet === 'flat') return answer({ lift: beyond * (1 - cosine), slope: beyond * sine });
  const reach = Math.sqrt((radius + tappet) ** 2 - (beyond * sine) ** 2);
  return answer({
    lift: reach - beyond * cosine - (base + tappet),
    slope: beyond * sine - (beyond ** 2 * sine * cosine) / reach,
  });
};

const slopeOf = ({ shape, timingPoint }: CamLaw): Answer<number> => {
  if (shape.kind === 'table') return tableSlope(shape.points, timingPoint);
  const on = flankLift(shape.flank, timingPoint);
  return on.kind === 'refused' ? on : answer(on.value.slope);
};

/** What a cam does at the timing point. */
export interface CamRate {
  /** Tappet lift for each radian of crank. */
  readonly liftPerCrank: Millimetres;
  /** Crank angle for each millimetre of shim, unsigned: the other way up. */
  readonly rate: Radians;
}

/**
 * What a millimetre of shim comes to in crank angle: the plunger must travel that much more or less before it closes
 * its port, and the cam gives so much lift for each degree.
 *
 * @param law  its angles of cam or crank; one degree of a four-stroke's camshaft is two of the crank
 * @returns mm for each radian of crank, and radians of crank for each mm; refused where the cam does not lift there
 */
export const camRate = (law: CamLaw): Answer<CamRate> => {
  const slope = slopeOf(law);
  if (slope.kind === 'refused') return slope;
  const perCrank = slope.value / law.crankPerAngle;
  if (!(perCrank > 0))
    return refuse(
      'the cam does not lift at the timing point',
      where,
      'compare the timing point with the table: the pump closes its port while the plunger rises',
    );
  return answer({ liftPerCrank: mm(perCrank), rate: radians(1 / perCrank) });
};
