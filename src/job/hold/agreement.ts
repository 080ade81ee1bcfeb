/** @module What an operation of the build lacks as long as the owner has not agreed to a plan. */
import type { Operation } from '../../engine/engine-type.ts';
import type { OpenJob } from '../job.ts';
import { unplanned } from '../unplanned.ts';
import { type Lacking, lacking } from './lacking.ts';

export const lackingAgreement = (job: OpenJob, operation: Operation): readonly Lacking[] => {
  if (operation.phase === 'strip') return [];
  const there = { kind: 'phase', phase: 'decide' } as const;
  const anew = unplanned(job);
  if (anew !== undefined) return [lacking(anew, 'choose a plan again and have the owner agree to it', there)];
  if (job.agreed !== undefined) return [];
  return job.plan === undefined
    ? [lacking('no plan is chosen', 'choose a plan and have the owner agree to it', there)]
    : [lacking('the owner has not agreed to the plan', 'ask the owner, and note the agreement', there)];
};
