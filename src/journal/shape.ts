/** @module Shapes that the facts of every journal are made of, and what does not fit one in words. */
import { z } from 'zod';

/** No half characters, which canonical JSON cannot carry, and none that only a machine can see. */
export const plain = (most: number) =>
  z
    .string()
    .max(most)
    .refine(
      (text) => text.isWellFormed() && !/[\p{Cc}--[\t\n\r]]/v.test(text),
      'it holds characters that cannot be kept',
    );
export const words = plain(200);
export const note = plain(4000);
export const typed = z.strictObject({ text: plain(60), unit: plain(20) });

const id = z.string().regex(/^[A-Za-z0-9][A-Za-z0-9-]{0,63}$/, 'an id is letters, digits and hyphens');
const person = z
  .string()
  .max(200)
  .refine((text) => text.isWellFormed(), 'it holds half a character');

/** Who, when and where: what commands and events share. */
export const signature = {
  id,
  job: id,
  at: z
    .string()
    .regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,9})?Z$/, 'a time is written like 2026-03-02T08:00:00Z'),
  actor: person,
  bench: person,
};

/** The first thing that does not fit a shape, with the way to it. */
export const firstIssue = (error: z.ZodError): string => {
  const [issue] = error.issues;
  if (issue === undefined) return 'it does not fit';
  const path = issue.path.join('.');
  return path === '' ? issue.message : `${path}: ${issue.message}`;
};
