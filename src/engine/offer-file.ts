/** @module Offers as the engine type file gives them: what is done or supplied, by whom, at what price, in how many days. */
import { z } from 'zod';
import { bounds, figure, name, price, words } from './file-terms.ts';

export const offerFile = z.strictObject({
  component: name,
  does: z
    .enum(['machine', 'sleeve', 'build up', 'replace', 'exchange'])
    .describe('to exchange is to take a reconditioned part for the old one'),
  size: words.describe('`standard`, or the name of a step or a grade'),
  supplier: words,
  price,
  per: z.enum(['set', 'place']),
  'set-up': z
    .strictObject({ name, price })
    .optional()
    .describe('paid once, however many offers share the set-up'),
  quantity: z
    .array(z.strictObject({ from: z.int().min(2).max(64), price }))
    .min(1)
    .max(6)
    .optional()
    .describe('the price of each from so many on, where it is priced per place'),
  deposit: price
    .optional()
    .describe('paid on top and given back for the old part, which must not be cracked'),
  days: z.number().min(0).max(400),
  life: figure.optional().describe('hours expected of it, where they differ from those of the component'),
  way: name.optional().describe('the way that it belongs to, of several that an either-or coupling names'),
  'bored-to': figure.optional().describe('of a sleeve: the bore that takes it, from which the wall is told'),
  mass: bounds.optional().describe('between what masses the new part lies'),
});
