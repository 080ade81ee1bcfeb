/** @module A table named on the command line, CSV or workbook, to rows. */
import type { RowTrouble, TableRow } from '../engine/table-row.ts';
import { readCsv } from '../measure/csv.ts';
import { type Answer, answer } from '../quantity/refusal.ts';
import { readTableFile } from '../spreadsheet/table-file.ts';
import { bytesOf } from './input-file.ts';
import type { World } from './world.ts';

export interface TableOnFile {
  readonly rows: readonly TableRow[];
  readonly warnings: readonly RowTrouble[];
}

export const tableOnFile = async (path: string, world: World): Promise<Answer<TableOnFile>> => {
  const bytes = await bytesOf(path, world);
  if (bytes.kind === 'refused') return bytes;
  const file = readTableFile(bytes.value);
  if (file.kind === 'refused') return file;
  if (file.value.kind === 'rows') return answer(file.value);
  const csv = readCsv(file.value.text.replace(/^\ufeff/, ''));
  return csv.kind === 'refused' ? csv : answer({ rows: csv.value.rows, warnings: [] });
};
