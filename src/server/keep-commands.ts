/** @module Takes commands for the store: each is decided on the job as the journal has it, and becomes one event there. */
import type { Command } from '../job/command.ts';
import { decide } from '../job/decide.ts';
import type { JobEvent } from '../job/event.ts';
import { evolve } from '../job/evolve.ts';
import type { Job } from '../job/job.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { heldJobs } from '../store/held-jobs.ts';
import type { JournalStore } from '../store/journal-store.ts';

/** Each try that fails means that somebody else's command was taken: more rivals than that have no bench. */
const mostTries = 100;

export interface KeptCommands {
  /** Appends what the command comes to, and gives every event after a sequence; a command sent twice counts once. */
  readonly take: (command: Command, after: number) => Promise<Answer<readonly JobEvent[]>>;
  readonly jobNow: (job: string) => Promise<Job>;
}

export const keepCommands = (store: JournalStore): KeptCommands => {
  const held = heldJobs();

  const jobNow = async (id: string): Promise<Job> => {
    const job = await held.at(id, (after) => store.readFrom(id, after));
    // A job that is not there is not held: asking for names makes nobody wait.
    if (job.kind !== 'blank') held.keep(id, job);
    return job;
  };

  const append = async (command: Command): Promise<Answer<void>> => {
    for (let tries = 0; tries < mostTries; tries += 1) {
      if (await store.has(command.job, command.id)) return answer(undefined);
      const job = await jobNow(command.job);
      const event = decide(job, command);
      if (event.kind === 'refused') return event;
      const appended = await store.append(command.job, job.head.sequence, [event.value]);
      if (appended.kind === 'stale') continue;
      if (appended.sequence === event.value.sequence) held.keep(command.job, evolve(job, event.value));
      return answer(undefined);
    }
    return refuse('too many write in this job at once', command.job, 'try again in a moment');
  };

  return {
    jobNow,
    take: async (command, after) => {
      const taken = await append(command);
      return taken.kind === 'refused' ? taken : answer(await store.readFrom(command.job, after));
    },
  };
};
