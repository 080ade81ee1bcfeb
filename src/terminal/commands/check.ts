/** @module `endfloat check`: what is wrong in an engine type file, by line and column. */
import { workProved } from '../../engine/lint/work-proved.ts';
import { answer } from '../../quantity/refusal.ts';
import type { TerminalCommand } from '../command.ts';
import { counted } from '../counted.ts';
import { engineOnFile, troubleLine } from '../engine-file.ts';
import { plain } from '../plain.ts';

export const check: TerminalCommand = {
  name: 'check',
  summary: 'say what is wrong in an engine type file',
  usage: ['check ENGINE-FILE'],
  about:
    'Each trouble is one line: file:line:column: error or warning: what, where, what to do.\nExit code 1 when there are errors.\nWhere there are none, it says what is proved of the order of work, whichever way it is worked.',
  words: [1, 1],
  run: async ({ words: [path = ''], world }) => {
    const read = await engineOnFile(path, world);
    if (read.kind === 'refused') return read;
    const { engine, troubles } = read.value;
    const errors = troubles.filter(({ weight }) => weight === 'error').length;
    const warnings = troubles.length - errors;
    const title = engine === undefined ? '' : `${plain(engine.title)}, version ${engine.version}: `;
    const proofs = engine === undefined ? [] : workProved(engine);
    const usable = engine !== undefined && errors === 0;
    return answer({
      text: [
        ...troubles.map((trouble) => troubleLine(path, trouble)),
        `${title}${counted(errors, 'error')}, ${counted(warnings, 'warning')}`,
        ...proofs.map(({ says, proved }) => `${proved ? 'proved: ' : 'not proved: '}${says}`),
      ].join('\n'),
      json: {
        usable,
        ...(engine && { engine: { id: engine.id, title: engine.title, version: engine.version } }),
        errors,
        warnings,
        troubles,
        proofs,
      },
      ...(usable ? {} : { no: true as const }),
    });
  },
};
