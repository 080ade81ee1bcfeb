/** @module `endfloat record`: writes the record of a job as a page that stands alone and prints. */
import { answer } from '../../quantity/refusal.ts';
import { pageOf } from '../../record/record.ts';
import { picturesOf } from '../../store/pictures.ts';
import { lastValue, type TerminalCommand } from '../command.ts';
import { fileNameOf, writeWhole } from '../output-file.ts';
import { plain } from '../plain.ts';
import { inJob, storeOptions } from '../workshop.ts';

export const record: TerminalCommand = {
  name: 'record',
  summary: 'write the record of a job as a page that stands alone and prints',
  usage: ['record JOB [--to PATH]'],
  options: [
    ...storeOptions,
    { name: 'to', value: 'PATH', says: 'where to write it, else record-JOB.html here' },
  ],
  words: [1, 1],
  run: (given) =>
    inJob(given, async ({ job, events }, store) => {
      const path = lastValue(given, 'to') ?? `record-${fileNameOf(job.booked.number)}.html`;
      const written = await writeWhole(path, pageOf(job, events, await picturesOf(store, job)), given.world);
      if (written.kind === 'refused') return written;
      return answer({
        text: `Record of ${plain(job.booked.number)} written to ${plain(written.value)}\nOpen it in a browser to print it; endfloat verify checks it.`,
        json: { number: job.booked.number, file: written.value, events: events.length, hash: job.head.hash },
      });
    }),
};
