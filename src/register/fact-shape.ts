/** @module The shape of every kind of fact of the register, in every version ever written. */
import { z } from 'zod';
import { factReader, now } from '../journal/fact-reader.ts';
import { note, typed, words } from '../journal/shape.ts';
import type { RegisterFact } from './event.ts';
import { day, describedShape } from './instrument-shape.ts';
import { slipChance } from './slip-chance-shape.ts';
import { workshopShape } from './workshop-shape.ts';

type Kind = RegisterFact['kind'];

const shapes = {
  'instrument entered': z.strictObject({ instrument: describedShape }),
  'instrument checked': z.strictObject({
    name: words,
    against: words,
    size: typed.exactOptional(),
    showed: typed,
    good: z.boolean(),
    note,
  }),
  'instrument calibrated': z.strictObject({
    name: words,
    certificate: words,
    on: day,
    due: day,
    foundGood: z.boolean(),
    correction: typed.exactOptional(),
    uncertainty: typed.exactOptional(),
    note,
  }),
  'instrument withdrawn': z.strictObject({ name: words, why: note }),
  'instrument put back': z.strictObject({ name: words, why: note }),
  'entry struck out': z.strictObject({ entry: words, why: note }),
  'workshop described': z.strictObject({ workshop: workshopShape }),
  'slip chance set': slipChance.extend({ why: note }),
  'slip chance left as usual': z.strictObject({ slip: words, why: note }),
} satisfies { readonly [K in Kind]: z.ZodType<Omit<Extract<RegisterFact, { kind: K }>, 'kind'>> };

/** A fact as the shapes have it; a test holds it to be the same as `RegisterFact`. */
export type ShapedRegisterFact = { [K in Kind]: { kind: K } & z.infer<(typeof shapes)[K]> }[Kind];

/** Readers of each kind of fact by version. Nothing is ever taken out. */
export const registerFacts = factReader<RegisterFact>({
  'instrument entered': [now(shapes['instrument entered'])],
  'instrument checked': [now(shapes['instrument checked'])],
  'instrument calibrated': [now(shapes['instrument calibrated'])],
  'instrument withdrawn': [now(shapes['instrument withdrawn'])],
  'instrument put back': [now(shapes['instrument put back'])],
  'entry struck out': [now(shapes['entry struck out'])],
  'workshop described': [now(shapes['workshop described'])],
  'slip chance set': [now(shapes['slip chance set'])],
  'slip chance left as usual': [now(shapes['slip chance left as usual'])],
});
