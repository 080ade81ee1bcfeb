/** @module What would settle the unsure verdicts of a sheet, a line each, the cheapest way. */
import type { Settling } from '../measure/settling.ts';
import { plain } from './plain.ts';

export const settlingLines = (unsure: readonly Settling[]): readonly string[] =>
  unsure.map(({ place, characteristic, proposals }) =>
    plain(`Unsure: ${place} ${characteristic}. ${proposals[0]?.says ?? ''}`),
  );
