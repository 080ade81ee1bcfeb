/** @module The record's sums of the operations: from what they were reckoned, what came of them, what was fitted. */
import type { OpenJob } from '../../job/job.ts';
import { resultTitle } from '../../job/sum/keeping.ts';
import { notedAt } from '../../job/sum/noted-sum.ts';
import { type SumPlace, sumsAt } from '../../job/sum/sum-places.ts';
import { timeText } from '../figure-text.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';

const rowOf = (job: OpenJob, at: SumPlace): readonly RecordRow[] => {
  const here = notedAt(job, at);
  if (here === undefined) return [];
  const { noted, keeps, changed } = here;
  const { operation, sum, place } = at;
  const amiss = keeps.filter(({ verdict }) => verdict !== 'within');
  return [
    {
      of: [operation.name, sum.name, place?.id ?? ''].filter((part) => part !== '').join(' '),
      cells: [
        operation.title,
        [sum.title ?? sum.reckon, place?.title ?? ''].filter((part) => part !== '').join(', '),
        noted.inputs.map(({ key, text, from }) => `${key} ${text} (${from ?? 'as typed'})`).join('; '),
        noted.found.map(({ key, text }) => `${resultTitle(key)} ${text}`).join('; '),
        [
          ...keeps.map(({ says, verdict }) => `${says}: ${verdict}`),
          ...changed.map((one) => `changed since: ${one}`),
        ].join('; '),
        [noted.fitted ?? '', noted.note].filter((part) => part !== '').join('; '),
        `${timeText(noted.at)}, ${noted.by}`,
      ],
      ...(amiss.length > 0 || changed.length > 0 ? { marked: true as const } : {}),
    },
  ];
};

/** None where no operation was reckoned in. */
export const sumSections = (job: OpenJob): readonly RecordSection[] => {
  const { engine } = job.sheet;
  const rows = [...engine.operations.values()].flatMap((operation) =>
    sumsAt(job, operation).flatMap((at) => rowOf(job, at)),
  );
  if (rows.length === 0) return [];
  return [
    {
      name: 'sums',
      title: 'Reckoned in the course of the work',
      says: ['After ± stands half the width of the interval that holds the figure 95 times in 100.'],
      table: {
        heads: ['Operation', 'Sum', 'From', 'Came of it', 'Asked of it', 'Fitted, note', 'Noted'],
        rows,
      },
      derived: true,
    },
  ];
};
