/** @module The sum `remaining-hours`: how long a worn part lasts, asked for by name. */
import { hoursAt } from '../quantity/falls-to.ts';
import { answer, refuse } from '../quantity/refusal.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { quantityInput } from './inputs.ts';
import { quantityOf, type Reckoning, type Values } from './reckoning.ts';
import { type WearSoFar, wearLasts } from './remaining-hours.ts';

const length = (key: string, title: string, example: string) =>
  quantityInput(key, 'length', title, 'any', example);

/**
 * What is known of the wear, from what was given to the sum.
 *
 * @param values  read by the sum's list of inputs
 * @returns sizes in mm, hours; it wears towards the side on which the limit lies
 * @source  none: it looks up
 * @example wearGiven({ quantities: { size: certain(54.95), 'made-least': certain(54.97), 'made-greatest': certain(54.99), limit: certain(54.93), run: certain(6000), scatter: certain(0.25) }, texts: {} }).wears // 'smaller'
 */
export const wearGiven = (values: Values): WearSoFar => {
  const figure = (key: string): number => quantityOf(values, key).value;
  const size = quantityOf(values, 'size');
  const made = { least: figure('made-least'), greatest: figure('made-greatest') };
  const limit = figure('limit');
  const wears = limit < (made.least + made.greatest) / 2 ? 'smaller' : 'larger';
  return {
    wears,
    size: size.value,
    uncertainty: standardUncertainty(size),
    made,
    limit,
    run: figure('run'),
    scatter: figure('scatter'),
  };
};

export const remainingHoursReckoning: Reckoning = {
  name: 'remaining-hours',
  title: 'How many hours a worn part has left to its limit',
  inputs: [
    length('size', 'the worst size as found', '54.95±0.004mm'),
    length('made-least', 'least size as made', '54.97mm'),
    length('made-greatest', 'greatest size as made', '54.99mm'),
    length('limit', 'wear limit; which side of the size as made it lies says which way it wears', '54.93mm'),
    quantityInput('run', 'time', 'hours run since new or last machined', 'above 0', '6000h'),
    quantityInput(
      'scatter',
      'ratio',
      'by what share the rate of wear differs from one stretch to the next',
      '0 to 100 %',
      '25%',
      { unlessGiven: '25 %' },
    ),
  ],
  formula: 'hours = run × (limit - size) / ((size - as made) × factor), as a distribution',
  source:
    'TM 5-3895-346-14 (wear over hours, carried on); JCGM 101:2008; the scatter unless given: common practice, no source',
  reckon: (values) => {
    const wear = wearGiven(values);
    if (wear.made.least > wear.made.greatest)
      return refuse('the least size as made is above the greatest', 'made-least', 'change the two about');
    if (!(wear.run > 0))
      return refuse('no hours were run', 'run', 'give the hours since new or last machined');
    if (wear.scatter < 0 || wear.scatter > 1)
      return refuse(
        'the scatter is not between 0 and 100 %',
        'scatter',
        'give it as a share, for example 25 %',
      );
    const atOnce = wearLasts(wear, 0);
    if (atOnce === undefined)
      return refuse(
        'the size as found shows no wear since it was made',
        'size',
        'measure again, or count on the hours of a new part',
      );
    const survival = (hours: number): number => wearLasts(wear, hours) ?? 1;
    const outlasted = (share: number) => ({
      value: Math.round(hoursAt(survival, share, wear.run)),
      unit: 'h',
    });
    return answer({
      results: {
        'counted-on': outlasted(0.9),
        middle: outlasted(0.5),
        'one-in-ten': outlasted(0.1),
        'still-within': { value: Math.round(atOnce * 1000) / 10, unit: '%' },
      },
      notes: [
        'Nine in ten such parts outlast the hours counted on, half of them the middle, one in ten the last.',
        'It carries on the wear so far. No part put back should be promised more than a new one.',
      ],
    });
  },
};
