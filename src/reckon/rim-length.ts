/** @module Degrees of crank as a length on the rim of the flywheel, where no protractor is at hand. */
import { type Answer, refuse } from '../quantity/refusal.ts';
import { propagate, type Uncertain } from '../quantity/uncertain.ts';
import { quantityInput } from './inputs.ts';

export const rimInput = quantityInput(
  'rim',
  'length',
  'diameter of the flywheel rim, to have the angle as a length along it',
  'above 0 mm to 10 m',
  '380mm',
  { optional: true },
);

/**
 * Length along the rim of a flywheel for an angle of the crank.
 *
 * @param rim    diameter on which it is measured, mm, above 0 to 10 m
 * @param angle  of the crank, radians, either way
 * @returns length of the arc as a tape lies on it, mm, signed as the angle; refuses a rim out of range
 * @source  length of an arc, D / 2 × angle
 * @example rimLength(certain(380), certain(0.349066)) // 66.32 mm
 */
export const rimLength = (rim: Uncertain, angle: Uncertain): Answer<Uncertain> =>
  rim.value > 0 && rim.value <= 10_000
    ? propagate(([across = 0, turned = 0]) => (across / 2) * turned, [rim, angle])
    : refuse(`a rim of ${rim.value} mm is out of range`, 'rim', 'give its diameter, above 0 mm to 10 m');
