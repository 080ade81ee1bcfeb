/** @module The exported job: its journal and the figures computed from it, as one JSON text. */
import { figuresOf } from './figures.ts';
import type { RecordModel } from './record-model.ts';

export const recordFormat = 'endfloat record 1';

/** The text of an exported job. */
export const recordFile = (model: RecordModel, journal: readonly unknown[]): string =>
  `${JSON.stringify({ format: recordFormat, journal, figures: figuresOf(model) }, null, 2)}\n`;
