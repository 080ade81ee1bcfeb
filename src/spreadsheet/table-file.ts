/** @module A file that a person chose, to a table: a workbook by its first bytes, else text. */
import type { RowTrouble, TableRow } from '../engine/table-row.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { readXlsx } from './read-xlsx.ts';

export type TableFile =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'rows'; readonly rows: readonly TableRow[]; readonly warnings: readonly RowTrouble[] };

const begins = (bytes: Uint8Array, ...start: readonly number[]): boolean =>
  start.every((byte, at) => bytes[at] === byte);

export const readTableFile = (bytes: Uint8Array): Answer<TableFile> => {
  if (begins(bytes, 0x50, 0x4b)) {
    const workbook = readXlsx(bytes);
    return workbook.kind === 'refused' ? workbook : answer({ kind: 'rows', ...workbook.value });
  }
  if (begins(bytes, 0xd0, 0xcf, 0x11, 0xe0))
    return refuse(
      'this is a workbook of the old kind (XLS), or one under a password',
      '',
      'save it as XLSX without a password, or as CSV',
    );
  if (bytes.includes(0))
    return refuse('this is not a text file in UTF-8', '', 'give CSV in UTF-8, or an XLSX workbook');
  try {
    return answer({ kind: 'text', text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) });
  } catch {
    return refuse('the text is not in UTF-8', '', 'save it again as UTF-8, or as an XLSX workbook');
  }
};
