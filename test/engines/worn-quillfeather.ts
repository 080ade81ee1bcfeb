/** @module The three-cylinder demonstration engine as it came in worn, measured all over. */
import { readFileSync } from 'node:fs';
import { instruments } from '../../demo/instruments.ts';
import type { EngineType } from '../../src/engine/engine-type.ts';
import { readReadings } from '../../src/measure/import-readings.ts';
import { cellKey } from '../../src/measure/reading.ts';
import type { Sheet } from '../../src/measure/sheet.ts';
import { quillfeather } from './demo-engines.ts';

const file = readFileSync(new URL('../../demo/readings/quillfeather-worn.csv', import.meta.url), 'utf8');
const engine = quillfeather();
const { readings } = readReadings(file, engine, instruments);

export const wornQuillfeather: Sheet = {
  engine,
  instruments: new Map(instruments.map((instrument) => [instrument.name, instrument])),
  readings: Map.groupBy(readings, ({ cell }) => cellKey(cell)),
  sizesFound: new Map(),
  conformance: 0.95,
};

/** The same readings on an engine type that differs in components, offers or couplings only. */
export const wornAs = (other: Partial<EngineType>): Sheet => ({
  ...wornQuillfeather,
  engine: { ...engine, ...other },
});
