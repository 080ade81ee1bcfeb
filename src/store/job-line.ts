/** @module The line of a job in the jobs list: a pure function of the job. */
import type { Job } from '../job/job.ts';
import { phaseOf } from '../job/phase.ts';
import type { JobLine } from './journal-store.ts';

export const lineOf = (job: Job): JobLine => {
  const booked = job.kind === 'blank' ? undefined : job.booked;
  const { event, sequence } = job.head;
  return {
    job: event?.job ?? '',
    number: booked?.number ?? '',
    engine: job.kind === 'open' ? job.sheet.engine.title : 'cannot be read',
    owner: booked?.owner ?? '',
    plate: booked?.plate ?? '',
    phase: phaseOf(job).name,
    readings: job.kind === 'open' ? job.takenBy.size - job.struckOut.length : 0,
    sequence,
    changed: event?.at ?? '',
  };
};
