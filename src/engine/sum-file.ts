/** @module What an engine type file says of a sum that is done within an operation: which, from what, what it must keep. */
import { z } from 'zod';
import { figure, instrumentKind, name, words } from './file-terms.ts';

const text = z.string().min(1).max(2000);
const resultKey = z.string().min(1).max(80);

/** Of several sizes, which one. */
export const ofSizes = ['least', 'greatest', 'mean'] as const;
/** Of a fastener, what. */
export const ofFastener = [
  'thread',
  'diameter',
  'class',
  'state',
  'torque',
  'least-friction',
  'greatest-friction',
  'holes',
  'order',
] as const;
/** Of an instrument, what. */
export const ofInstrument = ['permissible-error', 'resolution', 'repeatability'] as const;

/** Of the valves' setting, what: an angle from its own dead centre, or all events with their angles in the cycle. */
export const ofValves = [
  'inlet-opens',
  'inlet-closes',
  'exhaust-opens',
  'exhaust-closes',
  'rest',
  'events',
] as const;
/** Of the pumps' timing, what. */
export const ofPumps = ['needed', 'box', 'most', 'rate', 'adding', 'datum', 'spill'] as const;

/** One of the forms is used; which belong together is for the compiler to say. */
const source = z.strictObject({
  characteristic: name.optional().describe('the value that the job has for it there, with its ±'),
  of: z
    .enum([...ofSizes, ...ofFastener, ...ofInstrument])
    .optional()
    .describe(
      'of several sizes which one (the most worn where nothing is said); of a fastener or an instrument what',
    ),
  place: z
    .string()
    .min(1)
    .max(80)
    .optional()
    .describe('one place, such as `main.2`, where it is not the own one'),
  places: z.literal('all').optional().describe('over all places of its kind'),
  limit: name.optional().describe('a limit as made of this characteristic'),
  is: z.enum(['least', 'greatest']).optional().describe('which of its limits'),
  engine: z.enum(['stroke', 'rod', 'pin-offset', 'cylinders', 'firing-order']).optional(),
  fastener: name.optional(),
  list: name.optional().describe('a characteristic at every place of its kind'),
  as: z
    .enum(['named', 'rows'])
    .optional()
    .describe('each place with its size, or the readings of each place in a row'),
  pumps: z.enum(ofPumps).optional(),
  valves: z
    .enum(ofValves)
    .optional()
    .describe(
      'of `valve-setting`: an angle, or `events`: all four as degrees from the top before the working stroke',
    ),
  instrument: instrumentKind.optional().describe('the one of this kind that the job has'),
  sum: name.optional().describe('a sum of the same operation that was noted before'),
  result: resultKey.optional().describe('what came of it'),
  input: name.optional().describe('what went into it'),
  'shared-by': z
    .tuple([name, name])
    .optional()
    .describe('the error that two inputs share, from their readings'),
});

const keptFigures = z.strictObject({ least: figure.optional(), greatest: figure.optional() });

const kept = keptFigures.extend({
  'size-of': name
    .optional()
    .describe('the component by whose size at the place of the sum the limits differ'),
  sizes: z
    .record(z.string().min(1).max(40), keptFigures)
    .optional()
    .describe('limits of each of its sizes; those beside it are of standard'),
  is: z.array(words).min(1).max(8).optional().describe('of a result in words: which will do'),
});

export const sumFile = z.strictObject({
  reckon: name.describe('name of the sum, as `endfloat reckon` lists it'),
  title: words.optional(),
  each: z.boolean().default(false).describe('done once for every place'),
  at: name.optional().describe('the kind of these places, where it is not that of the operation'),
  given: z
    .record(name, z.union([text, source]))
    .default({})
    .describe('inputs that are not asked of the fitter: a figure, or where it comes from'),
  keeps: z
    .record(resultKey, kept)
    .default({})
    .describe('what the manual asks of its results; * in a name stands for any place'),
  optional: z.boolean().default(false).describe('may be left undone'),
  source: words.optional(),
});

export type SumFile = z.infer<typeof sumFile>;
