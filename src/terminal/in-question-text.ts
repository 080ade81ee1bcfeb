/** @module What is in question, as tables for the terminal. */
import { typedText } from '../quantity/typed.ts';
import { timeText } from '../record/figure-text.ts';
import type { InstrumentInQuestion, JobInQuestion } from '../register/in-question.ts';
import { plain } from './plain.ts';
import { table } from './table.ts';

const jobTable = (jobs: readonly JobInQuestion[]): string =>
  table(
    ['Job', 'When', 'By', 'What', 'Showed', 'Since'].map((head) => ({ head })),
    jobs.flatMap(({ number, uses }) =>
      uses.map((use) => [
        number,
        timeText(use.at),
        use.by,
        use.where,
        use.typed === undefined ? '' : typedText(use.typed),
        use.doneAgain ? 'done again' : 'in question',
      ]),
    ),
  );

/** One instrument: why, and every reading and joint. */
export const inQuestionText = ({ instrument, spans, jobs }: InstrumentInQuestion): string =>
  [...spans.map(({ says }) => `${plain(`In question: ${instrument} ${says}`)}\n`), jobTable(jobs)].join('');
