/** @module Selective fitting by name: places and parts read from lists, parts to places with clearance and deviation. */
import { formatFigure } from '../quantity/figure.ts';
import { answer, refuse } from '../quantity/refusal.ts';
import { certain } from '../quantity/uncertain.ts';
import { fitParts } from './fit.ts';
import { limitInputs, limitsGiven, misasked } from './limits-given.ts';
import { namedSizes } from './named-sizes.ts';
import { quantityOf, type Reckoning, type Result, result } from './reckoning.ts';

const inMm = (value: number): Result => result(certain(value), 'mm');

const clearanceInputs = limitInputs.map((input) => {
  if (input.key === 'conformance') return input;
  const { optional: _, ...asked } = input;
  const least = input.key === 'least';
  return {
    ...asked,
    title: `${input.key} clearance allowed`,
    range: least ? 'below the greatest' : 'above the least',
    example: least ? '0.040mm' : '0.085mm',
  };
});

export const assignReckoning: Reckoning = {
  name: 'assign',
  title: 'Selective fitting: which measured part from stock goes to which place',
  inputs: [
    {
      kind: 'text',
      key: 'places',
      title:
        'each place with the room there without the part: a bore, or the housing less the journal; or the text of a CSV file with name, size and, where it is taken off, a second size',
      range: 'any, with commas between and a unit after the last; at most 500',
      example: 'main.1 58.063 - 54.981, main.2 58.066 - 54.978, main.3 58.060 - 54.983 mm',
    },
    {
      kind: 'text',
      key: 'parts',
      title: 'each part with its size, or the text of a CSV file with name and size',
      range: 'any, with commas between and a unit after the last; at most 5000',
      example: 'A 1.510, B 1.510, C 1.512, D 1.512, E 1.513, F 1.508, G 1.507, H 1.515 mm',
    },
    {
      kind: 'text',
      key: 'each',
      title: 'how many parts go to a place: 1, or 2 such as the halves of a shell',
      range: '1 or 2',
      example: '2',
      unlessGiven: '1',
    },
    {
      kind: 'text',
      key: 'goes',
      title:
        'parts go inside and take up the room (pistons, shells), or outside, round what is there (liners)',
      range: 'inside or outside',
      example: 'inside',
      unlessGiven: 'inside',
    },
    ...clearanceInputs,
  ],
  formula:
    'clearance = room − parts (inside) or parts − room (outside), proved within its limits; least greatest |clearance − middle|, then least sum of them',
  source:
    'bottleneck by matchings (Hopcroft and Karp 1973), sum by shortest augmenting paths (Kuhn 1955, Munkres 1957), pairs by branch and bound; within by ISO 14253-1:2017',
  reckon: (values) => {
    const wrong = misasked(values);
    if (wrong !== undefined) return { kind: 'refused', refusal: wrong };
    const bounds = limitsGiven(values);
    if (bounds.kind === 'refused') return bounds;
    const { least, greatest } = bounds.value;
    if (least === undefined || greatest === undefined)
      return refuse('there is no middle to fit to', 'least, greatest', 'give both limits of the clearance');
    const { each = '', goes = '' } = values.texts;
    if (each !== '1' && each !== '2')
      return refuse(
        `${each.slice(0, 40)} parts to a place is out of range`,
        'each',
        'write each=1 or each=2',
      );
    if (goes !== 'inside' && goes !== 'outside')
      return refuse(
        'where parts go is not understood',
        `goes=${goes.slice(0, 40)}`,
        'write goes=inside or goes=outside',
      );
    const places = namedSizes('places', values.texts.places ?? '');
    if (places.kind === 'refused') return places;
    const parts = namedSizes('parts', values.texts.parts ?? '');
    if (parts.kind === 'refused') return parts;
    const set = fitParts({
      places: places.value.map(({ name, size }) => ({ name, room: size, limits: { least, greatest } })),
      parts: parts.value,
      goes,
      takes: each === '2' ? ['', ''] : [''],
      rule: { kind: 'guarded', conformance: quantityOf(values, 'conformance').value },
    });
    if (set.kind === 'refused') return set;
    if (set.value.kind === 'lacking')
      return answer({
        results: { assigned: { value: 'none', unit: '' } },
        notes: [`${set.value.says}.`],
      });
    const { fits, greatestOff, sumOff, proved } = set.value;
    const results: Record<string, Result> = {
      'greatest-off': inMm(greatestOff),
      'sum-off': inMm(sumOff),
    };
    for (const { place, parts: names, clearance, off } of fits) {
      results[`${place}.parts`] = { value: names.join(' + '), unit: '' };
      results[`${place}.clearance`] = result(clearance, 'mm');
      results[`${place}.off`] = inMm(off);
    }
    return answer({
      results,
      notes: [
        `The middle of the limits is ${formatFigure((least + greatest) / 2, 4)} mm; off is how far a clearance lies from it, above 0 wide.`,
        proved
          ? 'No other way to serve every place has a smaller greatest deviation, nor with that one a smaller sum.'
          : 'The search was cut short: a better way may exist.',
        'Measure the clearance of each place as fitted before it is covered up.',
      ],
    });
  },
};
