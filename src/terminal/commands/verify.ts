/** @module `endfloat verify`: computes a record again from its journal and says whether it stands. */
import { answer } from '../../quantity/refusal.ts';
import { verifyRecord } from '../../record/verify.ts';
import { answerNo, type TerminalCommand } from '../command.ts';
import { textOf } from '../input-file.ts';
import { missingLines } from '../missing-pictures.ts';
import { plain } from '../plain.ts';

export const verify: TerminalCommand = {
  name: 'verify',
  summary: 'compute a record page or an exported job again and check its chain',
  usage: ['verify FILE'],
  about:
    'Exit code 1 when it does not verify; the first event, figure, picture or line of the page that differs is named. A picture that the journal names and the file does not hold is named too, and does not make the rest untrue.\nA file that was forged whole, chain and all, shows only against the last hash printed on the signed paper.',
  words: [1, 1],
  run: async ({ words: [path = ''], world }) => {
    const text = await textOf(path, world);
    if (text.kind === 'refused') return text;
    const verified = verifyRecord(text.value);
    if (verified.kind === 'not verified')
      return answerNo({ ...verified.refusal, what: `it does not verify: ${verified.refusal.what}` });
    const { job, events, figures, pictures, missing } = verified;
    const { hash } = job.head;
    return answer({
      text: `Verified: ${plain(job.booked.number)}, ${plain(job.sheet.engine.title)}. ${events.length} events unbroken, ${figures} figures the same${pictures.size > 0 ? `, ${pictures.size} pictures as they were taken` : ''}.\nLast hash ${hash}: hold it against the signed paper.`,
      json: {
        verified: true,
        number: job.booked.number,
        engine: job.sheet.engine.title,
        events: events.length,
        figures,
        pictures: pictures.size,
        missing,
        hash,
      },
      warnings: missingLines(missing),
    });
  },
};
