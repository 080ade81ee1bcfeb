/** @module How much of a line was ordered already, in all orders of a job. */
import type { OpenJob } from '../job.ts';

/** @param before  only the first so many orders count */
export const orderedCount = (
  { orders }: Pick<OpenJob, 'orders'>,
  line: string,
  before: number = orders.size,
): number =>
  [...orders.values()]
    .slice(0, before)
    .flatMap(({ lines }) => lines)
    .reduce((sum, one) => sum + (one.line === line ? one.count : 0), 0);
