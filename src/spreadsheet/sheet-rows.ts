/** @module The rows of one sheet, cell by cell. */
import type { TableRow } from '../engine/table-row.ts';
import { type Answer, answer, type Refusal, refuse } from '../quantity/refusal.ts';
import { cellText, looseDecimals, type RawCell } from './cell-text.ts';
import type { NumberFormat } from './number-format.ts';
import { walkXml } from './xml-walk.ts';

/** More than any job has; a file beyond it is something else. */
const mostRows = 50_000;
const mostColumns = 200;
const longestText = 1000;

export interface SheetRows {
  readonly rows: readonly TableRow[];
  /** The first cell, row 1 and up, that seems to have lost zeros that its neighbours above or below still have. */
  readonly zerosLost?: { readonly row: number; readonly address: string };
}

/** Column from 0 and row from 1 of an address such as `B7`. */
const placeOf = (address: string): { readonly column: number; readonly row: number } | undefined => {
  const parts = /^([A-Z]{1,3})([1-9]\d{0,6})$/.exec(address);
  if (!parts) return undefined;
  const [, letters = '', row] = parts;
  let column = 0;
  for (const letter of letters) column = column * 26 + letter.charCodeAt(0) - 64;
  return { column: column - 1, row: Number(row) };
};

interface Sight {
  readonly most: number;
  readonly least: number;
  readonly where: { readonly row: number; readonly address: string };
}

export const sheetRows = (
  part: Uint8Array,
  texts: readonly string[],
  formats: readonly NumberFormat[],
): Answer<SheetRows> => {
  const rows = new Map<number, { readonly fields: string[]; readonly wrong: Map<number, Refusal> }>();
  const decimals = new Map<number, Sight>();
  let trouble: Refusal | undefined;
  const stop = (what: string, where: string, remedy: string) => {
    trouble ??= { what, where, remedy };
  };

  const keep = (cell: RawCell, { column, row }: { readonly column: number; readonly row: number }) => {
    const text = cellText(cell, texts, formats);
    if (text.kind === 'answer' && text.value === '') return;
    if (column >= mostColumns)
      return stop('the table is far too wide', `cell ${cell.address}`, 'keep the columns that are meant');
    const kept = rows.get(row) ?? { fields: [], wrong: new Map() };
    rows.set(row, kept);
    if (rows.size > mostRows)
      return stop(`more than ${mostRows} rows`, `row ${row}`, 'give the rows of one engine');
    if (text.kind === 'refused') kept.wrong.set(column, text.refusal);
    else if (text.value.length > longestText)
      kept.wrong.set(column, {
        what: 'its text is longer than any figure or name',
        where: `cell ${cell.address}`,
        remedy: 'shorten it',
      });
    else kept.fields[column] = text.value;
    const left = text.kind === 'answer' ? looseDecimals(cell, formats) : undefined;
    if (left === undefined) return;
    const where = { row, address: cell.address };
    const seen = decimals.get(column) ?? { most: left, least: left, where };
    decimals.set(column, {
      most: Math.max(seen.most, left),
      least: Math.min(seen.least, left),
      where: left < seen.least ? where : seen.where,
    });
  };

  let row = 0;
  let column = -1;
  let cell:
    | { address: string; type: string; style: number; value?: string; inline?: string; formula: boolean }
    | undefined;
  let into: 'value' | 'inline' | undefined;
  let aloud = 0;
  const sound = walkXml(part, {
    open: (name, attribute) => {
      if (name === 'row') {
        row = Number(attribute('r') ?? row + 1);
        column = -1;
      }
      if (name === 'c') {
        const address = attribute('r');
        column = address === undefined ? column + 1 : (placeOf(address)?.column ?? -1);
        cell = {
          address: address ?? `row ${row}, column ${column + 1}`,
          type: attribute('t') ?? 'n',
          style: Number(attribute('s') ?? 0),
          formula: false,
        };
      }
      if (name === 'rPh') aloud += 1;
      if (!cell || aloud > 0) return;
      if (name === 'f') cell.formula = true;
      if (name === 'v') {
        into = 'value';
        cell.value = '';
      }
      if (name === 't') into = 'inline';
    },
    text: (words) => {
      if (cell && into) cell[into] = (cell[into] ?? '') + words;
    },
    close: (name) => {
      if (name === 'rPh') aloud -= 1;
      if (name === 'v' || name === 't') into = undefined;
      if (name !== 'c' || !cell) return;
      if (column < 0 || !(row > 0))
        stop('a cell has no address', cell.address.slice(0, 20), 'save the workbook again');
      else if (!trouble) keep({ value: undefined, inline: undefined, ...cell }, { column, row });
      cell = undefined;
    },
  });
  if (trouble) return { kind: 'refused', refusal: trouble };
  if (!sound) return refuse('the sheet in the workbook is damaged', '', 'save it again, or give it as CSV');
  const lost = [...decimals.values()].find(({ most, least }) => least < most);
  return answer({
    rows: [...rows]
      .sort(([a], [b]) => a - b)
      .map(([line, { fields, wrong }]) => ({
        line,
        fields: Array.from(
          { length: Math.max(fields.length, ...[...wrong.keys()].map((at) => at + 1)) },
          (_, at) => fields[at] ?? '',
        ),
        ...(wrong.size === 0 ? {} : { wrong }),
      })),
    ...(lost && { zerosLost: lost.where }),
  });
};
