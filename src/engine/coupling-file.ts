/** @module Couplings as the engine type file gives them: what decides together, what follows what. */
import { z } from 'zod';
import { figure, name } from './file-terms.ts';

const does = z.enum(['put back', 'machine', 'sleeve', 'build up', 'replace', 'exchange']);

export const couplingFile = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('same size'),
    components: z.tuple([name, name]).describe('the second follows the size of the first, place by place'),
  }),
  z.strictObject({
    kind: z.literal('renew with'),
    if: name,
    is: z.array(does).min(1),
    renew: name,
  }),
  z.strictObject({
    kind: z.literal('disturbed'),
    if: name.optional().describe('the component: anything done with it but putting it back disturbs'),
    by: name.optional().describe('or the operation that disturbs by being done'),
    renew: name,
  }),
  z.strictObject({
    kind: z.literal('matched'),
    components: z.tuple([name, name]).describe('made to one another: renewed both or neither'),
  }),
  z.strictObject({
    kind: z.literal('either or'),
    ways: z.array(name).min(2).max(12).describe('ways of offers, of which no two are taken together'),
  }),
  z.strictObject({
    kind: z.literal('balance'),
    of: name.describe('the component whose masses must lie close to one another'),
    mass: name.optional().describe('the characteristic that holds the mass of each as found'),
    most: figure.describe('how far the lightest and the heaviest may be apart, for example `8 g`'),
  }),
]);
