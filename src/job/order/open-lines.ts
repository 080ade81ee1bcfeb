/** @module Lines of orders that are not settled and that the plan still needs. */
import type { OpenJob } from '../job.ts';
import { neededLines } from './needed.ts';
import { type LineAt, orderedLines } from './standing.ts';

export const openLines = (job: OpenJob): readonly LineAt[] => {
  if (job.orders.size === 0) return [];
  const needed = new Set(neededLines(job).map(({ line }) => line));
  return orderedLines(job).filter(
    ({ line, standing }) =>
      needed.has(line.line) && standing.kind !== 'taken in' && standing.kind !== 'given up',
  );
};
