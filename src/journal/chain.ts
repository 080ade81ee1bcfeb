/** @module The chain of hashes that binds the events of a journal: one changed digit anywhere shows. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { AnyFact, JournalEvent } from './event.ts';

/** What stands in `before` of a journal's first event. */
export const noHash = '0'.repeat(64);

/**
 * Canonical JSON, the one text that a value has (RFC 8785); members that are undefined are left out.
 *
 * @param value  anything that JSON can hold
 * @returns the text; refuses what JSON cannot carry from one machine to another: NaN, infinities, half characters
 * @source  RFC 8785
 * @example canonicalText({ b: 1, a: '½' }) // {"a":"½","b":1}
 */
export const canonicalText = (value: unknown): Answer<string> => {
  try {
    const text = canonicalize(value);
    return text === undefined ? refuse('there is nothing to keep', 'event', 'send an event') : answer(text);
  } catch (trouble) {
    const why = trouble instanceof Error ? trouble.message : String(trouble);
    return refuse(
      `it holds something that cannot be kept (${why})`,
      'event',
      'type the text or figure again',
    );
  }
};

/**
 * SHA-256 of a text's UTF-8 bytes, as 64 small hexadecimal digits.
 *
 * @source  FIPS 180-4
 * @example hashOf('abc') // ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad
 */
export const hashOf = (text: string): string => bytesToHex(sha256(utf8ToBytes(text)));

/** An event as it stands in a journal; whatever else it carries is hashed with it. */
export type Chained = Pick<JournalEvent, 'id' | 'job' | 'sequence' | 'before' | 'hash'>;

const hashOfEvent = (event: object): Answer<string> => {
  const { hash: _, ...rest } = event as { readonly hash?: string };
  const text = canonicalText(rest);
  return text.kind === 'refused' ? text : answer(hashOf(text.value));
};

/** Gives an event its hash; refuses one whose text cannot be kept. */
export const seal = <Fact extends AnyFact>(
  event: Omit<JournalEvent<Fact>, 'hash'>,
): Answer<JournalEvent<Fact>> => {
  const hash = hashOfEvent(event);
  return hash.kind === 'refused' ? hash : answer({ ...event, hash: hash.value });
};

const remedy =
  'do not trust this journal from there on; take it again from where it was made, or from a copy';

const misfit = (event: Chained, before: Chained | undefined): string | undefined => {
  if (before !== undefined && event.job !== before.job) return `it belongs to another journal, ${event.job}`;
  if (event.sequence !== (before?.sequence ?? 0) + 1)
    return `it is numbered ${event.sequence} where ${(before?.sequence ?? 0) + 1} should stand: one is missing or twice there`;
  if (event.before !== (before?.hash ?? noHash)) return 'it does not follow the event before it';
  const hash = hashOfEvent(event);
  if (hash.kind === 'refused') return hash.refusal.what;
  return hash.value === event.hash
    ? undefined
    : 'its words or figures have been changed since it was written';
};

/** Checks a whole journal, as stored, from its first event; says at which event what does not fit. */
export const checkChain = (events: readonly Chained[]): Answer<void> => {
  const ids = new Set<string>();
  let before: Chained | undefined;
  for (const [index, event] of events.entries()) {
    const wrong = misfit(event, before) ?? (ids.has(event.id) ? 'it is there twice' : undefined);
    if (wrong !== undefined) return refuse(`the chain breaks: ${wrong}`, `event ${index + 1}`, remedy);
    ids.add(event.id);
    before = event;
  }
  return answer(undefined);
};
