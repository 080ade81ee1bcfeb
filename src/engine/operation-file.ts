/** @module What an engine type file says of one operation: when it is done, what it takes off, fits and hides, and what it takes. */
import { z } from 'zod';
import { name, words } from './file-terms.ts';

const parts = z.array(name).max(24).default([]);

export const operationFile = z.strictObject({
  title: words,
  phase: z.enum(['strip', 'build', 'set', 'run']),
  at: name.optional(),
  after: z.array(name).max(32).default([]),
  needs: z.array(name).max(24).default([]).describe('characteristics that must be proved: a hold point'),
  removes: parts.describe(
    'what it takes off: kinds of place where there are such, or names of its own such as `sump`',
  ),
  fits: parts.describe('what it fits again, in the words of the operation that took it off'),
  covers: parts.describe('characteristics, or kinds of place, that nobody comes to any more once it is done'),
  stand: name
    .optional()
    .describe('how the engine must lie on its stand, for example `upright`; any way where it is left out'),
  tools: z.array(name).max(12).default([]).describe('special tools that are fetched for it'),
  people: z.int().min(1).max(4).default(1).describe('how many it takes at once'),
  minutes: z.number().positive().max(6000).optional().describe('how long it takes them, about'),
  cautions: z.array(words).max(12).default([]),
});
