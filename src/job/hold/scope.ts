/** @module An operation that this job does not go so far as. */
import type { Operation } from '../../engine/engine-type.ts';
import type { OpenJob } from '../job.ts';
import { scopeOf } from '../scope.ts';
import type { Lacking } from './lacking.ts';

/** Nobody overrules it: the scope is widened, so that all that the operation brings with it is counted. */
export const beyondScope = (job: OpenJob, { name }: Operation): readonly Lacking[] =>
  scopeOf(job).operations.has(name)
    ? []
    : [
        {
          says: 'this job does not go so far',
          remedy: 'widen the scope of the job to what it reaches',
          overrule: 'never',
        },
      ];
