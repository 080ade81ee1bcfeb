/** @module A cam's lobe from a table of lifts: its middle, how long it lifts, how high, and how lobes compare. */
import { radians, toDegrees } from '../quantity/brand.ts';
import { coverageFactor } from '../quantity/coverage.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { quantityInput, textInput } from './inputs.ts';
import { lengthTable } from './length-list.ts';
import { type LobeReading, lobeWear } from './lobe-wear.ts';
import { quantityOf, type Reckoning, type Result, type Values } from './reckoning.ts';

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

const rounded = (value: number, unit: string, u = 0): Result => ({
  value: Number(value.toFixed(4)),
  unit,
  ...(u > 0 && { u: Number(u.toFixed(5)) }),
});

interface Steps {
  readonly from: number;
  readonly step: number;
  readonly at: number;
}

/** How well a flank is told: the angle as read, and the dial's error over the slope there. */
const flankSpread = (
  lobe: Lobe,
  lifts: readonly number[],
  { from, step }: Steps,
  { lift, angle }: LobeReading,
) => {
  const slopes = [-1, 1].map((way) => {
    const index = Math.floor((lobe.middle + (way * lobe.duration) / 2 - from) / step);
    return ((lifts[index + 1] ?? 0) - (lifts[index] ?? 0)) / step;
  });
  return slopes.map((slope) => Math.hypot(angle, lift / slope)) as [opens: number, closes: number];
};

/** Each lobe angle by angle against the one as made, or against the one under whose lifts most lies. */
const wearOf = (
  values: Values,
  rows: readonly (readonly number[])[],
  lobes: readonly Lobe[],
  steps: Steps,
): Answer<Readonly<Record<string, Result>>> => {
  const { dial, 'angle-reading': angle } = values.quantities;
  const given = values.texts['as-made'];
  if (dial === undefined && angle === undefined && given === undefined) return answer({});
  if (dial === undefined || angle === undefined || !(dial.value > 0 && angle.value >= 0))
    return refuse(
      'lobes are compared angle by angle only where dial and angle are known',
      'dial, angle-reading',
      'say how far a lift and an angle as read may be off',
    );
  const made = given === undefined ? undefined : lengthTable('as-made', given);
  if (made?.kind === 'refused') return made;
  const area = (row: readonly number[]): number => row.reduce((sum, lift) => sum + lift, 0);
  const fullest = rows.reduce((best, row, index) => (area(row) > area(rows[best] ?? []) ? index : best), 0);
  const whole = made?.value[0] ?? rows[fullest] ?? [];
  const other = rows.find((row) => row.length !== whole.length || row.length < 4);
  if (other !== undefined)
    return refuse(
      `a lobe has ${other.length} lifts, the whole one ${whole.length}`,
      'lifts, as-made',
      'read all at the same angles, four at least',
    );
  const lobe = lobeOf(whole, steps.from, steps.step, steps.at);
  if (lobe === undefined)
    return refuse(
      `the lobe as made does not pass ${steps.at} mm on both flanks`,
      'as-made, at-lift',
      'copy it whole',
    );
  const cover = coverageFactor(0.95, Infinity);
  const reading = { lift: dial.value / cover, angle: toDegrees(radians(angle.value)) / cover };
  const exact = made !== undefined;
  const sides = (one: Lobe) => [one.middle - one.duration / 2, one.middle + one.duration / 2] as const;
  const [opens, closes] = sides(lobe);
  const results: Record<string, Result> = {
    whole: { value: exact ? 'as made' : `lobe ${fullest + 1}`, unit: '' },
  };
  for (const [index, row] of rows.entries()) {
    const own = lobes[index];
    if (own === undefined || (!exact && index === fullest)) continue;
    const wear = lobeWear(whole, row, steps.from, steps.step, reading, exact);
    const spread = flankSpread(own, row, steps, reading).map((u) => u * Math.sqrt(exact ? 1 : 2));
    const [opened, closed] = sides(own);
    const [uOpens = 0, uCloses = 0] = spread;
    const key = (of: string) => `lobe.${index + 1}.${of}`;
    const ranges = wear.ranges.map(({ from, to }) =>
      from === to ? `at ${from} deg` : `${from} to ${to} deg`,
    );
    results[key('behind')] = { value: ranges.join(', ') || 'nowhere', unit: '' };
    results[key('surest-fall')] = rounded(wear.most.fall, 'mm', wear.most.u);
    results[key('surest-at')] = rounded(wear.most.at, 'deg');
    results[key('opens-later')] = rounded(opened - opens, 'deg', uOpens);
    results[key('closes-earlier')] = rounded(closes - closed, 'deg', uCloses);
    results[key('duration-lost')] = rounded(lobe.duration - own.duration, 'deg', Math.hypot(uOpens, uCloses));
  }
  return answer(results);
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
    quantityInput(
      'dial',
      'length',
      'how far a lift as read may be off, its zero in it: to compare lobes angle by angle',
      'above 0',
      '0.02mm',
      { optional: true },
    ),
    quantityInput('angle-reading', 'angle', 'how far an angle as read may be off', '0 and up', '0.3deg', {
      optional: true,
    }),
    textInput(
      'as-made',
      'lifts of the lobe as made, at the same angles',
      '0, 0.5, 2.1, 4.6, 6.8, 8.0, 8.4, 8.0, 6.8, 4.6, 2.1, 0.5, 0 mm',
      {
        range: 'the manual’s table; else the fullest lobe is taken as whole',
        optional: true,
      },
    ),
  ],
  formula:
    'flanks where the table passes the lift; middle and duration between them; wear against the highest lobe; angle by angle against the fullest or the one as made: lift as whole less lift, u² = 2 (u² of the dial + (slope × u of the angle)²)',
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
    const compared = wearOf(values, rows.value, lobes, { from, step, at });
    if (compared.kind === 'refused') return compared;
    const best = Math.max(...lobes.map(({ greatest }) => greatest));
    const results = Object.fromEntries(
      lobes.flatMap(({ middle, duration, greatest }, index) => [
        [`lobe.${index + 1}.middle`, rounded(middle, 'deg')],
        [`lobe.${index + 1}.duration`, rounded(duration, 'deg')],
        [`lobe.${index + 1}.lift`, rounded(greatest, 'mm')],
        [`lobe.${index + 1}.below-the-highest`, rounded(best - greatest, 'mm')],
      ]),
    );
    return answer({
      results: { ...results, ...compared.value },
      notes: ['Where all lobes are worn alike, comparing them shows nothing: the manual’s lift decides.'],
    });
  },
};
