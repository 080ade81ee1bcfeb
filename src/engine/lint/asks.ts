/** @module Rule: what an operation asks can be answered, and what it says is broken out of order comes before it. */
import type { Ask, EngineType, Operation } from '../engine-type.ts';
import { type Finding, wrong } from '../finding.ts';
import { chooseName } from '../nearest-name.ts';

const ofReading = ({ characteristics }: EngineType, { at }: Operation, ask: Ask, path: readonly string[]) => {
  if (ask.answer !== 'reading') {
    return ask.reads === undefined
      ? []
      : [
          wrong(
            [...path, 'reads'],
            `${ask.name} asks for no reading`,
            'write `answer: reading`, or leave it out',
          ),
        ];
  }
  const read = characteristics.get(ask.reads ?? '');
  if (read === undefined)
    return [
      wrong(
        [...path, ask.reads === undefined ? 'answer' : 'reads'],
        `${ask.name} asks for a reading of ${ask.reads ?? 'nothing'}`,
        `name the characteristic under \`reads\`: ${chooseName(ask.reads ?? '', characteristics.keys())}`,
      ),
    ];
  return ask.each && read.at !== at
    ? [
        wrong(
          [...path, 'each'],
          `${read.title} is not read at ${at ?? 'the places of this operation'}`,
          'leave out `each`',
        ),
      ]
    : [];
};

const ofCount = ({ operations }: EngineType, ask: Ask, path: readonly string[]): readonly Finding[] => {
  if (ask.like === undefined) return [];
  const other = operations.get(ask.like.operation)?.asks.find(({ name }) => name === ask.like?.ask);
  return ask.answer === 'count' && other?.answer === 'count'
    ? []
    : [
        wrong(
          [...path, 'like'],
          `${ask.name} is to come to ${ask.like.operation}/${ask.like.ask}, and both must be counts`,
          'name an operation, and an ask of it with `answer: count`',
        ),
      ];
};

const ofOne = (engine: EngineType, operation: Operation): readonly Finding[] => [
  ...operation.asks.flatMap((ask) => {
    const path = ['operations', operation.name, 'asks', ask.name];
    return [
      ...ofReading(engine, operation, ask, path),
      ...ofCount(engine, ask, path),
      ...(ask.each && operation.at === undefined
        ? [
            wrong(
              [...path, 'each'],
              `${operation.name} has no places of its own`,
              'give it `at`, or leave out `each`',
            ),
          ]
        : []),
    ];
  }),
  ...[...operation.breaks.keys()]
    .filter((name) => !operation.after.includes(name))
    .map((name) =>
      wrong(
        ['operations', operation.name, 'breaks', name],
        `${name} need not be done before ${operation.name}`,
        `put ${name} under its \`after\`, or ${chooseName(name, operation.after)}`,
      ),
    ),
];

export const asksAnswerable = (engine: EngineType): readonly Finding[] =>
  [...engine.operations.values()].flatMap((operation) => ofOne(engine, operation));
