/** @module Reads a stored event of any version ever written into what it means now; strange ones are refused clearly. */
import { z } from 'zod';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { AnyFact, JournalEvent } from './event.ts';
import type { FactReader } from './fact-reader.ts';
import { firstIssue, signature } from './shape.ts';

const hash = z.string().regex(/^[0-9a-f]{64}$/, 'a hash is 64 small hexadecimal digits');

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
export const readEventOf = <Fact extends AnyFact>(
  facts: FactReader<Fact>,
  json: unknown,
): Answer<JournalEvent<Fact>> => {
  const read = envelope.safeParse(json);
  if (!read.success)
    return refuse(
      `this is not an event (${firstIssue(read.error)})`,
      'event',
      'take the journal again from where it was made',
    );
  const { kind, ...body } = read.data.fact;
  const fact = facts.read(kind, read.data.version, body, `event ${read.data.sequence}`);
  return fact.kind === 'refused' ? fact : answer({ ...read.data, fact: fact.value });
};

/** Reads a journal; the first event that cannot be read is named. */
export const readEventsOf = <Fact extends AnyFact>(
  facts: FactReader<Fact>,
  json: unknown,
): Answer<readonly JournalEvent<Fact>[]> => {
  if (!Array.isArray(json)) return refuse('this is not a journal', 'journal', 'send a list of events');
  const events: JournalEvent<Fact>[] = [];
  for (const item of json) {
    const event = readEventOf(facts, item);
    if (event.kind === 'refused') return event;
    events.push(event.value);
  }
  return answer(events);
};
