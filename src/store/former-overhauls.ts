/** @module Former overhauls of an engine, as the jobs in the store tell them. */
import { replay } from '../job/evolve.ts';
import type { JobLine } from '../job/job-line.ts';
import { leftBy, sameEngine } from '../job/left-by.ts';
import type { FormerOverhaul } from '../measure/former-overhaul.ts';
import type { JournalStore } from './journal-store.ts';

/** @param but  a job that is not looked at: the one that they are for */
export const formerOverhauls = async (
  store: JournalStore,
  engine: Pick<JobLine, 'engine' | 'plate'>,
  but = '',
): Promise<readonly FormerOverhaul[]> => {
  const found: FormerOverhaul[] = [];
  for (const { job: id } of sameEngine(await store.list(), engine)) {
    const job = id === but ? undefined : replay(await store.readFrom(id, 0));
    const left = job?.kind === 'open' ? leftBy(job) : undefined;
    if (left) found.push(left);
  }
  return found;
};
