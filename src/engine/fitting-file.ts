/** @module What an engine type file says of parts that are measured in stock and fitted to places by their sizes. */
import { z } from 'zod';
import { instrumentKind, material, name, words } from './file-terms.ts';

export const fitting = z.strictObject({
  measured: words.describe('what is measured on the loose part, for example `thickness at the crown`'),
  instrument: instrumentKind.optional(),
  material: material.optional(),
  room: name.describe(
    'the characteristic that says what there is without the part, for example the housing bore less the journal',
  ),
  clearance: name.describe('the characteristic whose limits as made the clearance must keep to'),
  goes: z
    .enum(['inside', 'outside'])
    .default('inside')
    .describe(
      'parts take up room (clearance = room less parts), or go round what is there (parts less room)',
    ),
  parts: z.int().min(1).max(2).default(1).describe('how many go to a place'),
  halves: z
    .tuple([words, words])
    .optional()
    .describe('where the two parts of a place differ: what each is called, for example upper and lower'),
});
