/** @module What can be asked while building: shims counted, packs fitted. */
import type { ShimCount } from '../../job/event.ts';
import type { Typed } from '../../quantity/typed.ts';
import type { Action } from '../shell/action.ts';

export const countShims: Action<{ readonly shims: readonly ShimCount[] }> = {
  name: 'count-shims',
  label: 'Note the count',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'count shims', ...asked }),
};

export const fitPack: Action<{ readonly place: string; readonly shims: readonly Typed[] }> = {
  name: 'fit-pack',
  label: 'This pack is fitted',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'fit pack', ...asked }),
};
