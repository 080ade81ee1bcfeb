/** @module What can be asked of a job about its offers: one made, the owner's word on one noted. */
import type { RequestOf } from '../../job/command.ts';
import type { Action } from '../shell/action.ts';

export const makeIt: Action<RequestOf<'make offer'>> = {
  name: 'make-offer',
  label: 'Make the offer',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => asked,
};

export const noteAnswer: Action<{
  readonly number: number;
  readonly plan: string;
  readonly name: string;
  readonly how: string;
}> = {
  name: 'note-answer',
  label: 'The owner accepts',
  enabled: (job) => job.handedOver === undefined,
  request: ({ number, plan, name, how }) => ({
    kind: 'note agreement',
    name,
    how,
    offer: { number, plan, by: 'note' },
  }),
};
