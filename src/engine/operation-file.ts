/** @module What an engine type file says of one operation: when it is done, what it takes off, fits and hides, and what it takes. */
import { z } from 'zod';
import { name, words } from './file-terms.ts';
import { sumFile } from './sum-file.ts';

const parts = z.array(name).max(24).default([]);

const askFile = z.strictObject({
  ask: words.describe('as it is put to the fitter'),
  answer: z
    .enum(['seen', 'words', 'count', 'reading', 'picture'])
    .default('seen')
    .describe('seen and as it should be; words; a whole number; a reading of a characteristic; a picture'),
  reads: name.optional().describe('of a reading: the characteristic'),
  each: z.boolean().default(false).describe('asked once at every place of the operation'),
  like: z
    .strictObject({ operation: name, ask: name })
    .optional()
    .describe('of a count: the other count that it must come to, such as plugs taken out'),
  by: z.literal('second person').optional().describe('answered by another than whoever signs the operation'),
});

export const operationFile = z.strictObject({
  title: words,
  phase: z.enum(['strip', 'build', 'set', 'run']),
  at: name.optional(),
  after: z.array(name).max(32).default([]),
  needs: z.array(name).max(24).default([]).describe('characteristics that must be proved: a hold point'),
  'read-again': z
    .boolean()
    .default(false)
    .describe(
      'what it needs is read anew: readings from before the operations under `after` were signed, or from before its own joints were tightened, count no more',
    ),
  removes: parts.describe(
    'what it takes off: kinds of place where there are such, or names of its own such as `sump`',
  ),
  fits: parts.describe('what it fits again, in the words of the operation that took it off'),
  renews: z
    .array(name)
    .max(24)
    .default([])
    .describe('parts used but once that go in new with it, by their names under `one-use`'),
  covers: parts.describe('characteristics, or kinds of place, that nobody comes to any more once it is done'),
  tightens: parts.describe('fasteners that it tightens, at every place where they sit'),
  stand: name
    .optional()
    .describe('how the engine must lie on its stand, for example `upright`; any way where it is left out'),
  tools: z.array(name).max(12).default([]).describe('special tools that are fetched for it'),
  people: z.int().min(1).max(4).default(1).describe('how many it takes at once'),
  minutes: z.number().positive().max(6000).optional().describe('how long it takes them, about'),
  asks: z
    .record(name, askFile)
    .refine((asks) => Object.keys(asks).length <= 24, 'at most 24 entries')
    .meta({ maxProperties: 24 })
    .default({})
    .describe('what is to be looked at, counted or written down before it is signed'),
  gate: z
    .boolean()
    .default(false)
    .describe('a gate, such as the first start: nobody overrules the order of work before it'),
  breaks: z
    .record(name, words)
    .refine((entries) => Object.keys(entries).length <= 32, 'at most 32 entries')
    .meta({ maxProperties: 32 })
    .default({})
    .describe('what is broken or buried where it is done before one of those under `after`'),
  cautions: z.array(words).max(12).default([]),
  sums: z
    .record(name, sumFile)
    .default({})
    .describe('sums that are done within it, each by a name of its own, in their order'),
});
