/** @module What can be asked of an operation: an answer, a sum, a signature, to open it again. */
import type { RequestOf } from '../../job/command.ts';
import type { Action } from '../shell/action.ts';

export const answerAsk: Action<Omit<RequestOf<'answer ask'>, 'kind'>> = {
  name: 'answer-ask',
  label: 'Write down',
  enabled: (job) => job.handedOver === undefined,
  request: (answer) => ({ kind: 'answer ask', ...answer }),
};

export const noteSumAction: Action<RequestOf<'note sum'>> = {
  name: 'note-sum',
  label: 'Write into the journal',
  enabled: (job) => job.handedOver === undefined,
  request: (noted) => noted,
};

export const tightenStage: Action<Omit<RequestOf<'tighten stage'>, 'kind'>> = {
  name: 'tighten-stage',
  label: 'Note the stage',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'tighten stage', ...asked }),
};

export const doOperation: Action<Omit<RequestOf<'do operation'>, 'kind'>> = {
  name: 'do-operation',
  label: 'Sign as done',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'do operation', ...asked }),
};

export const reopenOperation: Action<Omit<RequestOf<'reopen operation'>, 'kind'>> = {
  name: 'reopen-operation',
  label: 'Open it again',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'reopen operation', ...asked }),
};
