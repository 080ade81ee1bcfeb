/** @module A workbook (Office Open XML, ECMA-376) to the rows of its first sheet. */
import type { RowTrouble, TableRow } from '../engine/table-row.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { sheetRows } from './sheet-rows.ts';
import { unpack } from './unpack.ts';
import { cellFormats, sharedTexts, sheetsOf, workbookParts } from './workbook.ts';

const largest = 16 * 1024 * 1024;
const texts = 'xl/sharedStrings.xml';
const styles = 'xl/styles.xml';

export interface Workbook {
  readonly rows: readonly TableRow[];
  readonly warnings: readonly RowTrouble[];
}

const warning = (row: number, what: string, where: string, remedy: string): RowTrouble => ({
  row,
  weight: 'warning',
  what,
  where,
  remedy,
});

/**
 * Reads the first sheet of a workbook.
 *
 * Every cell comes as the person who typed it sees it: text as text, a number with the decimals that its format
 * shows and every further one that it has. Dates, errors, true and false, percentages and formulas that were never
 * worked out are no figures; they are told at their cell, for whoever uses its column. Safe with files from
 * strangers: what is unpacked, rows, columns and texts are bounded, entities are not resolved. Never throws.
 *
 * @param bytes  an XLSX file
 * @returns rows that are not empty, with their row number in the sheet; refuses what is no workbook, or far too large
 * @source  ECMA-376, Part 1, 18.3 (worksheets), 18.4 (shared strings), 18.8 (styles)
 */
export const readXlsx = (bytes: Uint8Array): Answer<Workbook> => {
  if (bytes.length > largest)
    return refuse('the workbook is larger than 16 MB', '', 'give the rows of one engine');
  const book = unpack(bytes, (name) => workbookParts.some((part) => part === name));
  if (book.kind === 'refused') return book;
  const [sheet, ...others] = sheetsOf(book.value);
  if (!sheet) return refuse('it holds no sheet', '', 'give an XLSX workbook, or CSV');
  const parts = unpack(bytes, (name) => name === sheet.part || name === texts || name === styles);
  if (parts.kind === 'refused') return parts;
  const part = parts.value.get(sheet.part);
  if (!part) return refuse(`the sheet ${sheet.name} is missing from the file`, '', 'save the workbook again');
  const read = sheetRows(part, sharedTexts(parts.value.get(texts)), cellFormats(parts.value.get(styles)));
  if (read.kind === 'refused') return read;
  const { rows, zerosLost } = read.value;
  return answer({
    rows,
    warnings: [
      ...(others.length === 0
        ? []
        : [
            warning(
              0,
              `the sheet “${sheet.name.slice(0, 40)}” is read and the ${others.length === 1 ? 'other is' : `${others.length} others are`} not`,
              'workbook',
              'put the sheet that is meant in front',
            ),
          ]),
      ...(zerosLost === undefined
        ? []
        : [
            warning(
              zerosLost.row,
              'this number has fewer decimals than others of its column; a spreadsheet drops last zeros',
              `cell ${zerosLost.address}`,
              'where a zero was read, format the column with its decimals, such as 0.000',
            ),
          ]),
    ],
  });
};
