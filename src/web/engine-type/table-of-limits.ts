/** @module A file of limits that a person chose, to rows. */
import type { RowTrouble, TableRow } from '../../engine/table-row.ts';
import { readCsv } from '../../measure/csv.ts';
import { type Answer, answer } from '../../quantity/refusal.ts';
import { readTableFile } from '../../spreadsheet/table-file.ts';

export interface ChosenTable {
  readonly name: string;
  readonly rows: readonly TableRow[];
  readonly warnings: readonly RowTrouble[];
}

export const tableIn = async (file: File): Promise<Answer<ChosenTable>> => {
  const read = readTableFile(new Uint8Array(await file.arrayBuffer()));
  if (read.kind === 'refused') return read;
  if (read.value.kind === 'rows') return answer({ name: file.name, ...read.value });
  const csv = readCsv(read.value.text.replace(/^\ufeff/, ''));
  return csv.kind === 'refused' ? csv : answer({ name: file.name, rows: csv.value.rows, warnings: [] });
};
