/** @module Crank angle at which the piston stands a given travel below top dead centre, before and after it. */
import { type Millimetres, mm, type Radians, radians, toDegrees } from '../quantity/brand.ts';
import { formatFigure } from '../quantity/figure.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { certain, propagate, standardUncertainty, times, type Uncertain } from '../quantity/uncertain.ts';
import { type Crank, crankInputs, topAngle, topHeight, turning, wholeTravel } from './crank.ts';
import { travelPerDegree } from './piston-travel.ts';
import { quantityOf, type Reckoning, result } from './reckoning.ts';
import { rimInput, rimLength } from './rim-length.ts';

/** Both angles at one travel, counted from the true top of the stroke. */
export interface CrankAngles {
  /** Negative. */
  readonly before: Radians;
  readonly after: Radians;
}

/** The sum for a crank that turns and a travel that it has; not a number for any other travel. */
const anglesOf = (crank: Crank, travel: number): CrankAngles => {
  const { stroke, rod, pinOffset } = crank;
  const throwOf = stroke / 2;
  const top = topHeight(crank);
  const height = top - travel;
  const reach = Math.hypot(height, pinOffset);
  // l + r less the reach, written so that it loses no digits near the top
  const slack = (travel * (2 * top - travel)) / (rod + throwOf + reach);
  const sine = Math.sqrt((slack * (rod + reach - throwOf)) / (4 * throwOf * reach));
  const half = 2 * Math.asin(sine > 1 && sine < 1 + 1e-12 ? 1 : sine);
  const lean = Math.atan2(pinOffset, height) - topAngle(crank);
  return { before: radians(Math.min(0, lean - half)), after: radians(Math.max(0, lean + half)) };
};

/**
 * Crank angles at which the piston stands a given travel below top dead centre.
 *
 * The three sides rod, throw and crank centre to piston pin make a triangle; its angle at the crank centre,
 * laid off on both sides of the line to the pin, gives the crank before and after. Angles count from the true
 * top of the stroke; with a pin offset the two differ in size.
 *
 * @param crank   stroke and rod between centres, mm, rod > stroke / 2 + |pin offset|
 * @param travel  below top dead centre, mm, 0 to the piston's whole travel
 * @returns radians, before (not above 0) and after; refuses a crank that cannot turn and a travel that it has not
 * @source  law of cosines on the slider-crank triangle; any text on machine kinematics
 * @example toDegrees(crankAngles({ stroke: mm(80), rod: mm(120), pinOffset: mm(0) }, mm(3.195)).value.after) // 20.0 deg
 */
export const crankAngles = (crank: Crank, travel: Millimetres): Answer<CrankAngles> => {
  const turns = turning(crank);
  if (turns.kind === 'refused') return turns;
  const whole = wholeTravel(crank);
  if (travel >= 0 && travel <= whole) return answer(anglesOf(crank, travel));
  return refuse(
    `a travel of ${travel} mm is out of range`,
    'travel',
    `give 0 mm to ${whole} mm: the piston goes no further from top to bottom`,
  );
};

/** One of the angles with what is not known of crank and travel. */
const through = (side: keyof CrankAngles, inputs: readonly Uncertain[]): Answer<Uncertain> =>
  propagate(
    ([stroke = 0, rod = 0, pinOffset = 0, travel = 0]) =>
      anglesOf({ stroke: mm(stroke), rod: mm(rod), pinOffset: mm(pinOffset) }, travel)[side],
    inputs,
  );

/** What is left of the piston's whole travel. */
const remaining = (inputs: readonly Uncertain[]): Answer<Uncertain> =>
  propagate(
    ([stroke = 0, rod = 0, pinOffset = 0, travel = 0]) =>
      wholeTravel({ stroke: mm(stroke), rod: mm(rod), pinOffset: mm(pinOffset) }) - travel,
    inputs,
  );

/** Whether a distance to an end of the stroke may as well be none. */
const drowns = (distance: Uncertain): boolean => {
  const u = standardUncertainty(distance);
  return u > 0 && 2 * u >= distance.value;
};

const perRadian = 180 / Math.PI;

export const crankAngleReckoning: Reckoning = {
  name: 'crank-angle',
  title: 'Crank angle before and after top dead centre at a piston travel',
  inputs: [
    ...crankInputs,
    {
      kind: 'quantity',
      key: 'travel',
      title: 'piston travel below top dead centre',
      dimension: 'length',
      range: '0 mm to the whole travel of the piston',
      example: '3.75mm',
    },
    rimInput,
  ],
  formula:
    'cos β = (r² + D² − l²) / (2 r D), D² = (√((l + r)² − e²) − s)² + e²; before and after = line to the pin ∓ β, counted from the true top; r = stroke / 2, l = rod, e = pin offset, s = travel; on the rim D / 2 × angle',
  source: 'law of cosines on the slider-crank triangle',
  reckon: (values) => {
    const inputs = ['stroke', 'rod', 'pin-offset', 'travel'].map((key) => quantityOf(values, key));
    const [stroke, rod, offset, travel] = inputs as [Uncertain, Uncertain, Uncertain, Uncertain];
    const crank = { stroke: mm(stroke.value), rod: mm(rod.value), pinOffset: mm(offset.value) };
    const angles = crankAngles(crank, mm(travel.value));
    if (angles.kind === 'refused') return angles;
    const left = remaining(inputs);
    if (drowns(travel) || left.kind === 'refused' || drowns(left.value)) {
      return refuse(
        'the piston stands too near the end of its stroke for the angle to be told from its travel',
        'travel',
        'measure nearer the middle of the stroke, where a degree moves the piston by more than is uncertain',
      );
    }
    const before = through('before', inputs);
    if (before.kind === 'refused') return before;
    const after = through('after', inputs);
    if (after.kind === 'refused') return after;
    const rate = travelPerDegree(crank, angles.value.after);
    if (rate.kind === 'refused') return rate;
    const { rim } = values.quantities;
    const onRim = rim && {
      before: rimLength(rim, times(before.value, -1)),
      after: rimLength(rim, after.value),
    };
    if (onRim?.before.kind === 'refused') return onRim.before;
    if (onRim?.after.kind === 'refused') return onRim.after;
    return answer({
      results: {
        before: result(before.value, 'deg', -perRadian),
        after: result(after.value, 'deg', perRadian),
        'per-degree': result(certain(rate.value), 'mm/deg'),
        ...(onRim && {
          'rim-before': result(onRim.before.value, 'mm'),
          'rim-after': result(onRim.after.value, 'mm'),
        }),
      },
      notes: [
        'Both angles count from the true top of the stroke; millimetres per degree are those after it.',
        ...(offset.value === 0
          ? []
          : [
              `There the crank pin stands ${formatFigure(toDegrees(topAngle(crank)), 3)} deg past the cylinder's direction.`,
            ]),
      ],
    });
  },
};
