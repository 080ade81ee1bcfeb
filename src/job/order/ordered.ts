/** @module What was ordered already of a line, in all orders of a job: how many, and for which places. */
import type { OpenJob } from '../job.ts';

const linesOf = ({ orders }: Pick<OpenJob, 'orders'>, line: string, before: number) =>
  [...orders.values()]
    .slice(0, before)
    .flatMap(({ lines }) => lines)
    .filter((one) => one.line === line);

/** @param before  only the first so many orders count */
export const orderedCount = (
  job: Pick<OpenJob, 'orders'>,
  line: string,
  before: number = job.orders.size,
): number => linesOf(job, line, before).reduce((sum, { count }) => sum + count, 0);

/** Places for which one piece each was ordered; where fewer came into the order than it names places, the first ones. */
export const orderedPlaces = (
  job: Pick<OpenJob, 'orders'>,
  line: string,
  before: number = job.orders.size,
): ReadonlySet<string> =>
  new Set(linesOf(job, line, before).flatMap(({ places, count }) => places.slice(0, count)));
