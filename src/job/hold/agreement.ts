/** @module What an operation of the build lacks as long as the owner has not agreed to a plan. */
import type { Operation } from '../../engine/engine-type.ts';
import type { OpenJob } from '../job.ts';
import { type Lacking, lacking } from './lacking.ts';

export const lackingAgreement = (job: OpenJob, operation: Operation): readonly Lacking[] => {
  if (operation.phase === 'strip' || job.agreed !== undefined) return [];
  const there = { kind: 'phase', phase: 'decide' } as const;
  return job.plan === undefined
    ? [lacking('no plan is chosen', 'choose a plan and have the owner agree to it', there)]
    : [lacking('the owner has not agreed to the plan', 'ask the owner, and note the agreement', there)];
};
