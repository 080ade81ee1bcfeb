/** @module The shape of what the workshop says of itself, as it is written now. */
import { z } from 'zod';
import { plain, typed, words } from '../journal/shape.ts';
import { mostCents } from '../quantity/money.ts';

export const cents = z.int().min(0).max(mostCents);

export const taxShape = z.strictObject({ name: words, rate: typed });

export const workshopShape = z.strictObject({
  name: words,
  address: z.array(words).max(10),
  currency: words,
  taxes: z.array(taxShape).max(10),
  labourRate: cents.exactOptional(),
  labour: z.array(z.strictObject({ says: words, cents })).max(50),
  validDays: z.int(),
  terms: plain(8000),
});
