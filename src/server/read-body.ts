/** @module The JSON that was sent, held to a shape. */
import type { Context } from 'hono';
import type { z } from 'zod';
import { firstIssue } from '../journal/shape.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';

export const readBody = async <Shape extends z.ZodType>(
  context: Context,
  shape: Shape,
): Promise<Answer<z.infer<Shape>>> => {
  const where = context.req.path;
  let json: unknown;
  try {
    json = JSON.parse(await context.req.text());
  } catch {
    return refuse('what was sent is not JSON', where, 'send it whole');
  }
  const read = shape.safeParse(json);
  return read.success ? answer(read.data) : refuse(firstIssue(read.error), where, 'send what is asked for');
};
