/** @module `endfloat machine-shop`: each place from what it measured to what it must become; as tables or as paper. */
import type { OpenJob } from '../../job/job.ts';
import { type MachineShopSheet, machineShopSheetsOf } from '../../job/order/machine-shop.ts';
import { inwardText } from '../../quantity/inward.ts';
import { answer } from '../../quantity/refusal.ts';
import { comesOffText, knownText, machineShopPage, termsOf } from '../../record/machine-shop-page.ts';
import { lastValue, type Outcome, type TerminalCommand } from '../command.ts';
import { writeWhole } from '../output-file.ts';
import { plain } from '../plain.ts';
import { table } from '../table.ts';
import { inJob, storeOptions } from '../workshop.ts';

const sheetText = ({ supplier, parts }: MachineShopSheet): string =>
  parts
    .map(({ line, finished, places, machining }) =>
      [
        `${plain(supplier)}, ${plain(line.says)}\n`,
        table(
          [
            { head: 'Place' },
            { head: 'Least, mm', right: true },
            { head: 'Greatest, mm', right: true },
            { head: 'Finished to' },
            { head: 'In inches' },
            { head: 'Comes off' },
          ],
          places.map((place) => [
            place.title,
            place.from === undefined ? 'not measured' : knownText(place.from.least),
            place.from === undefined ? '' : knownText(place.from.greatest),
            inwardText(finished.mm, 'mm'),
            inwardText(finished.in, 'in'),
            comesOffText(place),
          ]),
        ),
        ...termsOf(machining).map(({ name, says }) => `  ${name}: ${plain(says)}\n`),
      ].join(''),
    )
    .join('\n');

const shown = (job: OpenJob, sheets: readonly MachineShopSheet[]): Outcome => ({
  text:
    sheets.length === 0
      ? `Nothing of ${plain(job.booked.number)} goes to a machine shop.`
      : sheets.map(sheetText).join('\n'),
  json: {
    sheets: sheets.map(({ supplier, parts }) => ({
      supplier,
      parts: parts.map(({ line, finished, places, machining }) => ({
        line: line.line,
        says: line.says,
        finished,
        places,
        terms: termsOf(machining),
      })),
    })),
  },
});

export const machineShop: TerminalCommand = {
  name: 'machine-shop',
  summary: 'say what each machine shop is to do to the parts of a job',
  usage: ['machine-shop JOB [--page FILE]'],
  about: 'Limits in inches are rounded inwards: what keeps to them keeps to the millimetres.',
  options: [
    ...storeOptions,
    { name: 'page', value: 'FILE', says: 'write the instruction as a page to print' },
  ],
  words: [1, 1],
  run: (given) =>
    inJob<Outcome>(given, async ({ job }) => {
      const sheets = machineShopSheetsOf(job);
      const path = lastValue(given, 'page');
      if (path === undefined) return answer(shown(job, sheets));
      const file = await writeWhole(path, machineShopPage(job, sheets), given.world);
      if (file.kind === 'refused') return file;
      return answer({
        text: `Instruction for ${sheets.length} machine shops written to ${plain(file.value)}`,
        json: { file: file.value, ...(shown(job, sheets).json as object) },
      });
    }),
};
