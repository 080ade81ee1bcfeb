/** @module What is wrong in a readings file, row by row, as lines for the terminal. */
import type { RowTrouble } from '../engine/table-row.ts';
import { refusalText } from '../quantity/refusal.ts';
import type { Outcome } from './command.ts';
import { plain } from './plain.ts';

/** `readings.csv:12: error: what (where): remedy`; a trouble of the file as a whole has no row. */
export const rowLines = (path: string, troubles: readonly RowTrouble[]): readonly string[] =>
  troubles.map((trouble) =>
    plain(`${path}:${trouble.row > 0 ? `${trouble.row}:` : ''} ${trouble.weight}: ${refusalText(trouble)}`),
  );

/** What is said last where rows were in error. */
export const mendLine = (path: string): string =>
  `endfloat: the readings have errors (${plain(path)}): mend them and ask again`;

/** The answer where a readings file has errors and nothing of it may be used. */
export const notTaken = (path: string, troubles: readonly RowTrouble[]): Outcome => ({
  text: '',
  json: { usable: false, troubles },
  warnings: [...rowLines(path, troubles), mendLine(path)],
  no: true,
});
