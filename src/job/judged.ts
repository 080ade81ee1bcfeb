/** @module The verdicts of a job: of all that is in question, and of what was read all the same. */
import { judgeAll } from '../measure/judge.ts';
import type { Sheet } from '../measure/sheet.ts';
import type { Judged } from '../measure/verdict-model.ts';
import type { Extent } from '../work/extent.ts';
import type { OpenJob } from './job.ts';
import { scopeOf } from './scope.ts';

/** Whether something is asked of a characteristic at a place, or was read of it all the same. */
export const counts =
  ({ whole, inQuestion }: Pick<Extent, 'whole' | 'inQuestion'>) =>
  ({ characteristic, place, value, cells }: Judged): boolean =>
    whole ||
    value !== undefined ||
    cells.some(({ reading }) => reading !== undefined) ||
    inQuestion(characteristic, place);

/** @param sheet  another than the job's own as it stands: as it was found */
export const judgedIn = (job: OpenJob, sheet: Sheet = job.sheet): readonly Judged[] => {
  const extent = scopeOf(job);
  const all = judgeAll(sheet);
  return extent.whole ? all : all.filter(counts(extent));
};
