/** @module Which tags a job needs: of every part that comes off in it and is to come back. */
import type { OpenJob } from '../job.ts';
import { partHomesOf } from './part-home.ts';
import type { Tag } from './tag.ts';

/** In a part strip those that it takes off. */
export const tagsToPrint = (job: OpenJob): readonly Tag[] =>
  partHomesOf(job)
    .filter(({ comesOff, state }) => state.kind !== 'replaced' && comesOff)
    .map(({ tag }) => tag);
