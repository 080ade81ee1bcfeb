/** @module The journal: durable appends against bare inserts, a replay of thousands, one more reading among thousands. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import type { JobEvent } from '../src/job/event.ts';
import { evolve, replay } from '../src/job/evolve.ts';
import { readEvents } from '../src/job/upcast.ts';
import { checkChain } from '../src/journal/chain.ts';
import { openSqliteStore } from '../src/store/sqlite-store.ts';
import { journalOf, last, nextReading } from '../test/store/journal-fixture.ts';
import { type BenchRow, inTurns } from './bench.ts';

export const name = 'journal';

const job = 'job-a';
const batch = 100;
const rounds = 11;
const long = 5000;

/** The least that a durable journal can do: one row a transaction, written through to the disk. */
const bareInserts = (path: string) => {
  const database = new DatabaseSync(path);
  database.exec('pragma journal_mode = wal; pragma synchronous = full');
  database.exec(
    'create table journal (job_id text, version integer, body text, primary key (job_id, version))',
  );
  const insert = database.prepare('insert into journal values (?, ?, ?)');
  let version = 0;
  return {
    add: (body: string) => {
      version += 1;
      insert.run(job, version, body);
    },
    close: () => database.close(),
  };
};

const appends = async (folder: string): Promise<BenchRow> => {
  const store = await openSqliteStore(join(folder, 'ours.sqlite'));
  const bare = bareInserts(join(folder, 'bare.sqlite'));
  // Sealing is no work of the store: all events are made before any is timed, more than the rounds will take.
  const [booking, ...readings] = journalOf(job, 1 + (rounds + 1) * batch);
  if (booking === undefined) throw new Error('a journal begins with a booking in');
  await store.append(job, 0, [booking]);
  let taken = 0;
  const body = JSON.stringify(readings[0]);
  const { ours, other } = await inTurns(
    async () => {
      for (const event of readings.slice(taken, taken + batch))
        await store.append(job, event.sequence - 1, [event]);
      taken += batch;
    },
    () => {
      for (let count = 0; count < batch; count += 1) bare.add(body);
    },
    rounds,
  );
  bare.close();
  await store.close();
  return {
    what: `${batch} durable appends, one event each`,
    against: 'bare single-row inserts, WAL, synchronous FULL',
    unit: 'ms',
    ours,
    other,
    note: `${Math.round((batch * 1000) / ours)} appends a second; ours checks, links and lists them too`,
  };
};

const replays = async (events: readonly JobEvent[]): Promise<BenchRow> => {
  const { ours, other } = await inTurns(
    () => replay(events),
    () => JSON.parse(JSON.stringify(events)) as unknown,
  );
  return {
    what: `replay of ${long} events`,
    against: 'JSON written and parsed again',
    unit: 'ms',
    ours,
    other,
  };
};

const reading = async (events: readonly JobEvent[]): Promise<BenchRow> => {
  const json: unknown = JSON.parse(JSON.stringify(events));
  const { ours, other } = await inTurns(
    () => readEvents(json),
    () => checkChain(events),
    5,
  );
  return {
    what: `${long} events read and held to their shapes`,
    against: 'their chain of hashes checked',
    unit: 'ms',
    ours,
    other,
  };
};

const oneMore = async (events: readonly JobEvent[]): Promise<BenchRow> => {
  const state = replay(events);
  const next = nextReading(job, last(events));
  const times = 20;
  const { ours, other } = await inTurns(
    () => {
      for (let time = 0; time < times; time += 1) evolve(state, next);
    },
    () => {
      for (let time = 0; time < times; time += 1) replay(events);
    },
    3,
  );
  return {
    what: `one more reading after ${long}`,
    against: 'the whole journal replayed',
    unit: 'ms',
    ours: ours / times,
    other: other / times,
    note: 'a frame is 16 ms',
  };
};

export const run = async (): Promise<readonly BenchRow[]> => {
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-bench-'));
  try {
    const events = journalOf(job, long);
    return [await appends(folder), await replays(events), await reading(events), await oneMore(events)];
  } finally {
    rmSync(folder, { recursive: true });
  }
};
