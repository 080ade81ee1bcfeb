/** @module `endfloat changes`: what changed between two versions of an engine type, figure by figure. */
import { changesBetween } from '../../engine/edit/changes.ts';
import { answer } from '../../quantity/refusal.ts';
import type { TerminalCommand } from '../command.ts';
import { textOf } from '../input-file.ts';
import { plain } from '../plain.ts';
import { table } from '../table.ts';

export const changes: TerminalCommand = {
  name: 'changes',
  summary: 'say what changed from one engine type file to another',
  usage: ['changes OLD-ENGINE-FILE NEW-ENGINE-FILE'],
  about: 'Comments, layout, the version and the names of who typed in and who checked are no change.',
  words: [2, 2],
  run: async ({ words: [old = '', now = ''], world }) => {
    const before = await textOf(old, world);
    if (before.kind === 'refused') return before;
    const after = await textOf(now, world);
    if (after.kind === 'refused') return after;
    const found = changesBetween(before.value, after.value);
    if (found.kind === 'refused') return found;
    const rows = found.value.map((one) =>
      [one.kind, one.where, one.before ?? '', one.after ?? ''].map((cell) => plain(cell).slice(0, 200)),
    );
    const heads = ['', 'Where', 'Was', 'Is'].map((head) => ({ head }));
    return answer({
      text: rows.length === 0 ? 'Nothing changed.' : table(heads, rows),
      json: { changes: found.value },
    });
  },
};
