/** @module A readings file named on the command line: table, workbook or JSON, to readings and what is wrong in it. */
import type { EngineType } from '../engine/engine-type.ts';
import { type ReadingsFile, readReadings } from '../measure/import-readings.ts';
import type { Instrument } from '../measure/instrument.ts';
import { type Answer, answer } from '../quantity/refusal.ts';
import { readTableFile } from '../spreadsheet/table-file.ts';
import { bytesOf } from './input-file.ts';
import { plain } from './plain.ts';
import type { World } from './world.ts';

export const readingsOnFile = async (
  path: string,
  world: World,
  engine: EngineType,
  register: readonly Instrument[],
): Promise<Answer<ReadingsFile>> => {
  const bytes = await bytesOf(path, world);
  if (bytes.kind === 'refused') return bytes;
  const table = readTableFile(bytes.value);
  if (table.kind === 'refused') {
    const { where } = table.refusal;
    return {
      kind: 'refused',
      refusal: { ...table.refusal, where: [plain(path), where].filter(Boolean).join(', ') },
    };
  }
  if (table.value.kind === 'text') return answer(readReadings(table.value.text, engine, register));
  const file = readReadings(table.value.rows, engine, register);
  return answer({ ...file, troubles: [...table.value.warnings, ...file.troubles] });
};
