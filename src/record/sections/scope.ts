/** @module How far the overhaul went, each time that it was set, and plainly what was not opened. */
import type { OpenJob } from '../../job/job.ts';
import { operationsIn, scopeOf } from '../../job/scope.ts';
import { knownInPart, notOpened, scopeWords } from '../../job/scope-words.ts';
import { timeText } from '../figure-text.ts';
import type { RecordSection } from '../record-model.ts';

const leftUndone = (job: OpenJob): string => {
  const { operations } = job.sheet.engine;
  const left = operations.size - operationsIn(job).length;
  return `${left} of the ${operations.size} operations of the engine type were no part of it.`;
};

/** Of what is not opened: what nothing is known of, and what is known of the rest. */
const shutWords = (job: OpenJob): readonly string[] => {
  const [shut, inPart] = [notOpened(job), knownInPart(job)];
  return [
    ...(shut.length === 0
      ? []
      : [
          `Not opened, not measured and not judged: ${shut.join('; ')}. Nothing is said here of their state.`,
        ]),
    ...(inPart.length === 0
      ? []
      : [
          `Not laid open either, and known only by what stands in brackets, read from outside or on the way back: ${inPart.join('; ')}. Nothing more is said here of their state.`,
        ]),
  ];
};

/** None where the scope was never set: then it was the whole engine. */
export const scopeSection = (job: OpenJob): readonly RecordSection[] => {
  if (job.scopes.length === 0) return [];
  return [
    {
      name: 'scope',
      title: 'How far the overhaul went',
      says: scopeOf(job).whole
        ? ['The whole engine, as it was set at the end.']
        : [...shutWords(job), leftUndone(job)],
      table: {
        heads: ['Set', 'By', 'To reach', 'Why'],
        rows: job.scopes.map((scope) => ({
          of: timeText(scope.at),
          cells: [timeText(scope.at), scope.by, scopeWords(job.sheet.engine, scope), scope.says],
        })),
      },
      derived: false,
    },
  ];
};
