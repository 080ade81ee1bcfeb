/** @module What is ordered of the parts used but once that go in new with an operation, and is not taken in. */
import type { Operation } from '../../engine/engine-type.ts';
import type { OpenJob } from '../job.ts';
import { oneUseLineOf } from '../order/one-use.ts';
import { openLines } from '../order/open-lines.ts';
import { renewedBy } from '../order/renewed-by.ts';
import type { Lacking } from './lacking.ts';
import { notTakenIn } from './parts.ts';

export const lackingRenewed = (job: OpenJob, operation: Operation): readonly Lacking[] => {
  if (job.orders.size === 0) return [];
  const wanted = new Set(renewedBy(job, operation).map(({ item }) => oneUseLineOf(item)));
  if (wanted.size === 0) return [];
  return openLines(job)
    .filter(({ line }) => wanted.has(line.line))
    .map(notTakenIn);
};
