/** @module What an engine type file says for orders: parts used but once, and what the machine shop is told. */
import { z } from 'zod';
import { bounds, name, price, words } from './file-terms.ts';

export const oneUse = z.strictObject({
  title: words,
  at: name.describe('the kind of place'),
  each: z.int().min(1).max(200).describe('how many at each place'),
  supplier: words,
  price: price.describe('of one piece'),
  days: z.number().min(0).max(400),
  'disturbed-by': z
    .array(name)
    .max(24)
    .default([])
    .describe('operations after which it may not be used again'),
  'renewed-with': z
    .array(name)
    .max(24)
    .default([])
    .describe('components that need a new one when they are machined or renewed themselves, place by place'),
  source: words.optional(),
});

const crackTest = z.enum(['dye penetrant', 'magnetic particles', 'pressure']);

export const machining = z.strictObject({
  finish: bounds.optional().describe('roughness Ra of the finished face'),
  fillet: bounds.optional().describe('radius where journal and web meet'),
  chamfer: bounds.optional().describe('at the edges of the oil holes'),
  marks: words.optional().describe('what is stamped or written on the part, and where'),
  also: z.array(words).max(12).default([]).describe('what else is to be kept to'),
  'crack-test': z
    .strictObject({ before: crackTest.optional(), after: crackTest.optional() })
    .optional()
    .describe('how it is tested before it is machined, and afterwards'),
  source: words.optional(),
});
