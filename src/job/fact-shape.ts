/** @module The shape of every kind of fact, in every version ever written: what stored and sent text is checked by. */
import { z } from 'zod';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { Fact, FactKind } from './event.ts';

/** No half characters, which canonical JSON cannot carry, and none that only a machine can see. */
const plain = (most: number) =>
  z
    .string()
    .max(most)
    .refine(
      (text) => text.isWellFormed() && !/[\p{Cc}--[\t\n\r]]/v.test(text),
      'it holds characters that cannot be kept',
    );
const words = plain(200);
const note = plain(4000);
const count = z.int().min(0).max(1_000_000);

const typed = z.strictObject({ text: plain(60), unit: plain(20) });
const cell = z.strictObject({ place: words, characteristic: words, plane: words, axis: words });
const instrument = z.strictObject({
  name: words,
  kind: words,
  range: z.strictObject({ least: typed, greatest: typed }),
  resolution: typed,
  permissibleError: typed,
  repeatability: typed,
  zero: typed.exactOptional(),
  turn: typed.exactOptional(),
});
const choice = z.strictObject({
  slot: words,
  option: plain(600),
  says: note,
  cents: count.max(1_000_000_000),
});

const shapes = {
  'booked in': z.strictObject({
    number: words,
    engineType: plain(2_000_000),
    shop: words.exactOptional(),
    owner: words,
    plate: words,
    hoursRun: typed,
    complaint: note,
    currency: words,
    conformance: z.number(),
    hoursWanted: typed.exactOptional(),
    daysWanted: z.number().exactOptional(),
  }),
  'instrument brought': z.strictObject({ instrument }),
  'reading taken': z.strictObject({ cell, typed, instrument: words, temperature: typed.exactOptional() }),
  'reading struck out': z.strictObject({ reading: words, why: note }),
  'doubt answered': z.strictObject({ doubt: plain(2000), why: note }),
  'size found': z.strictObject({ component: words, size: words }),
  'finding noted': z.strictObject({
    place: words,
    component: words,
    finding: z.enum(['scored', 'pitted', 'blued', 'cracked', 'corroded', 'worn', 'sound']),
    mayGoBack: z.boolean(),
    says: note,
  }),
  'shims counted': z.strictObject({
    shims: z.array(z.strictObject({ thickness: typed, count })).max(200),
  }),
  'plan chosen': z.strictObject({
    choices: z.array(choice).max(1000),
    cents: z.int(),
    days: z.number(),
    hours: z.number(),
  }),
  'owner agreed': z.strictObject({ name: words, how: note }),
  'pack fitted': z.strictObject({ place: words, shims: z.array(typed).max(50) }),
  'operation done': z.strictObject({ operation: words, note }),
  'run step logged': z.strictObject({
    speed: typed,
    load: typed,
    minutes: z.number(),
    oilPressure: typed.exactOptional(),
    waterTemperature: typed.exactOptional(),
    note,
  }),
  'handed over': z.strictObject({ to: words, note }),
} satisfies { readonly [Kind in FactKind]: z.ZodType<Omit<Extract<Fact, { kind: Kind }>, 'kind'>> };

/** A fact as the shapes have it; a test holds it to be the same as `Fact`. */
export type ShapedFact = { [Kind in FactKind]: { kind: Kind } & z.infer<(typeof shapes)[Kind]> }[FactKind];

type ReadBody = (body: unknown) => z.ZodSafeParseResult<object>;

const now =
  (shape: z.ZodType<object>): ReadBody =>
  (body) =>
    shape.safeParse(body);

/**
 * Readers of each kind of fact by version, version 1 first. A new version adds its shape to `shapes`, moves the old
 * one into its reader here, and that reader turns the old body into the new one. Nothing is ever taken out.
 */
const readers: { readonly [Kind in FactKind]: readonly [ReadBody, ...ReadBody[]] } = {
  'booked in': [now(shapes['booked in'])],
  'instrument brought': [now(shapes['instrument brought'])],
  'reading taken': [now(shapes['reading taken'])],
  'reading struck out': [now(shapes['reading struck out'])],
  'doubt answered': [now(shapes['doubt answered'])],
  'size found': [now(shapes['size found'])],
  'finding noted': [now(shapes['finding noted'])],
  'shims counted': [now(shapes['shims counted'])],
  'plan chosen': [now(shapes['plan chosen'])],
  'owner agreed': [now(shapes['owner agreed'])],
  'pack fitted': [now(shapes['pack fitted'])],
  'operation done': [now(shapes['operation done'])],
  'run step logged': [now(shapes['run step logged'])],
  'handed over': [now(shapes['handed over'])],
};

export const factKinds = Object.keys(readers) as readonly FactKind[];

/** The version in which a kind of fact is written now. */
export const versionNow = (kind: FactKind): number => readers[kind].length;

/** Reads the body of a fact (all but its kind) as it was written in a version, into what it means now. */
export const readFact = (kind: string, version: number, body: object, where: string): Answer<Fact> => {
  const known = factKinds.find((name) => name === kind);
  if (known === undefined)
    return refuse(
      `a kind of event that this program does not know: “${kind}”`,
      where,
      'use a newer Endfloat',
    );
  const read = readers[known][version - 1];
  if (read === undefined)
    return refuse(
      `version ${version} of “${kind}”, and this program knows versions up to ${versionNow(known)}`,
      where,
      'use a newer Endfloat',
    );
  const found = read(body);
  return found.success
    ? answer({ kind: known, ...found.data } as Fact)
    : refuse(firstIssue(found.error), where, 'send it again as the event’s shape has it');
};

/** The first thing that does not fit a shape, with the way to it. */
export const firstIssue = (error: z.ZodError): string => {
  const [issue] = error.issues;
  if (issue === undefined) return 'it does not fit';
  const path = issue.path.join('.');
  return path === '' ? issue.message : `${path}: ${issue.message}`;
};
