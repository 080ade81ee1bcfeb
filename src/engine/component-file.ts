/** @module Components as the engine type file gives them: how they are judged, the sizes they may be machined to, the grades they come in. */
import { z } from 'zod';
import { bounds, figure, limitsFile, name, words } from './file-terms.ts';
import { fitting } from './fitting-file.ts';
import { machining } from './order-file.ts';

const layer = z
  .strictObject({
    of: name.optional().describe('the characteristic by which it is measured as found'),
    'as-made': figure.optional().describe('its depth at the size as made, where it is not measured'),
    least: figure.describe('what must be left of it'),
  })
  .describe('metal that machining takes from and that must not run out');

const sizes = z
  .strictObject({
    of: name.describe('the characteristic that is machined'),
    'clean-up': figure.describe('what must be left to take off at the worst place'),
    steps: z
      .array(z.strictObject({ name: words, limits: limitsFile }))
      .min(1)
      .max(12),
    wall: layer.optional().describe('the wall behind a bore'),
    case: layer.optional().describe('the hardened depth of a journal'),
    fillet: name.optional().describe('the characteristic that must hold its limits before it is ground'),
    hardness: z
      .strictObject({
        scale: z.enum(['HRC', 'HRB', 'HB', 'HV', 'HS']),
        least: z.number().positive().optional(),
        greatest: z.number().positive().optional(),
      })
      .optional()
      .describe('within what hardness, on one scale, a journal that was overheated may still be ground'),
    'most-times': z
      .int()
      .min(1)
      .max(12)
      .optional()
      .describe(
        'how many times it may be machined over its life; each step up to the one it is found at counts as one',
      ),
  })
  .describe('rework steps in the order in which they are taken; the size as made is called `standard`');

const grades = z
  .strictObject({
    of: name.describe('the characteristic that decides, for example how far the pistons stand out'),
    takes: z.enum(['least', 'greatest']).describe('which of its values over all places decides'),
    steps: z
      .array(z.strictObject({ name: words, when: bounds }))
      .min(1)
      .max(12)
      .describe('thinnest first; where two fit, the later one is taken'),
  })
  .describe('grades that a part is made in, chosen by a measured value');

export const componentFile = z.strictObject({
  title: words,
  at: name.describe('the kind of place'),
  together: z.boolean().describe('one option for all places (one crank, one block), or each place by itself'),
  'judged-by': z.array(name).max(24).describe('characteristics that must allow it to be put back'),
  'put-back': z.boolean().describe('whether a used one may be put back at all'),
  stays: z
    .boolean()
    .optional()
    .describe('whether a used one goes back to its own place only, so that none from elsewhere will do'),
  tagged: z
    .boolean()
    .optional()
    .describe(
      'whether the tag of its place hangs on it, so that the tag counts no more once it is renewed; as `stays` where nothing is said',
    ),
  life: z
    .union([
      figure,
      z.strictObject({
        'counted-on': figure.describe('hours that nine in ten outlast'),
        usual: figure.describe('hours that half of them outlast'),
      }),
    ])
    .describe(
      'hours that a new or machined one may be counted on for, for example `8000 h`; where more is known of it, with the usual hours too',
    ),
  'wear-varies': z
    .number()
    .min(0.01)
    .max(1)
    .optional()
    .describe(
      'by what share the rate of wear varies from one stretch of running to the next, for example 0.3',
    ),
  sizes: sizes.optional(),
  grades: grades.optional(),
  machining: machining.optional().describe('what the machine shop is told beside the finished size'),
  fitting: fitting
    .optional()
    .describe('where parts are measured in stock and each goes to the place that its size fits best'),
  arrival: z
    .array(name)
    .max(24)
    .optional()
    .describe(
      'characteristics measured when it comes from a supplier; where it is left out, those measured ones that it is judged by and the sums of these',
    ),
});
