/** @module What can be asked of time at an operation: begin, stop with the reason. */
import type { RequestOf } from '../../job/command.ts';
import type { Action } from '../shell/action.ts';

export const beginWork: Action<Omit<RequestOf<'begin work'>, 'kind'>> = {
  name: 'begin-work',
  label: 'Begin',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'begin work', ...asked }),
};

export const stopWork: Action<Omit<RequestOf<'stop work'>, 'kind'>> = {
  name: 'stop-work',
  label: 'Stop',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'stop work', ...asked }),
};
