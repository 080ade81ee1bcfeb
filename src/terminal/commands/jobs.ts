/** @module `endfloat jobs`: every job of the workshop, last changed first. */
import { answer } from '../../quantity/refusal.ts';
import { timeText } from '../../record/figure-text.ts';
import type { TerminalCommand } from '../command.ts';
import { table } from '../table.ts';
import { inWorkshop, storeOptions } from '../workshop.ts';

export const jobs: TerminalCommand = {
  name: 'jobs',
  summary: 'list the jobs of the workshop',
  usage: ['jobs'],
  options: storeOptions,
  words: [0, 0],
  run: (given) =>
    inWorkshop(given, false, async (store) => {
      const lines = await store.list();
      const rows = lines.map((line) => [
        line.number,
        line.phase,
        line.engine,
        line.plate,
        line.owner,
        String(line.readings),
        timeText(line.changed),
      ]);
      const heads = ['Job', 'Stands in', 'Engine', 'Plate', 'Owner'].map((head) => ({ head }));
      return answer({
        text:
          rows.length === 0
            ? 'No jobs yet: book an engine in with endfloat book-in.'
            : table([...heads, { head: 'Readings', right: true }, { head: 'Changed' }], rows),
        json: { jobs: lines },
      });
    }),
};
