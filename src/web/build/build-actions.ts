/** @module What can be asked while building: shims counted, packs fitted. */
import type { RequestOf } from '../../job/command.ts';
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

export const measurePart: Action<Omit<RequestOf<'measure part'>, 'kind'>> = {
  name: 'measure-part',
  label: 'Note the part',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'measure part', ...asked }),
};

export const setPartAside: Action<Omit<RequestOf<'set part aside'>, 'kind'>> = {
  name: 'set-part-aside',
  label: 'Set it aside',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'set part aside', ...asked }),
};

export const assignParts: Action<Omit<RequestOf<'assign parts'>, 'kind'>> = {
  name: 'assign-parts',
  label: 'These parts go in',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'assign parts', ...asked }),
};
