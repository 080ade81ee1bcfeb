/** @module What can be asked of a job's operations in the terminal: answers, signatures, opening again. */
import { standingOf } from '../../job/holds.ts';
import type { OpenJob } from '../../job/job.ts';
import { tighteningsOf } from '../../job/tighten/tightening.ts';
import { figure, number, optional, text, yesOrNo } from './keys.ts';
import type { JobRequest } from './typed-request.ts';
import { given, together, type Values, word } from './values.ts';

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

/** Bolts by name; those of the stage that are left, in order, where none are named. */
const boltsMeant = (values: Values, job: OpenJob, stage: number): readonly string[] => {
  const named = word(values.bolts)
    .split(/[\s,;]+/)
    .filter((bolt) => bolt !== '');
  const known = job.sheet.engine.operations.get(word(values.operation));
  if (named.length > 0 || known === undefined) return named;
  const joint = tighteningsOf(job, known).find(
    ({ fastener, place }) => fastener.name === values.fastener && place.id === values.place,
  );
  return joint?.stages[stage]?.left ?? [];
};

/** Stages are counted from 1 on paper and at the bench. */
const tighteningAsked = (values: Values, job: OpenJob): Values => {
  const stage = Number(values.stage) - 1;
  const adapter = given(values, {
    'wrench-length': 'wrench',
    'adapter-length': 'adapter',
    'adapter-angle': 'angle',
  });
  return {
    ...given(values, { operation: 'operation', fastener: 'fastener', place: 'place' }),
    stage,
    bolts: boltsMeant(values, job, stage),
    ...given(values, {
      threads: 'threadState',
      wrench: 'wrench',
      'bolts-are': 'boltsAre',
      longest: 'longest',
    }),
    ...together('adapter', adapter),
    ...together('overruled', given(values, { 'overruled-by': 'by', why: 'why' })),
    note: word(values.note),
  };
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
  { name: 'begin-work', kind: 'begin work', keys: [operation], body: (values) => values },
  {
    name: 'stop-work',
    kind: 'stop work',
    keys: [
      operation,
      text('why', '"the hoist is in use"'),
      optional(text('ended-at', '2026-03-02T16:30:00Z')),
    ],
    body: (values) => given(values, { operation: 'operation', why: 'why', 'ended-at': 'endedAt' }),
  },
  {
    name: 'tighten',
    kind: 'tighten stage',
    keys: [
      operation,
      text('fastener', 'head-nuts'),
      text('place', 'head.1'),
      number('stage', '1'),
      optional(text('bolts', '"5 6 3 8"')),
      text('threads', 'oiled'),
      optional(text('wrench', 'wrench-40-200')),
      optional(figure('wrench-length', 'length', '400mm')),
      optional(figure('adapter-length', 'length', '60mm')),
      optional(figure('adapter-angle', 'angle', '90deg')),
      optional(text('bolts-are', 'new')),
      optional(figure('longest', 'length', '58.2mm')),
      optional(text('overruled-by', '"H. Foreman"')),
      optional(text('why', '"nut 3 is reached from below only"')),
      optional(text('note', '"nut 7 went home with a creak"')),
    ],
    body: tighteningAsked,
  },
  {
    name: 'reopen-operation',
    kind: 'reopen operation',
    keys: [operation, text('why', '"cap off again: shell pinched"')],
    body: (values) => values,
  },
];
