/** @module After which sequence somebody asks for the events of a journal. */
import type { Context } from 'hono';
import { z } from 'zod';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';

const sequence = z.coerce.number().int().min(0).default(0);

/** `?after=12`; 0, for all, where it is left out. */
export const afterAsked = (context: Context): Answer<number> => {
  const after = sequence.safeParse(context.req.query('after'));
  return after.success
    ? answer(after.data)
    : refuse('“after” is not a sequence', 'events', 'give a whole number from 0');
};
