/** @module The record's doubts: readings that looked wrong, what they probably were, and what the fitter said to it. */
import type { OpenJob } from '../../job/job.ts';
import type { Doubt } from '../../measure/verdict-model.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { typedText } from '../../quantity/typed.ts';
import { timeText } from '../figure-text.ts';
import type { RecordSection } from '../record-model.ts';

/** @example oddsText(41.7) // '42 to 1' */
export const oddsText = (odds: number): string =>
  odds >= 1000 ? 'over 1000 to 1' : `${formatFigure(odds, odds < 10 ? 1 : 0)} to 1`;

export const doubtSection = (job: OpenJob, doubts: readonly Doubt[]): RecordSection => {
  const rows = doubts.map((doubt) => {
    const said = job.doubtsAnswered.get(doubt.id);
    return {
      of: doubt.id,
      cells: [
        doubt.says,
        doubt.likely.map(typedText).join(', '),
        oddsText(doubt.odds),
        said === undefined ? 'not answered' : `${said.by}, ${timeText(said.at)}: ${said.why}`,
      ],
      ...(said === undefined ? { marked: true as const } : {}),
    };
  });
  const cleared = job.struckOut.length;
  const gone = [...job.doubtsAnswered.entries()].filter(([id]) => !doubts.some((doubt) => doubt.id === id));
  return {
    name: 'doubts',
    title: 'Doubts',
    says: [
      rows.length === 0
        ? 'No reading that counts is in doubt.'
        : `${rows.length} raised on readings that count.`,
      ...(cleared > 0 ? [`${cleared} struck out and read again or left out (see the readings).`] : []),
      ...gone.map(
        ([, said]) => `Answered earlier, no longer raised: ${said.by}, ${timeText(said.at)}: ${said.why}`,
      ),
    ],
    table: { heads: ['What looks wrong', 'Probably', 'Odds', 'Answer'], rows },
    derived: true,
  };
};
