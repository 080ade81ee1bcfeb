/** @module A cam's lobe from a table of lifts: its middle, how long it lifts, how high, and how lobes compare. */
import { radians, toDegrees } from '../quantity/brand.ts';
import { answer, refuse } from '../quantity/refusal.ts';
import { quantityInput, textInput } from './inputs.ts';
import { lengthTable } from './length-list.ts';
import { quantityOf, type Reckoning, type Result } from './reckoning.ts';

export interface Lobe {
  /** Angle midway between the two flanks at the lift asked for, degrees. */
  readonly middle: number;
  /** Angle between the flanks, degrees. */
  readonly duration: number;
  /** mm */
  readonly greatest: number;
}

/** Where a table, read between its points in straight lines, passes a lift; first on the way up, then on the way down. */
const crossings = (lifts: readonly number[], at: number): readonly number[] =>
  lifts.slice(1).flatMap((lift, index) => {
    const before = lifts[index] ?? 0;
    return before < at !== lift < at ? [index + (at - before) / (lift - before)] : [];
  });

/**
 * One lobe from its lifts.
 *
 * @param lifts  at even steps of angle, mm, rising from the base circle and falling back to it
 * @param from   angle of the first, degrees
 * @param step   between two, degrees, above 0
 * @param at     lift at which flanks are told, mm, above the base circle and below the top
 * @returns middle, duration, greatest lift; undefined where the flanks are not both in the table
 * @source  geometry; between two points of the table in a straight line
 * @example lobeOf([0, 1, 2, 3, 2, 1, 0], 90, 10, 1.5)?.middle // 120 deg
 */
export const lobeOf = (
  lifts: readonly number[],
  from: number,
  step: number,
  at: number,
): Lobe | undefined => {
  const passed = crossings(lifts, at);
  const [up, down] = [passed[0], passed.at(-1)];
  if (up === undefined || down === undefined || passed.length < 2) return undefined;
  return {
    middle: from + ((up + down) / 2) * step,
    duration: (down - up) * step,
    greatest: Math.max(...lifts),
  };
};

export const camLiftReckoning: Reckoning = {
  name: 'cam-lift',
  title: 'Cam lobes from tables of lift: middle, duration, height, and the most worn of them',
  inputs: [
    textInput(
      'lifts',
      'lift at even steps of the crank or cam, lobes parted by semicolons',
      '0, 0.5, 2.1, 4.6, 6.8, 8.0, 8.4, 8.0, 6.8, 4.6, 2.1, 0.5, 0; 0, 0.4, 2.0, 4.4, 6.5, 7.7, 8.1, 7.7, 6.6, 4.5, 2.0, 0.4, 0 mm',
      { range: 'from base circle to base circle' },
    ),
    quantityInput('from', 'angle', 'angle of the first reading', 'any', '340deg'),
    quantityInput('step', 'angle', 'angle from one reading to the next', 'above 0', '20deg'),
    quantityInput(
      'at-lift',
      'length',
      'lift at which the flanks are told',
      'above 0, below the lowest top',
      '1.00mm',
      { unlessGiven: '1 mm' },
    ),
  ],
  formula:
    'flanks where the table passes the lift; middle and duration between them; wear against the highest lobe',
  source:
    'geometry; straight lines between points of the table; comparing lobes with one another: common practice, no source',
  reckon: (values) => {
    const rows = lengthTable('lifts', values.texts.lifts ?? '');
    if (rows.kind === 'refused') return rows;
    const [from, step] = ['from', 'step'].map((key) => toDegrees(radians(quantityOf(values, key).value))) as [
      number,
      number,
    ];
    const at = quantityOf(values, 'at-lift').value;
    if (!(step > 0 && step <= 60))
      return refuse(`a step of ${step} deg is out of range`, 'step', 'give above 0 to 60 deg');
    if (!(at > 0))
      return refuse('flanks are told at a lift above 0', 'at-lift', 'give 1 mm, or as the manual says');
    const lobes: Lobe[] = [];
    for (const [index, row] of rows.value.entries()) {
      const lobe = lobeOf(row, from, step, at);
      if (lobe === undefined)
        return refuse(
          `lobe ${index + 1} does not pass ${at} mm on both flanks`,
          'lifts, at-lift',
          'take readings from base circle to base circle, or tell the flanks lower',
        );
      lobes.push(lobe);
    }
    const best = Math.max(...lobes.map(({ greatest }) => greatest));
    const rounded = (value: number, unit: string): Result => ({ value: Number(value.toFixed(4)), unit });
    const results = Object.fromEntries(
      lobes.flatMap(({ middle, duration, greatest }, index) => [
        [`lobe.${index + 1}.middle`, rounded(middle, 'deg')],
        [`lobe.${index + 1}.duration`, rounded(duration, 'deg')],
        [`lobe.${index + 1}.lift`, rounded(greatest, 'mm')],
        [`lobe.${index + 1}.below-the-highest`, rounded(best - greatest, 'mm')],
      ]),
    );
    return answer({
      results,
      notes: ['Where all lobes are worn alike, comparing them shows nothing: the manual’s lift decides.'],
    });
  },
};
