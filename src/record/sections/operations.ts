/** @module The record's order of work: every operation of the job, signed or not, what was answered, overruled, opened again. */
import type { Operation } from '../../engine/engine-type.ts';
import { type AskedAt, askedOf } from '../../job/asked.ts';
import type { OpenJob } from '../../job/job.ts';
import { operationsIn } from '../../job/scope.ts';
import { timeText } from '../figure-text.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';
import { characteristicTitle, operationTitle } from './named.ts';

const rowOf = (job: OpenJob, operation: Operation): RecordRow => {
  const signed = job.done.get(operation.name);
  const overruled = signed?.overruled;
  return {
    of: operation.name,
    cells: [
      operation.phase,
      operation.title,
      operation.needs.map((name) => characteristicTitle(job.sheet.engine, name)).join(', '),
      signed === undefined ? 'not done' : `${timeText(signed.at)}, ${signed.by}`,
      [
        signed?.note ?? '',
        overruled === undefined
          ? ''
          : `overruled by ${overruled.by}: ${overruled.why} (lacking: ${overruled.lacking.join('; ')})`,
      ]
        .filter((text) => text !== '')
        .join('. '),
    ],
    ...(signed === undefined || overruled !== undefined ? { marked: true as const } : {}),
  };
};

export const operationSection = (job: OpenJob): RecordSection => ({
  name: 'operations',
  title: 'Work done and signed',
  says: [],
  table: {
    heads: ['Part of the job', 'Operation', 'Hold point: proved first', 'Signed', 'Note'],
    rows: operationsIn(job).map((operation) => rowOf(job, operation)),
  },
  derived: false,
});

const answerRow = (operation: Operation, { says, answered }: AskedAt): readonly RecordRow[] =>
  answered === undefined
    ? []
    : [
        {
          of: `${operation.name}/${answered.ask}`,
          cells: [
            operation.title,
            says,
            [
              answered.count === undefined ? '' : String(answered.count),
              answered.good
                ? answered.says === '' && answered.count === undefined
                  ? 'yes'
                  : ''
                : 'not as it should be',
              answered.says,
            ]
              .filter((text) => text !== '')
              .join(', '),
            `${timeText(answered.at)}, ${answered.by}`,
          ],
          ...(answered.good ? {} : { marked: true as const }),
        },
      ];

/** What was found, counted and seen before operations were signed. */
export const answerSection = (job: OpenJob): RecordSection => {
  const rows = [...job.sheet.engine.operations.values()].flatMap((operation) =>
    askedOf(job, operation).flatMap((asked) => answerRow(operation, asked)),
  );
  return {
    name: 'answers',
    title: 'As found, counted and seen',
    says: rows.length === 0 ? ['Nothing was asked, or nothing is answered yet.'] : [],
    table: { heads: ['Operation', 'Asked', 'Answer', 'By'], rows },
    derived: false,
  };
};

/** What was signed and opened again, with what rested on it. */
export const reopenedSection = (job: OpenJob): RecordSection => ({
  name: 'opened-again',
  title: 'Opened again',
  says: [],
  table: {
    heads: ['When, who', 'Operation', 'Why', 'Undone with it'],
    rows: job.reopened.map(({ operation, why, undone, at, by }) => ({
      of: operation,
      cells: [
        `${timeText(at)}, ${by}`,
        operationTitle(job.sheet.engine, operation),
        why,
        [...undone.keys()]
          .filter((name) => name !== operation)
          .map((name) => operationTitle(job.sheet.engine, name))
          .join('; '),
      ],
    })),
  },
  derived: false,
});
