/** @module The workshop's store as the terminal opens it, a job found in it by number or id, and requests carried out. */
import { stat } from 'node:fs/promises';
import { hostname } from 'node:os';
import { resolve } from 'node:path';
import type { Request } from '../job/command.ts';
import { decide } from '../job/decide.ts';
import type { JobEvent } from '../job/event.ts';
import { blankJob, evolve, replay } from '../job/evolve.ts';
import type { Job, OpenJob } from '../job/job.ts';
import { type Answer, answer, type Refusal, refuse } from '../quantity/refusal.ts';
import { pictureTrouble } from '../store/pictures.ts';
import { Refused } from '../store/refused.ts';
import type { Store } from '../store/sql-store.ts';
import { openSqliteStore } from '../store/sqlite-store.ts';
import { type Given, lastValue, type OptionSpec } from './command.ts';
import { didYouMean } from './nearest.ts';
import { plain } from './plain.ts';

export const storeOptions: readonly OptionSpec[] = [
  { name: 'store', value: 'PATH', says: 'the workshop, else ENDFLOAT_STORE, else .endfloat/workshop.sqlite' },
];

export const signingOptions: readonly OptionSpec[] = [
  ...storeOptions,
  { name: 'by', value: 'NAME', says: 'who signs, else ENDFLOAT_BY, else the user of this machine' },
  {
    name: 'bench',
    value: 'NAME',
    says: 'at which bench, else ENDFLOAT_BENCH, else the name of this machine',
  },
];

/** Who signs, and at which bench. */
export const signerOf = (given: Given): { readonly actor: string; readonly bench: string } => ({
  actor: lastValue(given, 'by') ?? given.world.env.ENDFLOAT_BY ?? given.world.user(),
  bench: lastValue(given, 'bench') ?? given.world.env.ENDFLOAT_BENCH ?? hostname(),
});

export const storePath = (given: Given): string =>
  resolve(
    given.world.folder,
    lastValue(given, 'store') ?? given.world.env.ENDFLOAT_STORE ?? '.endfloat/workshop.sqlite',
  );

const opened = async (path: string, mayMake: boolean): Promise<Answer<Store>> => {
  const where = plain(path);
  const found = await stat(path).catch(() => undefined);
  if (found?.isDirectory())
    return refuse('the store is a folder', where, 'name the file of the workshop with --store');
  if (found === undefined && !mayMake)
    return refuse(
      'there is no workshop here',
      where,
      'book an engine in, run endfloat demo, or name one with --store',
    );
  try {
    return answer(await openSqliteStore(path));
  } catch (error) {
    if (error instanceof Refused) return { kind: 'refused', refusal: error.refusal };
    throw error;
  }
};

/** Opens the workshop for one piece of work and closes it again, whatever comes. */
export const inWorkshop = async <T>(
  given: Given,
  mayMake: boolean,
  work: (store: Store) => Promise<Answer<T>>,
): Promise<Answer<T>> => {
  const store = await opened(storePath(given), mayMake);
  if (store.kind === 'refused') return store;
  try {
    return await work(store.value);
  } catch (error) {
    if (error instanceof Refused) return { kind: 'refused', refusal: error.refusal };
    throw error;
  } finally {
    await store.value.close();
  }
};

export interface FoundJob {
  readonly id: string;
  readonly events: readonly JobEvent[];
  readonly job: OpenJob;
}

/** A job by its number (`J-3`, small or large letters) or its id. */
export const findJob = async (store: Store, name: string): Promise<Answer<FoundJob>> => {
  const lines = await store.list();
  const called = lines.filter(({ number }) => number.toLowerCase() === name.toLowerCase());
  const line = lines.find(({ job }) => job === name) ?? called[0];
  // A job taken in from another workshop may bring a number that is in use here.
  if (line?.job !== name && called.length > 1)
    return refuse(
      `${called.length} jobs are called ${plain(name)}`,
      'workshop',
      `name the one you mean by its id: ${called.map((one) => `${one.job} (${plain(one.owner)})`).join(', ')}`,
    );
  if (!line) {
    const numbers = lines.map(({ number }) => number);
    return refuse(
      `there is no job ${plain(name)}`,
      'workshop',
      didYouMean(
        name,
        numbers,
        numbers.length === 0 ? 'book an engine in first' : 'endfloat jobs lists them',
      ),
    );
  }
  const events = await store.readFrom(line.job, 0);
  const job = replay(events);
  switch (job.kind) {
    case 'open':
      return answer({ id: line.job, events, job });
    case 'unreadable':
      return { kind: 'refused', refusal: job.why };
    case 'blank':
      return refuse(`job ${plain(name)} is empty`, 'workshop', 'look at endfloat jobs');
    default:
      return job satisfies never;
  }
};

/** The workshop that there is, and in it the job that the first word names. */
export const inJob = <T>(
  given: Given,
  work: (found: FoundJob, store: Store) => Promise<Answer<T>>,
): Promise<Answer<T>> =>
  inWorkshop(given, false, async (store) => {
    const found = await findJob(store, given.words[0] ?? '');
    return found.kind === 'refused' ? found : work(found.value, store);
  });

export interface Carried {
  readonly events: readonly JobEvent[];
  readonly job: Job;
}

export type Carrying =
  | ({ readonly kind: 'carried' } & Carried)
  /** The job refused one of them; nothing was written. */
  | { readonly kind: 'no'; readonly refusal: Refusal; readonly at: number };

/** Decides requests one after another on a job and appends what they come to, all or none. */
export const carryOut = async (
  store: Store,
  given: Given,
  id: string,
  job: Job | undefined,
  requests: readonly Request[],
): Promise<Answer<Carrying>> => {
  const { world } = given;
  const signer = signerOf(given);
  const before = job ?? blankJob;
  let now = before;
  const events: JobEvent[] = [];
  for (const [at, request] of requests.entries()) {
    const lacking = await pictureTrouble(store, request);
    if (lacking !== undefined) return answer({ kind: 'no', refusal: lacking, at });
    const event = decide(now, { id: world.newId(), job: id, at: world.now(), ...signer, request });
    if (event.kind === 'refused') return answer({ kind: 'no', refusal: event.refusal, at });
    events.push(event.value);
    now = evolve(now, event.value);
  }
  const appended = await store.append(id, before.head.sequence, events);
  if (appended.kind === 'stale')
    return refuse(
      'somebody wrote in this job at the same moment',
      plain(id),
      'nothing was written: look at the job and ask again',
    );
  return answer({ kind: 'carried', events, job: now });
};
