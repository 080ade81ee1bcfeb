/** @module The line of a job in the jobs list: a pure function of the job. */
import { boardOf } from './board.ts';
import type { Board } from './board-line.ts';
import type { Job } from './job.ts';
import { phaseOf } from './phase.ts';

/** A line of the jobs list, kept beside the journal and rebuilt from it at will. */
export interface JobLine {
  readonly job: string;
  readonly number: string;
  readonly engine: string;
  readonly owner: string;
  readonly plate: string;
  /** The part of the job it stands in: `Measure`, `Decide` … */
  readonly phase: string;
  readonly readings: number;
  /** What it does next, what it waits for, hours. */
  readonly board: Board;
  readonly sequence: number;
  readonly changed: string;
}

const noBoard: Board = { scope: '', waitsFor: [], spent: 0, left: 0, untold: 0, running: [] };

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
    board: job.kind === 'open' ? boardOf(job) : noBoard,
    sequence,
    changed: event?.at ?? '',
  };
};
