/** @module Lists and tables of lengths as given to a sum: commas part figures, semicolons part rows. */
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { lengthOf, readTyped, type Typed, unitTyped } from '../quantity/typed.ts';

const most = 2000;

const figureIn = (key: string, entry: string, unit: string): Answer<Typed> => {
  const typed = readTyped(unitTyped(entry) === '' ? `${entry} ${unit}` : entry, 'length');
  return typed.kind === 'refused'
    ? refuse(
        typed.refusal.what,
        `${key}, ${entry.slice(0, 40)}`,
        `${typed.refusal.remedy}; commas part the figures, so write a point in each: 54.980 mm`,
      )
    : typed;
};

/**
 * Rows of lengths; a figure without a unit has that of the last figure of all.
 *
 * @param key   the input's key, to be named where something is wrong
 * @param text  commas part figures, semicolons rows: `98.05, 98.03; 98.04, 98.02 mm`
 * @returns the figures as typed, row by row; refuses an empty entry, what is no length, and more than 2,000 figures
 * @source  none: it reads
 * @example lengthRows('sizes', '98.052, 98.031; 98.040') // refused
 */
export const lengthRows = (key: string, text: string): Answer<readonly (readonly Typed[])[]> => {
  const rows = text.split(';').map((row) => row.split(',').map((entry) => entry.trim()));
  if (rows.flat().length > most)
    return refuse(`${key} has more than ${most} figures`, key, 'give it in parts');
  const unit = unitTyped(rows.at(-1)?.at(-1) ?? '');
  const read: Typed[][] = [];
  for (const row of rows) {
    const figures: Typed[] = [];
    for (const entry of row) {
      if (entry === '') return refuse(`${key} has an empty entry`, key, 'put marks between figures only');
      const figure = figureIn(key, entry, unit);
      if (figure.kind === 'refused') return figure;
      figures.push(figure.value);
    }
    read.push(figures);
  }
  return answer(read);
};

/**
 * Rows of lengths as numbers.
 *
 * @param key   the input's key, to be named where something is wrong
 * @param text  as for the rows of lengths as typed
 * @returns mm, row by row; refuses what those refuse
 * @source  none: it reads
 * @example lengthTable('steps', '54.740, 54.490') // refused
 */
export const lengthTable = (key: string, text: string): Answer<readonly (readonly number[])[]> => {
  const rows = lengthRows(key, text);
  if (rows.kind === 'refused') return rows;
  const table: number[][] = [];
  for (const row of rows.value) {
    const own: number[] = [];
    for (const typed of row) {
      const length = lengthOf(typed);
      if (length.kind === 'refused') return length;
      own.push(length.value);
    }
    table.push(own);
  }
  return answer(table);
};
