/** @module Aligned tables for the terminal. */
import { plain } from './plain.ts';

export interface Column {
  readonly head: string;
  /** Figures stand to the right. */
  readonly right?: boolean;
}

const width = (text: string): number => [...text].length;

const padded = (text: string, to: number, right: boolean): string => {
  const space = ' '.repeat(Math.max(0, to - width(text)));
  return right ? space + text : text + space;
};

/** @returns heads and rows in columns two spaces apart, each line ended; nothing for no rows */
export const table = (columns: readonly Column[], rows: readonly (readonly string[])[]): string => {
  if (rows.length === 0) return '';
  const cells = [columns.map((column) => column.head), ...rows.map((row) => row.map(plain))];
  const widths = columns.map((_, i) => Math.max(...cells.map((row) => width(row[i] ?? ''))));
  return cells
    .map((row) =>
      columns.map((column, i) => padded(row[i] ?? '', widths[i] ?? 0, column.right === true)).join('  '),
    )
    .map((line) => `${line.trimEnd()}\n`)
    .join('');
};
