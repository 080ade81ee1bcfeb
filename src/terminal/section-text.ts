/** @module A section of the record as the terminal prints it: what is said, then its table. */
import type { RecordSection } from '../record/record-model.ts';
import { plain } from './plain.ts';
import { table } from './table.ts';

export const sectionText = ({ says, table: rows }: RecordSection): string =>
  [
    ...says.map((line) => `${plain(line)}\n`),
    rows === undefined || rows.rows.length === 0
      ? ''
      : table(
          rows.heads.map((head) => ({ head })),
          rows.rows.map(({ cells }) => cells),
        ),
  ].join('');
