/** @module `endfloat jobs`: the board: every job of the workshop, what it does next, what it waits for, its hours. */
import { isOverdue, spentWords, waitingWords } from '../../job/board-line.ts';
import { answer } from '../../quantity/refusal.ts';
import { timeText } from '../../record/figure-text.ts';
import { leftWords } from '../../work/time-words.ts';
import type { TerminalCommand } from '../command.ts';
import { table } from '../table.ts';
import { inWorkshop, storeOptions } from '../workshop.ts';

export const jobs: TerminalCommand = {
  name: 'jobs',
  summary: 'list the jobs of the workshop: what each does next, what it waits for, its hours',
  usage: ['jobs'],
  options: storeOptions,
  words: [0, 0],
  run: (given) =>
    inWorkshop(given, false, async (store) => {
      const lines = await store.list();
      const today = given.world.now();
      const rows = lines.map(({ board, ...line }) => [
        line.number,
        line.phase,
        line.engine,
        line.owner,
        board.next?.says ?? 'nothing is left to do',
        board.waitsFor.map((one) => waitingWords(one, today)).join('; '),
        spentWords(board),
        leftWords(board),
        timeText(line.changed),
      ]);
      const heads = ['Job', 'Stands in', 'Engine', 'Owner', 'Next', 'Waits for'].map((head) => ({ head }));
      return answer({
        text:
          rows.length === 0
            ? 'No jobs yet: book an engine in with endfloat book-in.'
            : table(
                [
                  ...heads,
                  { head: 'Hours', right: true },
                  { head: 'Left', right: true },
                  { head: 'Changed' },
                ],
                rows,
              ),
        json: {
          jobs: lines.map((line) => ({
            ...line,
            overdue: line.board.waitsFor.some((one) => isOverdue(one, today)),
          })),
        },
      });
    }),
};
