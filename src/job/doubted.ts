/** @module The doubts of a job: those on what is in question; a reading that was taken beside it holds nothing up. */
import { doubtsOf } from '../measure/doubts.ts';
import type { Doubt } from '../measure/verdict-model.ts';
import type { OpenJob } from './job.ts';
import { scopeOf } from './scope.ts';

type Doubted = Pick<OpenJob, 'sheet' | 'scopes' | 'done'>;

/** Whether a doubt is on a reading that this job asks for. */
export const asksOf = (job: Doubted): ((doubt: Doubt) => boolean) => {
  const { whole, inQuestion } = scopeOf(job);
  if (whole) return () => true;
  const beside = new Set(
    [...job.sheet.readings.values()]
      .flat()
      .filter(({ cell }) => !inQuestion(cell.characteristic, cell.place))
      .map(({ id }) => id),
  );
  return ({ readings }) => readings.length === 0 || readings.some((id) => !beside.has(id));
};

/** The doubts on what is in question, answered or not. */
export const doubtsIn = (job: Doubted): readonly Doubt[] => {
  const doubts = doubtsOf(job.sheet);
  return doubts.length === 0 ? doubts : doubts.filter(asksOf(job));
};
