/** @module The verdicts of a job: of all that is in question, and of what was read all the same. */
import { judgeAll } from '../measure/judge.ts';
import type { Sheet } from '../measure/sheet.ts';
import type { Judged } from '../measure/verdict-model.ts';
import type { OpenJob } from './job.ts';
import { scopeOf } from './scope.ts';

/** @param sheet  another than the job's own as it stands: as it was found */
export const judgedIn = (job: OpenJob, sheet: Sheet = job.sheet): readonly Judged[] => {
  const { whole, inQuestion } = scopeOf(job);
  const all = judgeAll(sheet);
  return whole
    ? all
    : all.filter(
        ({ characteristic, place, value }) => value !== undefined || inQuestion(characteristic, place),
      );
};
