/** @module The record's doubts: readings that look wrong, what they probably were, and what the fitter said to it. */
import { asksOf } from '../../job/doubted.ts';
import type { OpenJob } from '../../job/job.ts';
import { chanceWords, knownSlips } from '../../measure/slips/priors.ts';
import type { Doubt } from '../../measure/verdict-model.ts';
import { timeText } from '../figure-text.ts';
import type { RecordSection } from '../record-model.ts';

/** How often slips were taken to happen, where that is not as usual: whoever weighs the doubts again goes by the same. */
const ownChances = ({ slipChances, sheet }: OpenJob): readonly string[] => {
  const other = knownSlips.filter(({ name }) => slipChances.some(({ slip }) => slip === name));
  const says = other.map(
    (slip) =>
      `${slip.name} ${chanceWords(slip, sheet.priors?.[slip.name] ?? slip.chance)} (usually ${chanceWords(slip, slip.chance)})`,
  );
  return says.length === 0 ? [] : [`How often slips happen in this shop: ${says.join('; ')}.`];
};

export const doubtSection = (job: OpenJob, doubts: readonly Doubt[]): RecordSection => {
  const asked = asksOf(job);
  const rows = doubts.map((doubt) => {
    const said = job.doubtsAnswered.get(doubt.id);
    const beside = !asked(doubt);
    return {
      of: doubt.id,
      cells: [
        doubt.says,
        said === undefined
          ? beside
            ? 'not answered: it is of what this job does not go so far as'
            : 'not answered'
          : `${said.by}, ${timeText(said.at)}: ${said.why}`,
      ],
      ...(said === undefined && !beside ? { marked: true as const } : {}),
    };
  });
  const cleared = job.struckOut.length;
  const gone = [...job.doubtsAnswered.entries()].filter(([id]) => !doubts.some((doubt) => doubt.id === id));
  return {
    name: 'doubts',
    title: 'Doubts',
    says: [
      rows.length === 0 ? 'No reading that counts is in doubt.' : `${rows.length} on readings that count.`,
      ...(cleared > 0 ? [`${cleared} struck out and read again or left out (see the readings).`] : []),
      ...ownChances(job),
      ...gone.map(
        ([, said]) => `Answered earlier, no longer raised: ${said.by}, ${timeText(said.at)}: ${said.why}`,
      ),
    ],
    table: { heads: ['What looks wrong', 'Answer'], rows },
    derived: false,
  };
};
