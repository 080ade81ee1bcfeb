/** @module Brings the chances of slips, as the workshop has them, to a job. */
import type { RequestOf } from '../../job/command.ts';
import type { Action } from '../shell/action.ts';

export const bringSlipChances: Action<Pick<RequestOf<'bring slip chances'>, 'chances'>> = {
  name: 'bring-slip-chances',
  label: 'Bring the workshop’s to this job',
  enabled: (job) => job.handedOver === undefined,
  request: ({ chances }) => ({ kind: 'bring slip chances', chances }),
};
