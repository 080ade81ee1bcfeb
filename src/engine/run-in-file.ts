/** @module What an engine type file says of the run-in: steps of speed and load, what the gauges may show, what a fault takes down. */
import { z } from 'zod';
import { figure, name, words } from './file-terms.ts';
import { limitedGauges, steadyGauges } from './gauge.ts';

const limit = z.strictObject({
  least: figure.optional(),
  greatest: figure.optional(),
  'with-oil-at': figure
    .optional()
    .describe('of a pressure: the greatest counts, and the step is passed, with the oil at least so warm'),
  spread: figure.optional().describe('of the exhaust: how far the cylinders may lie apart'),
});

const keyed = <const Name extends string, Value extends z.ZodType>(names: readonly Name[], value: Value) =>
  z.strictObject(
    Object.fromEntries(names.map((each) => [each, value.optional()])) as {
      [Each in Name]: z.ZodOptional<Value>;
    },
  );

const limits = keyed(limitedGauges, limit);

const step = z.strictObject({
  title: words,
  operation: name.describe('the operation that the step is a part of'),
  speed: figure,
  load: figure.describe('a share of full load, `50 %`, or a torque on the brake'),
  minutes: z.number().positive().max(6000),
  limits: limits
    .optional()
    .describe('what the gauges may show in this step, where it differs from the run-in’s limits'),
  steady: z
    .strictObject({
      apart: z.number().positive().max(600).describe('minutes from one reading to the next, at least'),
      within: keyed(steadyGauges, figure).describe(
        'how far three readings in a row may lie from one another',
      ),
    })
    .optional()
    .describe('temperatures that must have come to rest before the step is passed'),
});

export const runInFile = z.strictObject({
  steps: z.array(step).min(1).max(40),
  limits: limits.optional().describe('what the gauges may show in every step'),
  'after-fault': z
    .enum(['restart all', 'repeat the step'])
    .describe('what is run again when a fault was found'),
  'set-within': figure.describe(
    'how far speed and load may be read from what a step asks, as a share of the greatest that any step asks',
  ),
  'read-every': z.number().positive().max(600).optional().describe('minutes from one reading to the next'),
  'no-oil-pressure-within': figure
    .optional()
    .describe('stop where no oil pressure shows so soon after a start, for example `15 s`'),
  source: words.optional().describe("the manual's page"),
});
