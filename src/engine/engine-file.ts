/** @module The engine type file as a person writes it: the one source of its types, its validation and its published schema. */
import { z } from 'zod';
import { componentFile } from './component-file.ts';
import { couplingFile } from './coupling-file.ts';
import { fastenerFile } from './fastener-file.ts';
import { figure, instrumentKind, limitsFile, material, name, names, words } from './file-terms.ts';
import { offerFile } from './offer-file.ts';
import { operationFile } from './operation-file.ts';
import { oneUse } from './order-file.ts';
import { runInFile } from './run-in-file.ts';
import { pumpTimingFile, valveSettingFile } from './timing-file.ts';

export type ExpressionFile =
  | string
  | { readonly least: string }
  | { readonly greatest: string }
  | { readonly mean: string }
  | { readonly 'range-over-axes': string }
  | { readonly 'range-over-planes': string }
  | { readonly 'range-over-places': string }
  | { readonly 'range-over-neighbours': string }
  | { readonly difference: readonly [ExpressionFile, ExpressionFile] }
  | { readonly sum: readonly ExpressionFile[] }
  | { readonly factor: readonly [number, ExpressionFile] };

const expression: z.ZodType<ExpressionFile> = z.lazy(() =>
  z.union([
    name,
    z.strictObject({ least: name }),
    z.strictObject({ greatest: name }),
    z.strictObject({ mean: name }),
    z.strictObject({ 'range-over-axes': name }),
    z.strictObject({ 'range-over-planes': name }),
    z.strictObject({ 'range-over-places': name }),
    z.strictObject({ 'range-over-neighbours': name }),
    z.strictObject({ difference: z.tuple([expression, expression]) }),
    z.strictObject({ sum: z.array(expression).min(2).max(12) }),
    z.strictObject({ factor: z.tuple([z.number(), expression]) }),
  ]),
);

const placeKind = z.strictObject({
  title: words,
  count: z.int().min(1).max(64),
  along: z
    .enum(['cylinder', 'bearing', 'engine'])
    .describe(
      'how the places stand along the crank: one a cylinder, one a main bearing, or once for the engine',
    ),
  drawn: z
    .enum(['main', 'big-end', 'bore', 'piston', 'pump', 'cam', 'head', 'thrust', 'valve', 'gear', 'other'])
    .describe('what the drawing shows there'),
  'one-part': words
    .optional()
    .describe('the one part that has all of these places and comes off as a whole, for example `camshaft`'),
});

const characteristic = z.strictObject({
  title: words,
  at: name.describe('the kind of place'),
  quantity: z
    .enum(['length', 'angle', 'force', 'torque', 'pressure', 'mass'])
    .optional()
    .describe('what it is a figure of; a length where nothing is said'),
  scheme: z
    .strictObject({ planes: names.optional(), axes: names.optional() })
    .optional()
    .describe('planes and axes of two-point sizes (ISO 14405-1), in the order in which they are taken'),
  derived: expression.optional().describe('computed from other characteristics and not measured itself'),
  wears: z.enum(['smaller', 'larger', 'either']).describe('which way wear takes it'),
  'in-bore': name
    .optional()
    .describe(
      'of a ring gap: the bore in which it is read; the gap opens by π times what the bore has grown',
    ),
  instrument: instrumentKind.optional(),
  material: material
    .optional()
    .describe('what the part is made of, so that a size taken warm is brought back to 20 °C (ISO 1)'),
  limits: limitsFile.optional(),
  source: words.optional().describe("the manual's page"),
});

/** Entries by name, at most so many: what is looked up among them stays quick for any file. */
const book = <T extends z.ZodType>(value: T, most: number) =>
  z
    .record(name, value)
    .refine((entries) => Object.keys(entries).length <= most, `at most ${most} entries`)
    .meta({ maxProperties: most });

export const engineFile = z.strictObject({
  format: z.literal('endfloat engine type 1'),
  id: name,
  title: words,
  version: z.int().min(1),
  source: words.describe('the manual: number, edition'),
  entered: z
    .strictObject({ by: words, on: words })
    .optional()
    .describe('who typed the figures in from the manual, and when'),
  checked: z
    .strictObject({ by: words, on: words })
    .optional()
    .describe('the second person who checked the figures'),
  differs: z
    .array(z.strictObject({ at: words, reads: figure, by: words, on: words }))
    .max(1000)
    .default([])
    .describe('figures that the second person read otherwise in the manual; empty once both agree'),
  cylinders: z.int().min(1).max(20),
  layout: z.enum(['in line', 'vee']),
  stroke: figure,
  rod: figure.describe('connecting rod, between centres'),
  'pin-offset': figure,
  'firing-order': z.array(z.int().min(1)).min(1).max(20),
  places: book(placeKind, 64),
  characteristics: book(characteristic, 400),
  components: book(componentFile, 200),
  offers: z.array(offerFile).max(2000),
  couplings: z.array(couplingFile).max(200).default([]),
  'one-use': book(oneUse, 400).default({}),
  fasteners: book(fastenerFile, 200).default({}),
  operations: book(operationFile, 400).default({}),
  'pump-timing': pumpTimingFile.optional(),
  'run-in': runInFile.optional(),
  'valve-setting': valveSettingFile.optional(),
});

export type EngineFile = z.infer<typeof engineFile>;
