/** @module Ovality and taper of a part from its two-point sizes, with what the instrument leaves unknown. */
import { formAtMost, greatestRange } from '../measure/form.ts';
import { tidy } from '../quantity/figure.ts';
import { answer, refuse } from '../quantity/refusal.ts';
import { lengthOf, type Typed } from '../quantity/typed.ts';
import type { Uncertain } from '../quantity/uncertain.ts';
import { lengthRows } from './length-list.ts';
import { quantityOf, type Reckoning, type Result, result } from './reckoning.ts';

type Table = readonly (readonly Uncertain[])[];

/** Sizes of which each has its own error; what all share has no part in a form. */
const tableOf = (rows: readonly (readonly Typed[])[], own: number): Table =>
  rows.map((row, plane) =>
    row.map((typed, axis) => {
      const length = lengthOf(typed);
      const terms = own === 0 ? [] : [{ name: `repeat ${plane} ${axis}`, share: own, freedom: Infinity }];
      return { value: length.kind === 'answer' ? length.value : Number.NaN, terms };
    }),
  );

const columnsOf = (table: Table): Table =>
  (table[0] ?? []).map((_, axis) => table.flatMap((row) => row[axis] ?? []));

/**
 * Ovality: the greatest difference between axes in any one plane.
 *
 * @param table  two-point sizes, mm, a row for each plane, an axis for each column
 * @returns mm, 0 or more, with what is not known of it
 * @source  common practice, no source; two-point sizes: ISO 14405-1. Odd lobes do not show between two points.
 * @example ovality([[certain(98.012), certain(98.004)], [certain(98.006), certain(98.003)]]) // 0.008 mm
 */
export const ovality = (table: Table): Uncertain => greatestRange(table, 'widest over axes');

/**
 * Taper: the greatest difference between planes along any one axis.
 *
 * @param table  two-point sizes, mm, a row for each plane, an axis for each column, all rows alike
 * @returns mm, 0 or more, with what is not known of it; a barrel or a waist counts as well as a cone
 * @source  common practice, no source
 * @example taper([[certain(98.012), certain(98.004)], [certain(98.006), certain(98.003)]]) // 0.006 mm
 */
export const taper = (table: Table): Uncertain => greatestRange(columnsOf(table), 'widest over planes');

export const formReckoning: Reckoning = {
  name: 'form',
  title: 'Ovality and taper from a table of two-point sizes',
  inputs: [
    {
      kind: 'text',
      key: 'sizes',
      title:
        'sizes along the axes of a plane parted by commas, the planes by semicolons, a unit after the last',
      range: 'two sizes or more, as many in each plane',
      example: '98.052, 98.031; 98.040, 98.028; 98.021, 98.019 mm',
    },
    {
      kind: 'quantity',
      key: 'repeatability',
      title:
        'standard deviation of one reading, rounding and repeats; what all readings share has no part in it',
      dimension: 'length',
      range: '0 and up',
      example: '0.0015mm',
      unlessGiven: '0 mm',
    },
    {
      kind: 'quantity',
      key: 'greatest',
      title: 'greatest ovality and taper allowed',
      dimension: 'length',
      range: '0 and up',
      example: '0.030mm',
      optional: true,
    },
  ],
  formula:
    'ovality = greatest (max − min) over the axes of a plane; taper = greatest (max − min) over the planes',
  source:
    'common practice, no source; ISO 14405-1 (two-point sizes); distribution of a range: Hartley (1942)',
  reckon: (values) => {
    const rows = lengthRows('sizes', values.texts.sizes ?? '');
    if (rows.kind === 'refused') return rows;
    const [first = []] = rows.value;
    if (!rows.value.every((row) => row.length === first.length) || rows.value.flat().length < 2) {
      return refuse('the planes do not all have the same axes', 'sizes', 'give as many sizes in each plane');
    }
    const own = quantityOf(values, 'repeatability').value;
    const limit = values.quantities.greatest?.value;
    if (own < 0 || (limit !== undefined && limit < 0)) {
      return refuse('a length less than 0 is out of range', 'repeatability, greatest', 'leave out its sign');
    }
    const table = tableOf(rows.value, own);
    const columns = columnsOf(table);
    const results: Record<string, Result> = {};
    for (const [name, value, groups] of [
      ['ovality', ovality(table), table],
      ['taper', taper(table), columns],
    ] as const) {
      if ((groups[0]?.length ?? 0) < 2) continue;
      results[name] = result(value, 'mm');
      if (limit === undefined) continue;
      results[`${name}-conformance`] = { value: tidy(formAtMost(groups, limit)), unit: '1' };
    }
    return answer({
      results,
      notes: ['Two-point sizes show nothing of a form with an odd number of lobes.'],
    });
  },
};
