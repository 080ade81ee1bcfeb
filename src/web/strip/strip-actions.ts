/** @module What can be asked while stripping: findings, and sizes at which parts were found. */
import type { FindingKind } from '../../job/event.ts';
import type { Action } from '../shell/action.ts';

export const findingKinds: readonly FindingKind[] = [
  'scored',
  'pitted',
  'blued',
  'cracked',
  'corroded',
  'worn',
  'sound',
];

export interface Finding {
  readonly place: string;
  readonly component: string;
  readonly finding: FindingKind;
  readonly mayGoBack: boolean;
  readonly says: string;
}

export const noteFinding: Action<Finding> = {
  name: 'note-finding',
  label: 'Note the finding',
  enabled: (job) => job.handedOver === undefined,
  request: (finding) => ({ kind: 'note finding', ...finding }),
};

export const noteSizeFound: Action<{ readonly component: string; readonly size: string }> = {
  name: 'note-size-found',
  label: 'Note the size found',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'note size found', ...asked }),
};
