/** @module `endfloat labels`: writes the labels of a job's parts as a page that prints on label sheets, strips or cards. */
import type { Tag } from '../../job/home/tag.ts';
import { readTag } from '../../job/home/tag-text.ts';
import { tagsToPrint } from '../../job/home/tags-to-print.ts';
import type { OpenJob } from '../../job/job.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { type LabelSize, labelSizes } from '../../record/labels/label-size.ts';
import { labelsPage } from '../../record/labels/labels-page.ts';
import { type Given, lastValue, type TerminalCommand } from '../command.ts';
import { fileNameOf, writeWhole } from '../output-file.ts';
import { plain } from '../plain.ts';
import { inJob, storeOptions } from '../workshop.ts';

const sizesText = labelSizes.map(({ name, title }) => `  ${name.padEnd(14)}${title}\n`).join('');

const sizeAsked = (given: Given): Answer<LabelSize> => {
  const name = lastValue(given, 'size') ?? '70x37';
  const size = labelSizes.find((one) => one.name === name);
  return size === undefined
    ? refuse(
        `there are no labels of ${plain(name)}`,
        '--size',
        `choose one of ${labelSizes.map((one) => one.name).join(', ')}`,
      )
    : answer(size);
};

const skipAsked = (given: Given): Answer<number> => {
  const typed = lastValue(given, 'skip') ?? '0';
  return /^\d{1,3}$/.test(typed)
    ? answer(Number(typed))
    : refuse(
        `${plain(typed)} is no number of labels`,
        '--skip',
        'say how many of the first sheet are used up',
      );
};

const tagsAsked = (given: Given, job: OpenJob): Answer<readonly Tag[]> => {
  const parts = given.values.get('part');
  if (parts === undefined) return answer(tagsToPrint(job));
  const tags: Tag[] = [];
  for (const part of parts) {
    const read = readTag(job, part);
    if (read.kind === 'refused') return read;
    tags.push(read.value);
  }
  return answer(tags);
};

export const labels: TerminalCommand = {
  name: 'labels',
  summary: 'write labels for the parts of a job, each with its code, its number and its home',
  usage: ['labels JOB [--size SIZE] [--part PART] [--skip N] [--to FILE]'],
  about: `Sizes:\n${sizesText}Open the page in a browser and print it at 100 %, without headers, on paper of its size.`,
  options: [
    ...storeOptions,
    { name: 'size', value: 'SIZE', says: 'what lies in the printer, else 70x37' },
    {
      name: 'part',
      value: 'PART',
      many: true,
      says: 'only of this part, by its tag: piston.3, or its number',
    },
    { name: 'skip', value: 'N', says: 'labels of the first sheet that are used up' },
    { name: 'to', value: 'FILE', says: 'where to write it, else labels-JOB.html here' },
  ],
  words: [1, 1],
  run: (given) =>
    inJob(given, async ({ job }) => {
      const size = sizeAsked(given);
      if (size.kind === 'refused') return size;
      const skip = skipAsked(given);
      if (skip.kind === 'refused') return skip;
      const tags = tagsAsked(given, job);
      if (tags.kind === 'refused') return tags;
      const path = lastValue(given, 'to') ?? `labels-${fileNameOf(job.booked.number)}.html`;
      const page = labelsPage(job, { size: size.value, tags: tags.value, skip: skip.value });
      const written = await writeWhole(path, page, given.world);
      if (written.kind === 'refused') return written;
      return answer({
        text: `${tags.value.length} labels, ${size.value.title}, written to ${plain(written.value)}\nOpen it in a browser to print it.`,
        json: { file: written.value, size: size.value.name, tags: tags.value },
      });
    }),
};
