/** @module `endfloat timing`: shim packs needed, found, fitted and checked again, and which pack puts a pump right. */
import type { OpenJob } from '../../job/job.ts';
import { pumpPacksOf } from '../../job/pumps.ts';
import { answer, refusalText } from '../../quantity/refusal.ts';
import { lengthText } from '../../record/figure-text.ts';
import { packSection } from '../../record/sections/packs.ts';
import { spillCheckSection } from '../../record/sections/spill-check.ts';
import type { TerminalCommand } from '../command.ts';
import { plain } from '../plain.ts';
import { sectionText } from '../section-text.ts';
import { inJob, storeOptions } from '../workshop.ts';

/** The packs that would put right what the second check showed, each with how it is asked for. */
const putRightText = (job: OpenJob): string => {
  const { checked, pumps } = pumpPacksOf(job);
  const set = checked?.putRight;
  if (set === undefined) return '';
  if (set.kind === 'refused') return `\nNo pack is proposed: ${plain(refusalText(set.refusal))}.\n`;
  return `\nPacks that put it right:\n${pumps
    .flatMap(({ place, title, putRight }) =>
      putRight === undefined
        ? []
        : [
            `  ${plain(title)}: ${lengthText(putRight.thickness)} for ${lengthText(putRight.needed)}: endfloat do JOB fit-pack place=${place} shims=${putRight.shims.map((shim) => Number(shim.toFixed(4))).join('+')}mm\n`,
          ],
    )
    .join('')}`;
};

export const timing: TerminalCommand = {
  name: 'timing',
  summary: 'show the shim packs and the timing of the pumps, and which pack puts a pump right',
  usage: ['timing JOB'],
  about:
    'Exit code 1 while a pump has no pack within its tolerance, or, where the engine type asks for a second check, none that is proved by it.',
  options: storeOptions,
  words: [1, 1],
  run: (given) =>
    inJob(given, async ({ job }) => {
      const packs = pumpPacksOf(job);
      const proved = packs.pumps.every(({ fitted, check }) =>
        packs.timing?.check === undefined
          ? fitted?.withinTolerance === true
          : fitted !== undefined && check?.verdict === 'within',
      );
      return answer({
        text: [
          sectionText(packSection(job)),
          ...spillCheckSection(job).map((section) => `\n${section.title}\n${sectionText(section)}`),
          putRightText(job),
        ].join(''),
        json: {
          pumps: packs.pumps,
          ...(packs.set.kind === 'answer' ? { set: packs.set.value } : { refusal: packs.set.refusal }),
          checked: packs.checked,
        },
        ...(proved ? {} : { no: true as const }),
      });
    }),
};
