/** @module What running or tightening makes another: it is read anew at the operation that asks for it again. */
import type { Operation } from '../engine/engine-type.ts';
import { measuredFor } from '../engine/measured-for.ts';
import type { OpenJob } from './job.ts';
import { setAside } from './set-aside.ts';

/** What was read for an operation that reads again is put beside the sheet. */
const anew = (job: OpenJob, { needs }: Operation): OpenJob => {
  const names = measuredFor(job.sheet.engine, needs);
  const cells = [...job.sheet.readings.values()].flatMap(([first]) =>
    first !== undefined && names.has(first.cell.characteristic) ? [first.cell] : [],
  );
  return cells.length === 0 ? job : setAside(job, cells);
};

/** The job once a joint of an operation is tightened: valves are closer after their head was pulled down. */
export const readAnewAt = (job: OpenJob, operation: string): OpenJob => {
  const known = job.sheet.engine.operations.get(operation);
  return known?.readAgain ? anew(job, known) : job;
};

/** The job once an operation is signed: what is read again after it was read for the last time before it. */
export const readAnewAfter = (job: OpenJob, operation: string): OpenJob =>
  [...job.sheet.engine.operations.values()]
    .filter(({ readAgain, after }) => readAgain && after.includes(operation))
    .reduce(anew, job);
