/** @module Reads a stored event of any version ever written into what it means now; strange ones are refused clearly. */
import { z } from 'zod';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { JobEvent } from './event.ts';
import { firstIssue, readFact } from './fact-shape.ts';

const id = z.string().regex(/^[A-Za-z0-9][A-Za-z0-9-]{0,63}$/, 'an id is letters, digits and hyphens');
const hash = z.string().regex(/^[0-9a-f]{64}$/, 'a hash is 64 small hexadecimal digits');
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

const envelope = z.strictObject({
  ...signature,
  sequence: z.int().min(1),
  version: z.int().min(1),
  fact: z.looseObject({ kind: z.string() }),
  before: hash,
  hash,
});

/**
 * Reads one event from JSON. Its hash stays that of the text as it was written: check the chain on the stored text.
 *
 * @returns the event; refuses what is no event, a kind or a version that is not known
 */
export const readEvent = (json: unknown): Answer<JobEvent> => {
  const read = envelope.safeParse(json);
  if (!read.success)
    return refuse(
      `this is not an event (${firstIssue(read.error)})`,
      'event',
      'take the journal again from where it was made',
    );
  const { kind, ...body } = read.data.fact;
  const fact = readFact(kind, read.data.version, body, `event ${read.data.sequence}`);
  return fact.kind === 'refused' ? fact : answer({ ...read.data, fact: fact.value });
};

/** Reads a journal; the first event that cannot be read is named. */
export const readEvents = (json: unknown): Answer<readonly JobEvent[]> => {
  if (!Array.isArray(json)) return refuse('this is not a journal', 'journal', 'send a list of events');
  const events: JobEvent[] = [];
  for (const item of json) {
    const event = readEvent(item);
    if (event.kind === 'refused') return event;
    events.push(event.value);
  }
  return answer(events);
};
