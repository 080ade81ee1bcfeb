/** @module What a cell says, as the person who typed it sees it: nothing is rounded, and what is no figure is told. */
import { formatFigure } from '../quantity/figure.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { NumberFormat } from './number-format.ts';

export interface RawCell {
  /** `B7` */
  readonly address: string;
  /** The kind that the file gives it: n, s, str, inlineStr, b, e, d. */
  readonly type: string;
  readonly style: number;
  readonly value: string | undefined;
  /** Text that stands in the cell itself. */
  readonly inline: string | undefined;
  readonly formula: boolean;
}

const decimalsOf = (value: number): number => {
  const [mantissa = '', exponent = '0'] = String(value).split('e');
  return Math.max(0, (mantissa.split('.')[1]?.length ?? 0) - Number(exponent));
};

/** With every decimal that is shown, and every further one that it has: a format hides digits, it does not take them away. */
const numberText = (value: number, decimals: number | undefined): string => {
  const own = decimalsOf(value);
  return own > 20 || Math.abs(value) >= 1e21
    ? String(value)
    : formatFigure(value, Math.max(own, Math.min(decimals ?? 0, 20)));
};

const wrong = (cell: RawCell, what: string, remedy: string): Answer<never> =>
  refuse(what, `cell ${cell.address}`, remedy);

const figure = (cell: RawCell, format: NumberFormat | undefined): Answer<string> => {
  const raw = cell.value ?? '';
  const value = raw.trim() === '' ? Number.NaN : Number(raw);
  if (!Number.isFinite(value))
    return wrong(cell, `it holds ${raw.slice(0, 30) || 'nothing'} and no number`, 'type the figure again');
  switch (format?.kind) {
    case 'date':
      return wrong(
        cell,
        'it holds a date, or what the spreadsheet took for one',
        'format the cell as text and type the figure again: 9/16 becomes a date otherwise',
      );
    case 'percent':
      return wrong(cell, 'it holds a percentage', 'format the cell as text and type the figure again');
    default:
      return answer(numberText(value, format?.decimals));
  }
};

/** The text of a cell, or why it has none; empty where nothing stands in it. */
export const cellText = (
  cell: RawCell,
  texts: readonly string[],
  formats: readonly NumberFormat[],
): Answer<string> => {
  if (cell.formula && (cell.value ?? '') === '' && cell.inline === undefined && cell.type !== 'str')
    return wrong(cell, 'its formula has not been worked out', 'open and save it in a spreadsheet program');
  switch (cell.type) {
    case 's': {
      const text = texts[Number(cell.value)];
      return text === undefined
        ? wrong(cell, 'its text is missing from the file', 'save the workbook again')
        : answer(text.trim());
    }
    case 'str':
    case 'inlineStr':
      return answer((cell.inline ?? cell.value ?? '').trim());
    case 'e':
      return wrong(cell, `it shows the error ${(cell.value ?? '').slice(0, 20)}`, 'mend its formula');
    case 'b':
      return wrong(cell, 'it holds true or false', 'type the figure again');
    case 'd':
      return wrong(cell, 'it holds a date', 'format the cell as text and type the figure again');
    default:
      return cell.value === undefined ? answer('') : figure(cell, formats[cell.style]);
  }
};

/** Whether a cell is a number whose last zeros nobody kept: how many decimals it has left. */
export const looseDecimals = (cell: RawCell, formats: readonly NumberFormat[]): number | undefined => {
  const format = formats[cell.style];
  const general = format === undefined || (format.kind === 'number' && format.decimals === undefined);
  return cell.type === 'n' && general && cell.value !== undefined
    ? decimalsOf(Number(cell.value))
    : undefined;
};
