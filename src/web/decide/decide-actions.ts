/** @module What can be asked while deciding: a plan chosen, the owner's word noted. */
import { choosePlan } from '../../job/planning.ts';
import type { Plan } from '../../plan/plan-model.ts';
import type { Action } from '../shell/action.ts';

export const chooseIt: Action<Plan> = {
  name: 'choose-plan',
  label: 'Choose this plan',
  enabled: (job) => job.handedOver === undefined,
  request: choosePlan,
};

export const noteAgreement: Action<{ readonly name: string; readonly how: string }> = {
  name: 'note-agreement',
  label: 'The owner agrees',
  enabled: (job) => job.plan !== undefined && job.handedOver === undefined,
  request: (agreed) => ({ kind: 'note agreement', ...agreed }),
};
