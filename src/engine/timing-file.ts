/** @module What an engine type file says of timing: the pumps' shims with their cam and second check, and the valves' clearances. */
import { z } from 'zod';
import { bounds, figure, name, words } from './file-terms.ts';

const camLaw = z.strictObject({
  'angles-of': z
    .enum(['camshaft at half crank speed', 'camshaft at crank speed', 'crankshaft'])
    .describe(
      'what the angles below are degrees of; on a four-stroke the camshaft turns at half crank speed',
    ),
  'timing-point': figure.describe(
    'the angle at which the pump closes its port, counted as in the table, or from where the flank begins to lift',
  ),
  'lift-table': z
    .array(z.tuple([figure, figure]))
    .min(3)
    .max(400)
    .optional()
    .describe('angle and lift of the tappet, point by point'),
  flank: z
    .strictObject({
      'base-radius': figure,
      radius: figure.describe('of the flank, or `straight`'),
      tappet: figure.describe("the roller's radius, or `flat`"),
    })
    .optional()
    .describe('the flank that lifts the plunger, where the manual draws the cam and prints no table'),
});

const secondCheck = z.strictObject({
  characteristic: name.describe('what is read at each pump: an angle of the crank, or a length on the rim'),
  nominal: figure.describe('what it reads when the pump is right'),
  'larger-is': z.enum(['earlier', 'later']).describe('a larger reading means that the pump delivers …'),
  rim: figure
    .optional()
    .describe("where a length is read: the rim's way for each degree of crank, for example `3.14 mm/deg`"),
  spread: figure.optional().describe('how far apart the pumps of one engine may be, in degrees of crank'),
});

export const pumpTimingFile = z.strictObject({
  at: name.describe('the kind of place where the pumps sit'),
  datum: figure.describe("the manual's datum dimension"),
  depth: name.describe('the characteristic measured at the timing point'),
  'pack-is': z
    .enum(['datum less depth', 'depth less datum'])
    .optional()
    .describe(
      'how the pack follows from the depth: datum less depth where shims lift the pump and where nothing is said, depth less datum where they lift the tappet',
    ),
  found: name.optional().describe('the characteristic that holds the pack as found'),
  lift: name.optional().describe("the characteristic that holds the lift of each pump's cam"),
  'shims-sit': z.enum(['under the pump flange', 'under the tappet button', 'on the pad']),
  'adding-shims': z.enum(['retards', 'advances']),
  rate: figure
    .optional()
    .describe('crank degrees per millimetre of shim, for example `9.5 deg/mm`; or give the cam'),
  cam: camLaw.optional().describe('the law of lift from which the rate follows'),
  tolerance: figure.describe('how far a fitted pack may be from the pack needed, mm'),
  'most-shims': z.int().min(1).max(12),
  range: bounds.describe('packs that the pumps are made to take'),
  shims: z.array(figure).min(1).max(60).describe('thicknesses made for this pump'),
  check: secondCheck.optional().describe('how the timing of each fitted pump is proved, by a second spill'),
  source: words.optional(),
});

export type PumpTimingFile = z.infer<typeof pumpTimingFile>;

const cylinderNumbers = z.array(z.int().min(1).max(20)).max(20).default([]);

export const valveSettingFile = z.strictObject({
  inlet: name.describe('the characteristic that holds the clearance of the inlet valves'),
  exhaust: name.describe('the characteristic that holds the clearance of the exhaust valves'),
  'inlet-opens': figure.describe('before top dead centre'),
  'inlet-closes': figure.describe('after bottom dead centre'),
  'exhaust-opens': figure.describe('before bottom dead centre'),
  'exhaust-closes': figure.describe('after top dead centre'),
  rest: figure.describe('crank past closing and before opening, until the tappet lies on the base circle'),
  'engine-is': z.enum(['cold', 'hot']).describe('when the clearances hold'),
  turn: words.describe('which way the crank is turned, and from where that is seen'),
  lift: name.optional().describe('the characteristic that holds the lift of each lobe'),
  order: z
    .array(
      z.strictObject({
        top: z.int().min(1).max(20).describe('the cylinder at the top of its firing stroke'),
        inlet: cylinderNumbers,
        exhaust: cylinderNumbers,
      }),
    )
    .min(1)
    .max(20)
    .optional()
    .describe("the maker's own order: which valves are set at which position, by cylinder"),
  source: words.optional(),
});

export type ValveSettingFile = z.infer<typeof valveSettingFile>;
