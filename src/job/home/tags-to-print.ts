/** @module Which tags a job needs: of every part that comes off in it and is to come back. */
import type { OpenJob } from '../job.ts';
import { operationsIn } from '../scope.ts';
import { partHomesOf } from './part-home.ts';
import type { Tag } from './tag.ts';

/** In a part strip those of the operations that it takes in. */
export const tagsToPrint = (job: OpenJob): readonly Tag[] => {
  const taken = new Set(operationsIn(job).map(({ name }) => name));
  return partHomesOf(job)
    .filter(({ off, state }) => state.kind !== 'replaced' && (off === undefined || taken.has(off.name)))
    .map(({ tag }) => tag);
};
