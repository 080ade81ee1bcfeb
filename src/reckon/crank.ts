/** @module The slider-crank of one cylinder: crank throw, connecting rod, and how far the pin stands off. */
import type { Millimetres, Radians } from '../quantity/brand.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { QuantityInput } from './reckoning.ts';

export interface Crank {
  /** Twice the crank throw. With a pin offset the piston goes a hair further than this. */
  readonly stroke: Millimetres;
  /** Connecting rod, between centres. */
  readonly rod: Millimetres;
  /**
   * How far the piston pin stands off the crank's centre line: plus to the side to which the crank pin
   * moves after top dead centre, minus to the other, which is the side that the piston leans on in the
   * working stroke.
   */
  readonly pinOffset: Millimetres;
}

const least = 1;
const greatest = 20_000;

/**
 * Whether a crank can turn.
 *
 * @param crank  stroke and rod 1 mm to 20 m, rod longer than half the stroke and the pin offset together
 * @returns the crank; refuses one that cannot turn, with the range
 * @source  the slider-crank triangle: at its widest the rod must still reach
 * @example turning({ stroke: mm(98), rod: mm(48), pinOffset: mm(0) }) // refused
 */
export const turning = (crank: Crank): Answer<Crank> => {
  const { stroke, rod, pinOffset } = crank;
  for (const [key, length] of [
    ['stroke', stroke],
    ['rod', rod],
  ] as const) {
    if (!(length >= least && length <= greatest)) {
      return refuse(
        `a ${key} of ${length} mm is out of range`,
        key,
        `give 1 mm to 20 m: no engine lies beyond, so a unit or a decimal is wrong`,
      );
    }
  }
  const needed = stroke / 2 + Math.abs(pinOffset);
  if (rod > needed) return answer(crank);
  return refuse(
    `a rod of ${rod} mm cannot turn with a stroke of ${stroke} mm and a pin offset of ${pinOffset} mm`,
    'rod',
    `the rod must be longer than half the stroke and the offset together, ${needed} mm: check all three`,
  );
};

/**
 * Height of the piston pin above the crank's centre when it stands highest, crank and rod in line.
 *
 * @param crank  one that can turn
 * @returns mm
 * @source  Pythagoras: hypotenuse rod + throw, short side the pin offset
 * @example topHeight({ stroke: mm(98), rod: mm(168), pinOffset: mm(0) }) // 217 mm
 */
export const topHeight = ({ stroke, rod, pinOffset }: Crank): number =>
  Math.sqrt((rod + stroke / 2) ** 2 - pinOffset ** 2);

/**
 * How far the piston really goes, top to bottom.
 *
 * @param crank  one that can turn
 * @returns mm, never less than twice the throw
 * @source  the same at the bottom, hypotenuse rod less throw
 * @example wholeTravel({ stroke: mm(98), rod: mm(168), pinOffset: mm(10) }) // 98.190 mm
 */
export const wholeTravel = (crank: Crank): number =>
  topHeight(crank) - Math.sqrt((crank.rod - crank.stroke / 2) ** 2 - crank.pinOffset ** 2);

/**
 * Where the crank pin stands at the true top of the stroke: past the cylinder's direction by this much.
 *
 * @param crank  one that can turn
 * @returns radians, plus in the direction of rotation; 0 without an offset
 * @source  crank and rod in line
 * @example topAngle({ stroke: mm(98), rod: mm(168), pinOffset: mm(10) }) // 0.0461 rad
 */
export const topAngle = ({ stroke, rod, pinOffset }: Crank): Radians =>
  Math.asin(pinOffset / (rod + stroke / 2)) as Radians;

export const crankInputs: readonly QuantityInput[] = [
  {
    kind: 'quantity',
    key: 'stroke',
    title: 'stroke: twice the crank throw',
    dimension: 'length',
    range: '1 mm to 20 m',
    example: '98mm',
  },
  {
    kind: 'quantity',
    key: 'rod',
    title: 'connecting rod, between centres',
    dimension: 'length',
    range: 'longer than half the stroke and the pin offset together',
    example: '168mm',
  },
  {
    kind: 'quantity',
    key: 'pin-offset',
    title:
      'piston pin off the centre line: plus to the side to which the crank pin moves after top dead centre, minus to the thrust side',
    dimension: 'length',
    range: 'less than the rod less half the stroke, either way',
    example: '0.8mm',
    unlessGiven: '0 mm',
  },
];
