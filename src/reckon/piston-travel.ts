/** @module Piston travel below top dead centre at a crank angle, and how fast it grows there. */
import { type Millimetres, mm, type Radians, radians, toDegrees } from '../quantity/brand.ts';
import { formatFigure, tidy } from '../quantity/figure.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { plus, propagate, standardUncertainty, type Uncertain, uncertain } from '../quantity/uncertain.ts';
import { type Crank, crankInputs, topAngle, topHeight, turning } from './crank.ts';
import { quantityOf, type Reckoning, result } from './reckoning.ts';
import { rimInput, rimLength } from './rim-length.ts';

/** The sum for a crank that is known to turn. */
const travelOf = (crank: Crank, angle: number): number => {
  const { stroke, rod, pinOffset } = crank;
  const throwOf = stroke / 2;
  const at = topAngle(crank) + angle;
  const across = throwOf * Math.sin(at) - pinOffset;
  return Math.max(0, topHeight(crank) - throwOf * Math.cos(at) - Math.sqrt(rod ** 2 - across ** 2));
};

const rateOf = (crank: Crank, angle: number): number => {
  const { stroke, rod, pinOffset } = crank;
  const throwOf = stroke / 2;
  const at = topAngle(crank) + angle;
  const across = throwOf * Math.sin(at) - pinOffset;
  return throwOf * Math.sin(at) + (throwOf * Math.cos(at) * across) / Math.sqrt(rod ** 2 - across ** 2);
};

/**
 * Piston travel below top dead centre at a crank angle.
 *
 * With the crank pin at φ past the cylinder's direction, throw r, rod l and pin offset e, the piston pin
 * stands at y = r cos φ + √(l² − (r sin φ − e)²). The true top, √((l + r)² − e²), lies at sin φ = e / (l + r);
 * angle and travel are counted from there, where a dial gauge finds it.
 *
 * @param crank  stroke and rod between centres, mm, rod > stroke / 2 + |pin offset|
 * @param angle  from top dead centre, plus after it, radians, any
 * @returns travel, mm, 0 at top dead centre; refuses a crank that cannot turn
 * @source  derived from the slider-crank triangle; any text on machine kinematics
 * @example pistonTravel({ stroke: mm(80), rod: mm(120), pinOffset: mm(0) }, degrees(20)) // 3.195 mm
 */
export const pistonTravel = (crank: Crank, angle: Radians): Answer<Millimetres> => {
  const turns = turning(crank);
  return turns.kind === 'refused' ? turns : answer(mm(travelOf(crank, angle)));
};

/**
 * How much the piston moves for each degree of crank at an angle.
 *
 * @param crank  stroke and rod between centres, mm, rod > stroke / 2 + |pin offset|
 * @param angle  from top dead centre, plus after it, radians, any
 * @returns mm per degree, plus where the piston goes down; refuses a crank that cannot turn
 * @source  derivative of the travel
 * @example travelPerDegree({ stroke: mm(80), rod: mm(120), pinOffset: mm(0) }, degrees(22)) // 0.343 mm/deg
 */
export const travelPerDegree = (crank: Crank, angle: Radians): Answer<number> => {
  const turns = turning(crank);
  return turns.kind === 'refused' ? turns : answer((rateOf(crank, angle) * Math.PI) / 180);
};

/** Carries a sum over crank and angle through, with what is not known of all four. */
const through = (
  sum: (crank: Crank, angle: number) => number,
  inputs: readonly Uncertain[],
): Answer<Uncertain> =>
  propagate(
    ([stroke = 0, rod = 0, pinOffset = 0, angle = 0]) =>
      sum({ stroke: mm(stroke), rod: mm(rod), pinOffset: mm(pinOffset) }, angle),
    inputs,
  );

/**
 * What the curve of the travel adds to its uncertainty where its slope is small: half the curvature times the
 * square of the angle's error, whose standard deviation is curvature × u² / √2 for a normal error.
 */
const bend = (rate: Uncertain, angle: Uncertain): Uncertain => {
  const curvature = Math.sqrt(
    rate.terms.reduce((sum, { name, share }) => (name === 'angle' ? sum + share * share : sum), 0),
  );
  return uncertain(0, 'bend of the travel', (curvature * standardUncertainty(angle)) / Math.SQRT2);
};

const twoTurns = radians(4 * Math.PI);

export const pistonTravelReckoning: Reckoning = {
  name: 'piston-travel',
  title: 'Piston travel below top dead centre at a crank angle',
  inputs: [
    ...crankInputs,
    {
      kind: 'quantity',
      key: 'angle',
      title: 'crank angle from top dead centre: plus after, minus before',
      dimension: 'angle',
      range: '-720 deg to 720 deg',
      example: '20deg',
    },
    rimInput,
  ],
  formula:
    's = √((l + r)² − e²) − r cos φ − √(l² − (r sin φ − e)²), φ = angle + asin(e / (l + r)), r = stroke / 2, l = rod, e = pin offset; on the rim D / 2 × angle',
  source:
    'derived from the slider-crank triangle; uncertainty by JCGM 100:2008, 5.1.2, with the second-order term of the angle',
  reckon: (values) => {
    const [stroke, rod, offset, angle] = ['stroke', 'rod', 'pin-offset', 'angle'].map((key) =>
      quantityOf(values, key),
    ) as [Uncertain, Uncertain, Uncertain, Uncertain];
    const crank = { stroke: mm(stroke.value), rod: mm(rod.value), pinOffset: mm(offset.value) };
    const turns = turning(crank);
    if (turns.kind === 'refused') return turns;
    if (Math.abs(angle.value) > twoTurns) {
      return refuse(
        `an angle of ${tidy(toDegrees(radians(angle.value)))} deg is out of range`,
        'angle',
        'give -720 deg to 720 deg: the crank is back where it was after one turn',
      );
    }
    const travel = through(travelOf, [stroke, rod, offset, angle]);
    if (travel.kind === 'refused') return travel;
    const rate = through(rateOf, [stroke, rod, offset, angle]);
    if (rate.kind === 'refused') return rate;
    const { rim } = values.quantities;
    const along = rim && rimLength(rim, angle);
    if (along?.kind === 'refused') return along;
    return answer({
      results: {
        travel: result(plus(travel.value, bend(rate.value, angle)), 'mm'),
        'per-degree': result(rate.value, 'mm/deg', Math.PI / 180),
        ...(along && { 'rim-length': result(along.value, 'mm') }),
      },
      notes:
        offset.value === 0
          ? []
          : [
              `Angle and travel count from the true top of the stroke. There the crank pin stands ${formatFigure(toDegrees(topAngle(crank)), 3)} deg past the cylinder's direction.`,
            ],
    });
  },
};
