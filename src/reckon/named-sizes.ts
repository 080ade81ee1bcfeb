/** @module Lists of names with a size, as given to a sum: `A 1.482, B 1.485 mm`, or the text of a CSV file. */
import { readCsv } from '../measure/csv.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { minus, type Uncertain } from '../quantity/uncertain.ts';
import type { Dimension } from '../quantity/unit.ts';
import { readGiven, unitGiven } from './given.ts';

export interface NamedSize {
  readonly name: string;
  readonly size: Uncertain;
}

const most = 5000;
const named = /^(\S+)\s+(.+)$/;
/** A minus between blanks takes one size from another; one at a figure is its sign. */
const less = /\s[-−]\s/;

type Entry = readonly [name: string, text: string];

const entriesOf = (key: string, text: string): Answer<readonly Entry[]> => {
  if (!/[\r\n]/.test(text)) {
    const entries: Entry[] = [];
    for (const entry of text.split(/[,;]/).map((each) => each.trim())) {
      const [, name, size] = named.exec(entry) ?? [];
      if (name === undefined || size === undefined)
        return refuse(
          `“${entry.slice(0, 40)}” is no name with a size`,
          key,
          'write name and size with a blank between, commas between the entries: A 1.482, B 1.485 mm',
        );
      entries.push([name, size]);
    }
    return answer(entries);
  }
  const table = readCsv(text);
  if (table.kind === 'refused') return table;
  const rows = table.value.rows.filter(({ fields }) => fields.some((field) => field.trim() !== ''));
  // A first line without a figure is the heads of the columns.
  const heads = rows[0] && !/\d/.test(rows[0].fields.slice(1).join(''));
  const entries: Entry[] = [];
  for (const { fields, line } of heads ? rows.slice(1) : rows) {
    const [name = '', ...sizes] = fields.map((field) => field.trim());
    const size = sizes.filter((each) => each !== '').join(' - ');
    if (name === '' || size === '')
      return refuse('a line has no name with a size', `${key}, line ${line}`, 'fill it in or take it out');
    entries.push([name, size]);
  }
  return answer(entries);
};

/**
 * Names with sizes; a size may be one less another (`59.000 - 54.981`), each with its ±; a figure without a unit has
 * that of the last figure of all.
 *
 * @internal
 */
export const namedSizes = (
  key: string,
  text: string,
  dimension: Dimension = 'length',
): Answer<readonly NamedSize[]> => {
  const entries = entriesOf(key, text);
  if (entries.kind === 'refused') return entries;
  if (entries.value.length > most)
    return refuse(`${key} has more than ${most} entries`, key, 'give it in parts');
  const unit = unitGiven(entries.value.at(-1)?.[1].split(less).at(-1) ?? '');
  const read: NamedSize[] = [];
  for (const [name, whole] of entries.value) {
    const sizes: Uncertain[] = [];
    for (const [at, one] of whole.split(less).entries()) {
      const size = readGiven(
        `${name} ${key} ${at}`,
        unitGiven(one) === '' ? `${one} ${unit}` : one,
        dimension,
      );
      if (size.kind === 'refused')
        return refuse(
          size.refusal.what,
          `${key}, ${name.slice(0, 40)} ${one.slice(0, 40)}`,
          size.refusal.remedy,
        );
      sizes.push(size.value);
    }
    const [first, ...others] = sizes;
    if (first) read.push({ name, size: others.reduce(minus, first) });
  }
  return answer(read);
};
