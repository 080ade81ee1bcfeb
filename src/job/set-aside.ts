/** @module Readings put beside the measuring sheet: they say nothing any more of what is here now. */
import { type Cell, cellKey, type Reading } from '../measure/reading.ts';
import type { OpenJob } from './job.ts';

/** Readings of some cells are put beside the sheet. */
export const setAside = (job: OpenJob, cells: readonly Cell[]): OpenJob => {
  const readings = new Map(job.sheet.readings);
  const readBefore = new Map(job.readBefore);
  for (const cell of cells) {
    const key = cellKey(cell);
    const taken: readonly Reading[] = readings.get(key) ?? [];
    if (taken.length === 0) continue;
    readings.delete(key);
    readBefore.set(key, [...(readBefore.get(key) ?? []), ...taken]);
  }
  return { ...job, sheet: { ...job.sheet, readings }, readBefore };
};
