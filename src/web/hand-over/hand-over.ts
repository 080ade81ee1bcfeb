/** @module The last thing asked of a job. */
import type { Action } from '../shell/action.ts';

export const handOver: Action<{ readonly to: string; readonly note: string }> = {
  name: 'hand-over',
  label: 'Hand over',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'hand over', ...asked }),
};
