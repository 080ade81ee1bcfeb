/** @module What an engine type file says of bolts, nuts and studs: thread, stages, where the holes stand, order, stretch, tightening again. */
import { z } from 'zod';
import { figure, name, words } from './file-terms.ts';

const stages = z.array(figure).min(1).max(8);

/** A bolt's name as it is written beside its hole in the manual; a plain number needs no quotes. */
const bolt = z.union([
  z.string().regex(/^\w[\w.-]{0,11}$/, 'a bolt has a short name such as 7 or B2'),
  z.int(),
]);

const holes = z
  .union([
    z
      .array(z.strictObject({ name: bolt.optional(), x: figure, y: figure }))
      .min(1)
      .max(200),
    z.strictObject({ ring: figure.describe('diameter of the circle on which they stand') }),
    z.strictObject({
      rows: z.int().min(1).max(20),
      spacing: figure.describe('from one hole to the next in a row'),
      apart: figure.optional().describe('from row to row'),
    }),
  ])
  .describe(
    'where the holes of one place stand in the plane of the joint: each by itself, on a ring (the first at the top, on clockwise), or in even rows (counted along the first row, then along the next)',
  );

const again = z.strictObject({
  after: name.optional().describe('the operation after which it is due, within the job'),
  by: name.optional().describe('the operation by which it is done, within the job'),
  hours: figure.optional().describe('after how much running it is due, once the engine is handed over'),
  cold: z.boolean().default(false).describe('only once the engine is cold'),
  how: words,
  stages: stages.optional().describe('what is pulled then; the last torque of `stages` where it is left out'),
});

export const fastenerFile = z.strictObject({
  title: words,
  at: name,
  count: z.int().min(1).max(200).describe('how many at each place'),
  thread: z.string().regex(/^M\d{1,2}(x\d(\.\d{1,2})?)?$/, 'a metric thread such as M12 or M12x1.25'),
  class: z.enum(['8.8', '10.9', '12.9']),
  'thread-state': z
    .enum(['dry', 'oiled', 'compound'])
    .describe('goes with every torque and is never converted'),
  friction: z
    .tuple([z.number(), z.number()])
    .describe('least and greatest coefficient of friction in that state'),
  stages: stages.describe(
    'torques in order, the last one final; an angle such as `90 deg` is turned on from where the stage before has ended',
  ),
  hand: z.enum(['right', 'left']).default('right'),
  holes: holes.optional(),
  order: z
    .union([z.enum(['centre out', 'crosswise', 'spiral']), z.array(bolt).min(1).max(200)])
    .optional()
    .describe(
      "the maker's own order, every bolt by name, which goes before any other; or how the order is reckoned from the holes: centre out where nothing is said, crosswise on a ring",
    ),
  stretch: z
    .union([z.literal('once'), z.strictObject({ longest: figure })])
    .optional()
    .describe(
      'stretched for good as they are tightened: once and then renewed, or used again up to a longest length',
    ),
  'renewed-by': name.optional().describe('the part under one-use that takes the place of used ones'),
  again: z.array(again).max(4).default([]).describe('when and how it is tightened again'),
  source: words.optional(),
});
