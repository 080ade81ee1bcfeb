/** @module What can be asked while stripping: findings, and sizes at which parts were found. */
import type { Request } from '../../job/command.ts';
import type { CrackTest, FindingGrade, FindingKind } from '../../job/event.ts';
import type { NotedSize } from '../../measure/fitted-size.ts';
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

export const findingGrades: readonly FindingGrade[] = ['slight', 'marked', 'severe'];

const crackTestsBy: readonly CrackTest['by'][] = ['dye penetrant', 'magnetic particles', 'pressure'];

export const crackTests: readonly CrackTest[] = crackTestsBy.flatMap((by) =>
  (['no crack', 'a crack'] as const).map((showed) => ({ by, showed })),
);

export type Finding = Omit<Extract<Request, { readonly kind: 'note finding' }>, 'kind'>;

export const noteFinding: Action<Finding> = {
  name: 'note-finding',
  label: 'Note the finding',
  enabled: (job) => job.handedOver === undefined,
  request: (finding) => ({ kind: 'note finding', ...finding }),
};

export const noteSizeFound: Action<NotedSize> = {
  name: 'note-size-found',
  label: 'Note the size found',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'note size found', ...asked }),
};
