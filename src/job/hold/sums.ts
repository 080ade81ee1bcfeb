/** @module What the sums of an operation hold it back by: not noted, not as the figures now are, not as they must be. */
import type { Operation } from '../../engine/engine-type.ts';
import type { OpenJob } from '../job.ts';
import { sumAt } from '../sum/sum-at.ts';
import { sumsAt } from '../sum/sum-places.ts';
import { sumStanding } from '../sum/sum-standing.ts';
import { type Lacking, lacking } from './lacking.ts';

/** What the sums of an operation lack; those that may be left undone hold nothing back. */
export const lackingSums = (job: OpenJob, operation: Operation): readonly Lacking[] =>
  sumsAt(job, operation)
    .filter(({ sum }) => !sum.optional)
    .flatMap((at): readonly Lacking[] => {
      const standing = sumStanding(job, at);
      if (standing.kind === 'noted') return [];
      const title = sumAt(job, at)?.title ?? at.sum.name;
      return [lacking(`“${title}”: ${standing.says.join('; ')}`, standing.remedy)];
    });
