/** @module Sets how far a job goes. */
import type { RequestOf } from '../../job/command.ts';
import type { Action } from '../shell/action.ts';

export const setScope: Action<Omit<RequestOf<'set scope'>, 'kind'>> = {
  name: 'set-scope',
  label: 'Set how far it goes',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'set scope', ...asked }),
};
