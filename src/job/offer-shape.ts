/** @module The shape of a plan's lines and of an offer in a journal, as they are written now. */
import { z } from 'zod';
import { note, plain, typed, words } from '../journal/shape.ts';
import { day } from '../register/instrument-shape.ts';
import { cents, taxShape } from '../register/workshop-shape.ts';

export const choice = z.strictObject({
  slot: words,
  option: plain(600),
  says: note,
  cents,
});

const offeredPlan = z.strictObject({
  name: z.string().max(1),
  title: words,
  choices: z.array(choice.extend({ what: words, why: note })).max(1000),
  cents: z.int(),
  days: z.number(),
  hours: z.number(),
  labour: z
    .array(
      z.strictObject({
        says: words,
        cents,
        hours: typed.exactOptional(),
        rate: cents.exactOptional(),
      }),
    )
    .max(50),
  oneUse: z
    .array(z.strictObject({ says: words, count: z.int().min(1), cents }))
    .max(1000)
    .exactOptional(),
});

export const offerShape = z.strictObject({
  number: z.int().min(1),
  shop: z.strictObject({ name: words, address: z.array(words).max(10) }),
  plans: z.array(offeredPlan).max(3),
  taxes: z.array(taxShape).max(10),
  currency: words,
  validUntil: day,
  terms: plain(8000),
  token: z.string().regex(/^[A-Za-z0-9_-]{32,64}$/, 'a link ends in 32 letters and digits at least'),
});
