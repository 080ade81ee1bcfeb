/** @module The journals of a workshop on any SQL database: its jobs with their list, and its register of instruments. */
import type { Kysely, Transaction } from 'kysely';
import type { JobEvent } from '../job/event.ts';
import { evolveAll, replay } from '../job/evolve.ts';
import type { Job } from '../job/job.ts';
import { type JobLine, lineOf } from '../job/job-line.ts';
import { readEvent } from '../job/upcast.ts';
import { readRegisterEvent } from '../register/read.ts';
import { heldJobs } from './held-journals.ts';
import type { JournalStore } from './journal-store.ts';
import { eventsAfter, type JournalKind, journalsOn } from './sql-journals.ts';
import type { Tables } from './tables.ts';

const jobs: JournalKind<JobEvent> = { prefix: '', read: readEvent };
const registers = { prefix: 'register/', read: readRegisterEvent } as const;

const writeLine = async (db: Kysely<Tables> | Transaction<Tables>, state: Job): Promise<void> => {
  const { job, sequence, board, ...line } = lineOf(state);
  const row = { ...line, board: JSON.stringify(board), version: sequence };
  await db
    .insertInto('job_line')
    .values({ job_id: job, ...row })
    .onConflict((clash) => clash.column('job_id').doUpdateSet(row))
    .execute();
};

/** Jobs, each with its line in the jobs list. */
const jobsOn = (db: Kysely<Tables>) => {
  const held = heldJobs();
  return journalsOn<JobEvent>(db, {
    ...jobs,
    beside: async (tx, job, events) => {
      const before = await held.at(job, (after) => eventsAfter(tx, jobs, job, after));
      const state = evolveAll(before, events);
      await writeLine(tx, state);
      return () => held.keep(job, state);
    },
  });
};

export const journalOn = (db: Kysely<Tables>): JournalStore => ({
  ...jobsOn(db),
  register: journalsOn(db, registers),
  list: async () => {
    const rows = await db
      .selectFrom('job_line')
      .selectAll()
      .orderBy('changed', 'desc')
      .orderBy('job_id')
      .execute();
    return rows.map(
      ({ job_id, version, board, ...line }): JobLine => ({
        job: job_id,
        sequence: version,
        board: JSON.parse(board) as JobLine['board'],
        ...line,
      }),
    );
  },
  close: () => db.destroy(),
});

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
    .where('journal.job_id', 'not like', `${registers.prefix}%`)
    .groupBy(['journal.job_id', 'job_line.version'])
    .execute();
  for (const { job, head, line } of stray)
    if (head !== line) await writeLine(db, replay(await eventsAfter(db, jobs, job, 0)));
};
