/** @module Joints that are tightened again: within the job after running, or with the owner after so many hours. */
import type { Fastener, TightenAgain } from '../../engine/fastener.ts';
import type { Hours } from '../../quantity/brand.ts';
import type { OpenJob } from '../job.ts';

interface Again {
  readonly fastener: Fastener;
  readonly again: TightenAgain;
}

export type TightenDue = Again &
  (
    | {
        readonly when: 'within the job';
        /** Names of operations. */
        readonly after: string;
        readonly by: string;
        /**
         * `waits` until what makes it due is done. Once done it stays so, however often the engine is run in: a gasket
         * settles in its first heat. Where the joint is opened again, so is all that rests on it, and it waits anew.
         */
        readonly standing: 'waits' | 'due' | 'done';
      }
    | { readonly when: 'after hand-over'; readonly hours: Hours }
  );

/** Whether an operation of this job has tightened a fastener, or was signed as having done so. */
const tightened = (job: OpenJob, name: string): boolean =>
  [...job.tightened.values()].some(([first]) => first?.fastener === name) ||
  [...job.sheet.engine.operations.values()].some(
    (operation) => operation.tightens.includes(name) && job.done.has(operation.name),
  );

/** What is tightened again of the joints that this job has tightened, in the order of the engine type. */
export const tightenDue = (job: OpenJob): readonly TightenDue[] =>
  [...job.sheet.engine.fasteners.values()]
    .filter(({ name, again }) => again.length > 0 && tightened(job, name))
    .flatMap((fastener) =>
      fastener.again.flatMap((again): readonly TightenDue[] => {
        const { after, by, hours } = again;
        if (hours !== undefined) return [{ fastener, again, when: 'after hand-over', hours }];
        if (after === undefined || by === undefined) return [];
        const standing = job.done.has(by) ? 'done' : job.done.has(after) ? 'due' : 'waits';
        return [{ fastener, again, when: 'within the job', after, by, standing }];
      }),
    );

/** `head nuts on their studs: tighten again after 50 h of running, once cold. One nut at a time …` */
export const dueWords = (job: OpenJob, due: TightenDue): string => {
  const { engine } = job.sheet;
  const title = (operation: string) => engine.operations.get(operation)?.title ?? operation;
  const cold = due.again.cold ? ', once the engine is cold' : '';
  const when =
    due.when === 'after hand-over'
      ? `after ${due.hours} h of running`
      : `after “${title(due.after)}”, by “${title(due.by)}”`;
  return `${due.fastener.title}: tighten again ${when}${cold}. ${due.again.how}`;
};
