/** @module What can be asked of a job's operations in the terminal: answers, signatures, opening again. */
import { standingOf } from '../../job/holds.ts';
import type { OpenJob } from '../../job/job.ts';
import { number, optional, text, yesOrNo } from './keys.ts';
import type { JobRequest } from './typed-request.ts';
import { given, type Values, word } from './values.ts';

const operation = text('operation', 'lift-head');

/** What is lacking now is what the named person answers for. */
const overruling = (values: Values, job: OpenJob): Values => {
  const by = values['overruled-by'];
  if (by === undefined) return {};
  const known = job.sheet.engine.operations.get(word(values.operation));
  const standing = known && standingOf(job, known);
  const lacking = standing?.kind === 'held' ? standing.lacking.map(({ says }) => says) : ['nothing'];
  return { overruled: { by, why: word(values.why), lacking } };
};

export const operationRequests: readonly JobRequest[] = [
  {
    name: 'answer-ask',
    kind: 'answer ask',
    keys: [
      operation,
      text('ask', 'plugs-out'),
      optional(text('place', 'piston.2')),
      yesOrNo('good'),
      optional(number('count', '7')),
      optional(text('says', '"one shell turned, marked on its back"')),
    ],
    body: (values) => ({
      ...given(values, { operation: 'operation', ask: 'ask', place: 'place', good: 'good', count: 'count' }),
      says: word(values.says),
    }),
  },
  {
    name: 'do-operation',
    kind: 'do operation',
    keys: [
      operation,
      optional(text('note', '"two studs came out with the nuts"')),
      optional(text('overruled-by', '"H. Foreman"')),
      optional(text('why', '"the nozzles are scrap anyway"')),
    ],
    body: (values, job) => ({
      operation: values.operation,
      note: word(values.note),
      ...overruling(values, job),
    }),
  },
  {
    name: 'reopen-operation',
    kind: 'reopen operation',
    keys: [operation, text('why', '"cap off again: shell pinched"')],
    body: (values) => values,
  },
];
