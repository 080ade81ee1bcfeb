/** @module `endfloat template`: a blank readings sheet for an engine type, in the order in which hands go. */
import { readingsTemplate } from '../../measure/import-readings.ts';
import { answer } from '../../quantity/refusal.ts';
import { lastValue, type TerminalCommand } from '../command.ts';
import { engineOnFile, notUsable } from '../engine-file.ts';
import { writeWhole } from '../output-file.ts';
import { plain } from '../plain.ts';

export const template: TerminalCommand = {
  name: 'template',
  summary: 'write a blank readings sheet (CSV) for an engine type',
  usage: ['template ENGINE-FILE'],
  about: 'Without --to the sheet goes to stdout.',
  options: [{ name: 'to', value: 'PATH', says: 'the file to write' }],
  words: [1, 1],
  run: async (given) => {
    const read = await engineOnFile(given.words[0] ?? '', given.world);
    if (read.kind === 'refused') return read;
    if (!read.value.engine) return answer(notUsable(read.value));
    const text = readingsTemplate(read.value.engine);
    const path = lastValue(given, 'to');
    if (path === undefined) return answer({ text, json: { csv: text } });
    const written = await writeWhole(path, text, given.world);
    if (written.kind === 'refused') return written;
    return answer({ text: `Blank sheet written to ${plain(written.value)}`, json: { file: written.value } });
  },
};
