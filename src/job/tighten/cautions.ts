/** @module What must be said of how a stage was pulled: a wrench unnamed or not to be trusted. A caution, never a block. */
import type { Register } from '../../register/register.ts';
import { cautionText } from '../../register/standing.ts';
import { cautionsOf } from '../cautions.ts';
import type { OpenJob, TightenedStage } from '../job.ts';
import type { StageStanding } from './tightening.ts';

const ofWrench = (
  job: OpenJob,
  { wrench, at }: TightenedStage,
  register: Register | undefined,
): readonly string[] =>
  wrench === undefined
    ? ['no torque wrench is named']
    : cautionsOf(job, new Map([[wrench, at]]), register).map(cautionText);

/** Each once, oldest first; an angle asks for no torque wrench. */
export const stageCautions = (
  job: OpenJob,
  { stage, noted }: StageStanding,
  register?: Register,
): readonly string[] =>
  stage.kind === 'angle' ? [] : [...new Set(noted.flatMap((one) => ofWrench(job, one, register)))];
