/** @module What goes in new with an operation, of the parts used but once that this job needs. */
import type { Operation } from '../../engine/engine-type.ts';
import type { OpenJob } from '../job.ts';
import { decidedBy, type OneUseNeeded, oneUseNeeded } from './one-use.ts';

/** None for a part that neither the strip spoilt nor the plan brings. */
export const renewedBy = (
  job: Pick<OpenJob, 'sheet' | 'done' | 'plan' | 'scopes'>,
  { renews }: Operation,
): readonly OneUseNeeded[] =>
  renews.length === 0
    ? []
    : oneUseNeeded(job, decidedBy(job.plan?.choices ?? [])).filter(({ item }) => renews.includes(item.name));
