/** @module The journal on any SQL database: one set of queries, none of them a dialect's own. */
import type { Kysely, Transaction } from 'kysely';
import type { JobEvent } from '../job/event.ts';
import { evolveAll, replay } from '../job/evolve.ts';
import type { Job } from '../job/job.ts';
import { readEvent } from '../job/upcast.ts';
import { heldJobs } from './held-jobs.ts';
import { lineOf } from './job-line.ts';
import type { JobLine, JournalStore } from './journal-store.ts';
import { Refused } from './refused.ts';
import type { Tables } from './tables.ts';

type Reader = Kysely<Tables> | Transaction<Tables>;

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

const readFrom = async (db: Reader, job: string, after: number): Promise<readonly JobEvent[]> => {
  const rows = await db
    .selectFrom('journal')
    .select(['version', 'body'])
    .where('job_id', '=', job)
    .where('version', '>', after)
    .orderBy('version')
    .execute();
  return rows.map(({ version, body }) => {
    const where = `event ${version} of ${job}`;
    const event = readEvent(parsed(body, where));
    if (event.kind === 'refused') throw new Refused({ ...event.refusal, where });
    return event.value;
  });
};

const headOf = async (
  db: Reader,
  job: string,
): Promise<{ readonly version: number; readonly hash: string }> => {
  const row = await db
    .selectFrom('journal')
    .select(['version', 'hash'])
    .where('job_id', '=', job)
    .orderBy('version', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row ?? { version: 0, hash: '' };
};

/** Where events that were sent before stand; the last one's version once all are there, else nothing. */
const sentBefore = async (
  db: Reader,
  job: string,
  events: readonly JobEvent[],
): Promise<number | undefined> => {
  let last = 0;
  for (let from = 0; from < events.length; from += rowsAtOnce) {
    const ids = events.slice(from, from + rowsAtOnce).map(({ id }) => id);
    const rows = await db
      .selectFrom('journal')
      .select('version')
      .where('job_id', '=', job)
      .where('event_id', 'in', ids)
      .execute();
    if (rows.length !== ids.length) return undefined;
    last = Math.max(last, ...rows.map(({ version }) => version));
  }
  return last;
};

const insert = async (tx: Transaction<Tables>, events: readonly JobEvent[]): Promise<void> => {
  for (let from = 0; from < events.length; from += rowsAtOnce) {
    const rows = events.slice(from, from + rowsAtOnce).map((event) => ({
      job_id: event.job,
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

const writeLine = async (db: Reader, state: Job): Promise<void> => {
  const { job, sequence, ...line } = lineOf(state);
  const row = { ...line, version: sequence };
  await db
    .insertInto('job_line')
    .values({ job_id: job, ...row })
    .onConflict((clash) => clash.column('job_id').doUpdateSet(row))
    .execute();
};

/** An append that does not carry on from its own expected sequence is a mistake in the program, not a rival. */
const demandRow = (job: string, expected: number, events: readonly JobEvent[]): void => {
  for (const [index, event] of events.entries())
    if (event.job !== job || event.sequence !== expected + index + 1)
      throw new Error(`event ${event.sequence} of ${event.job} cannot follow ${expected + index} of ${job}`);
};

export const journalOn = (db: Kysely<Tables>): JournalStore => {
  const held = heldJobs();

  const appendIn = async (
    tx: Transaction<Tables>,
    job: string,
    expected: number,
    events: readonly JobEvent[],
  ): Promise<Job> => {
    const head = await headOf(tx, job);
    const [first] = events;
    if (head.version !== expected || (expected > 0 && first?.before !== head.hash)) throw new Overtaken();
    const before = await held.at(job, (after) => readFrom(tx, job, after));
    await insert(tx, events);
    const state = evolveAll(before, events);
    await writeLine(tx, state);
    return state;
  };

  return {
    append: async (job, expected, events) => {
      demandRow(job, expected, events);
      const last = events.at(-1);
      if (last === undefined) return { kind: 'appended', sequence: expected };
      try {
        const state = await db.transaction().execute((tx) => appendIn(tx, job, expected, events));
        held.keep(job, state);
        return { kind: 'appended', sequence: last.sequence };
      } catch (error) {
        if (!(error instanceof Overtaken)) throw error;
        const sequence = await sentBefore(db, job, events);
        if (sequence !== undefined) return { kind: 'appended', sequence };
        return { kind: 'stale', sequence: (await headOf(db, job)).version };
      }
    },
    readFrom: (job, after) => readFrom(db, job, after),
    has: async (job, id) => {
      const row = await db
        .selectFrom('journal')
        .select('version')
        .where('job_id', '=', job)
        .where('event_id', '=', id)
        .executeTakeFirst();
      return row !== undefined;
    },
    list: async () => {
      const rows = await db
        .selectFrom('job_line')
        .selectAll()
        .orderBy('changed', 'desc')
        .orderBy('job_id')
        .execute();
      return rows.map(
        ({ job_id, version, ...line }): JobLine => ({ job: job_id, sequence: version, ...line }),
      );
    },
    close: () => db.destroy(),
  };
};

/** Writes anew the lines of the jobs list that do not agree with the journal. */
export const mendLines = async (db: Kysely<Tables>): Promise<void> => {
  const stray = await db
    .selectFrom('journal')
    .leftJoin('job_line', 'job_line.job_id', 'journal.job_id')
    .select([
      'journal.job_id as job',
      (eb) => eb.fn.max('journal.version').as('head'),
      'job_line.version as line',
    ])
    .groupBy(['journal.job_id', 'job_line.version'])
    .execute();
  for (const { job, head, line } of stray)
    if (head !== line) await writeLine(db, replay(await readFrom(db, job, 0)));
};
