/** @module Journals of one kind on any SQL database: one set of queries, none of them a dialect's own. */
import type { Kysely, Transaction } from 'kysely';
import type { JournalEvent } from '../journal/event.ts';
import type { Answer } from '../quantity/refusal.ts';
import type { Journals } from './journal-store.ts';
import { Refused } from './refused.ts';
import type { Tables } from './tables.ts';

type Reader = Kysely<Tables> | Transaction<Tables>;

/** What is done in the same transaction as an append; what it gives is called once that is on the disk. */
type Beside<Event> = (tx: Transaction<Tables>, id: string, events: readonly Event[]) => Promise<() => void>;

export interface JournalKind<Event> {
  /** Before the id of a journal, it is the key under which its events lie; no id has a stroke in it. */
  readonly prefix: '' | `${string}/`;
  readonly read: (json: unknown) => Answer<Event>;
  readonly beside?: Beside<Event>;
}

/** Somebody was first: rolls the transaction back. */
class Overtaken extends Error {}

/** SQLite takes 32,766 values in one statement, PostgreSQL 65,535; an event has seven. */
const rowsAtOnce = 1000;

const remedy = 'put the store aside and take the last good copy';

const parsed = (body: string, where: string): unknown => {
  try {
    return JSON.parse(body);
  } catch (error) {
    throw new Refused({ what: 'an event in the store is damaged', where, remedy }, error);
  }
};

/** The events of a journal after a sequence. */
export const eventsAfter = async <Event>(
  db: Reader,
  { prefix, read }: JournalKind<Event>,
  id: string,
  after: number,
): Promise<readonly Event[]> => {
  const rows = await db
    .selectFrom('journal')
    .select(['version', 'body'])
    .where('job_id', '=', prefix + id)
    .where('version', '>', after)
    .orderBy('version')
    .execute();
  return rows.map(({ version, body }) => {
    const where = `event ${version} of ${id}`;
    const event = read(parsed(body, where));
    if (event.kind === 'refused') throw new Refused({ ...event.refusal, where });
    return event.value;
  });
};

const headOf = async (
  db: Reader,
  key: string,
): Promise<{ readonly version: number; readonly hash: string }> => {
  const row = await db
    .selectFrom('journal')
    .select(['version', 'hash'])
    .where('job_id', '=', key)
    .orderBy('version', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row ?? { version: 0, hash: '' };
};

/** Where events that were sent before stand; the last one's version once all are there, else nothing. */
const sentBefore = async (
  db: Reader,
  key: string,
  events: readonly JournalEvent[],
): Promise<number | undefined> => {
  let last = 0;
  for (let from = 0; from < events.length; from += rowsAtOnce) {
    const ids = events.slice(from, from + rowsAtOnce).map(({ id }) => id);
    const rows = await db
      .selectFrom('journal')
      .select('version')
      .where('job_id', '=', key)
      .where('event_id', 'in', ids)
      .execute();
    if (rows.length !== ids.length) return undefined;
    last = Math.max(last, ...rows.map(({ version }) => version));
  }
  return last;
};

const insert = async (
  tx: Transaction<Tables>,
  key: string,
  events: readonly JournalEvent[],
): Promise<void> => {
  for (let from = 0; from < events.length; from += rowsAtOnce) {
    const rows = events.slice(from, from + rowsAtOnce).map((event) => ({
      job_id: key,
      version: event.sequence,
      event_id: event.id,
      kind: event.fact.kind,
      at: event.at,
      hash: event.hash,
      body: JSON.stringify(event),
    }));
    const written = await tx
      .insertInto('journal')
      .values(rows)
      .onConflict((clash) => clash.doNothing())
      .returning('version')
      .execute();
    if (written.length !== rows.length) throw new Overtaken();
  }
};

/** An append that does not carry on from its own expected sequence is a mistake in the program, not a rival. */
const demandRow = (id: string, expected: number, events: readonly JournalEvent[]): void => {
  for (const [index, event] of events.entries())
    if (event.job !== id || event.sequence !== expected + index + 1)
      throw new Error(`event ${event.sequence} of ${event.job} cannot follow ${expected + index} of ${id}`);
};

export const journalsOn = <Event extends JournalEvent>(
  db: Kysely<Tables>,
  kind: JournalKind<Event>,
): Journals<Event> => {
  const keyOf = (id: string): string => kind.prefix + id;

  const appendIn = async (
    tx: Transaction<Tables>,
    id: string,
    expected: number,
    events: readonly Event[],
  ): Promise<(() => void) | undefined> => {
    const head = await headOf(tx, keyOf(id));
    const [first] = events;
    if (head.version !== expected || (expected > 0 && first?.before !== head.hash)) throw new Overtaken();
    const kept = await kind.beside?.(tx, id, events);
    await insert(tx, keyOf(id), events);
    return kept;
  };

  return {
    append: async (id, expected, events) => {
      demandRow(id, expected, events);
      const last = events.at(-1);
      if (last === undefined) return { kind: 'appended', sequence: expected };
      try {
        const kept = await db.transaction().execute((tx) => appendIn(tx, id, expected, events));
        kept?.();
        return { kind: 'appended', sequence: last.sequence };
      } catch (error) {
        if (!(error instanceof Overtaken)) throw error;
        const sequence = await sentBefore(db, keyOf(id), events);
        if (sequence !== undefined) return { kind: 'appended', sequence };
        return { kind: 'stale', sequence: (await headOf(db, keyOf(id))).version };
      }
    },
    readFrom: (id, after) => eventsAfter(db, kind, id, after),
    has: async (id, event) => {
      const row = await db
        .selectFrom('journal')
        .select('version')
        .where('job_id', '=', keyOf(id))
        .where('event_id', '=', event)
        .executeTakeFirst();
      return row !== undefined;
    },
  };
};
