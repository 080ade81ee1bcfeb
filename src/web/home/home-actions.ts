/** @module What can be asked about parts on their way home: confirmed, strayed, decided on. */
import type { RequestOf } from '../../job/command.ts';
import type { Action } from '../shell/action.ts';

export const homePart: Action<Omit<RequestOf<'home part'>, 'kind'>> = {
  name: 'home-part',
  label: 'It is home',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'home part', ...asked }),
};

export const notePartStrayed: Action<Omit<RequestOf<'note part strayed'>, 'kind'>> = {
  name: 'note-part-strayed',
  label: 'Note it',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'note part strayed', ...asked }),
};

export const decideHome: Action<Omit<RequestOf<'decide home'>, 'kind'>> = {
  name: 'decide-home',
  label: 'Decided',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'decide home', ...asked }),
};
