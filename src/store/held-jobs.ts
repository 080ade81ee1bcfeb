/** @module Jobs held ready as they last stood, so that one more event need not replay thousands. May be thrown away. */

import type { JobEvent } from '../job/event.ts';
import { blankJob, evolveAll } from '../job/evolve.ts';
import type { Job } from '../job/job.ts';

/** Jobs that are worked on at the same time in one shop, with room to spare. */
const most = 64;

export interface HeldJobs {
  /** The job as its journal has it, reading only the events that came since it was last asked for. */
  readonly at: (job: string, readFrom: (after: number) => Promise<readonly JobEvent[]>) => Promise<Job>;
  readonly keep: (job: string, state: Job) => void;
}

export const heldJobs = (): HeldJobs => {
  const held = new Map<string, Job>();
  const keep = (job: string, state: Job): void => {
    held.delete(job);
    held.set(job, state);
    const [oldest] = held.keys();
    if (held.size > most && oldest !== undefined) held.delete(oldest);
  };
  return {
    keep,
    at: async (job, readFrom) => {
      const before = held.get(job) ?? blankJob;
      const since = await readFrom(before.head.sequence);
      return evolveAll(before, since);
    },
  };
};
