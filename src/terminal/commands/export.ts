/** @module `endfloat export`: a job with its journal, figures and pictures as one file for another workshop or a stranger. */
import { answer } from '../../quantity/refusal.ts';
import { fileOf } from '../../record/record.ts';
import { picturesOf } from '../../store/pictures.ts';
import { lastValue, type TerminalCommand } from '../command.ts';
import { writeWhole } from '../output-file.ts';
import { plain } from '../plain.ts';
import { inJob, storeOptions } from '../workshop.ts';

export const exportJob: TerminalCommand = {
  name: 'export',
  summary: 'write a job with its journal and pictures, for import elsewhere',
  usage: ['export JOB [--to PATH]'],
  about: 'Without --to the job goes to stdout.',
  options: [...storeOptions, { name: 'to', value: 'PATH', says: 'the file to write' }],
  words: [1, 1],
  run: (given) =>
    inJob(given, async ({ job, events }, store) => {
      const text = fileOf(job, events, await picturesOf(store, job));
      const path = lastValue(given, 'to');
      if (path === undefined) return answer({ text, json: JSON.parse(text) as unknown });
      const written = await writeWhole(path, text, given.world);
      if (written.kind === 'refused') return written;
      return answer({
        text: `${plain(job.booked.number)} with ${events.length} events written to ${plain(written.value)}`,
        json: { number: job.booked.number, file: written.value, events: events.length },
      });
    }),
};
