/** @module `endfloat in-question`: every reading and joint made with an instrument while it may have been wrong. */
import { answer } from '../../quantity/refusal.ts';
import { inQuestionNow, registerNow } from '../../store/register-now.ts';
import type { TerminalCommand } from '../command.ts';
import { inQuestionText } from '../in-question-text.ts';
import { inWorkshop, storeOptions } from '../workshop.ts';

export const inQuestion: TerminalCommand = {
  name: 'in-question',
  summary: 'list what was measured and tightened with instruments that may have been wrong',
  usage: ['in-question [INSTRUMENT]'],
  about:
    'In question is what was done since an instrument was last found good, where it was found out of tolerance later,\nand what was done after the day on which it was due for calibration. Exit code 0 whether there is any or none.',
  options: storeOptions,
  words: [0, 1],
  run: (given) =>
    inWorkshop(given, false, async (store) => {
      const [name] = given.words;
      const all = await inQuestionNow(store, await registerNow(store));
      const asked = all.filter(({ instrument }) => name === undefined || instrument === name);
      return answer({
        text: asked.length === 0 ? 'Nothing is in question.' : asked.map(inQuestionText).join('\n'),
        json: { instruments: asked },
      });
    }),
};
