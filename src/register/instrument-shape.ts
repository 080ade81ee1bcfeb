/** @module The shape of an instrument in a journal, as it is written now. */
import { z } from 'zod';
import { typed, words } from '../journal/shape.ts';

export const day = z.iso.date('a day is written like 2026-03-02');

/** What an instrument is, whatever was found of it later. */
export const describedShape = z.strictObject({
  name: words,
  kind: words,
  range: z.strictObject({ least: typed, greatest: typed }),
  resolution: typed,
  permissibleError: typed,
  repeatability: typed,
  zero: typed.exactOptional(),
  turn: typed.exactOptional(),
  setTo: z.strictObject({ master: words, size: typed, shown: typed }).exactOptional(),
  correction: typed.exactOptional(),
  correctionUncertainty: typed.exactOptional(),
  material: z.enum(['steel', 'cast iron', 'aluminium', 'bronze']).exactOptional(),
});

/** With its last calibration and check, as a job takes it from the register. */
export const instrumentShape = describedShape.extend({
  calibration: z.strictObject({ certificate: words, on: day, due: day }).exactOptional(),
  checked: z.strictObject({ on: day, against: words, good: z.boolean() }).exactOptional(),
});
