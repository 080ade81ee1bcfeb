/** @module `endfloat tag`: what a scanned or typed tag is: its part, its home, how it stands, what is next. */
import { homeWords, nextFor, stateWords } from '../../job/home/home-words.ts';
import { type PartHome, partHomesOf } from '../../job/home/part-home.ts';
import { readTag, tagText } from '../../job/home/tag-text.ts';
import type { OpenJob } from '../../job/job.ts';
import { answer } from '../../quantity/refusal.ts';
import { answerNo, type TerminalCommand } from '../command.ts';
import { plain } from '../plain.ts';
import { table } from '../table.ts';
import { inJob, storeOptions } from '../workshop.ts';

const toldJson = (job: OpenJob, home: PartHome) => ({
  ...home.tag,
  text: tagText(job, home.tag),
  place: home.place,
  goesTo: homeWords(job, home),
  state: home.state,
  stands: stateWords(home),
  next: nextFor(home),
  findings: home.findings.map(({ place, finding, says }) => ({ place, finding, says })),
  planned: home.planned,
});

const oneText = (job: OpenJob, home: PartHome): string =>
  [
    `${home.tag.title}, tag ${home.tag.number}, ${tagText(job, home.tag)}`,
    `Belongs to: ${homeWords(job, home)}`,
    `Stands: ${stateWords(home)}`,
    `Next: ${nextFor(home)}`,
    ...home.findings.map(({ finding, says }) => `Found: ${finding}${says === '' ? '' : `, ${says}`}`),
    ...home.planned.map((says) => `Plan: ${says}`),
  ]
    .map((line) => `${plain(line)}\n`)
    .join('');

const allText = (job: OpenJob, homes: readonly PartHome[]): string =>
  table(
    [{ head: 'Tag', right: true }, { head: 'Part' }, { head: 'Belongs to' }, { head: 'Stands' }],
    homes.map((home) => [`${home.tag.number}`, home.tag.id, homeWords(job, home), plain(stateWords(home))]),
  );

export const tag: TerminalCommand = {
  name: 'tag',
  summary: 'tell what a scanned or typed tag is, where its part belongs, and what is next for it',
  usage: ['tag JOB [TEXT]'],
  about:
    'TEXT is what is scanned or written: J-4/piston.3, piston.3, or the number on the bag. Without it, all tags.',
  options: storeOptions,
  words: [1, 2],
  run: (given) =>
    inJob(given, async ({ job }) => {
      const homes = partHomesOf(job);
      const text = given.words[1];
      if (text === undefined)
        return answer({
          text: allText(job, homes),
          json: { tags: homes.map((home) => toldJson(job, home)) },
        });
      const read = readTag(job, text);
      if (read.kind === 'refused') return answerNo(read.refusal);
      const home = homes[read.value.number - 1];
      if (home === undefined) throw new Error(`tag ${read.value.id} has no home`);
      return answer({ text: oneText(job, home), json: toldJson(job, home) });
    }),
};
