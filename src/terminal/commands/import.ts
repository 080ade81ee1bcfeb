/** @module `endfloat import`: takes a job with its journal and pictures from an exported file or a record page, once it verifies. */
import type { JobEvent } from '../../job/event.ts';
import { answer } from '../../quantity/refusal.ts';
import { verifyRecord } from '../../record/verify.ts';
import { answerNo, type Outcome, type TerminalCommand } from '../command.ts';
import { textOf } from '../input-file.ts';
import { missingLines } from '../missing-pictures.ts';
import { plain } from '../plain.ts';
import { inWorkshop, storeOptions } from '../workshop.ts';

/** How far two journals of one job are the same. */
const sameUntil = (here: readonly JobEvent[], there: readonly JobEvent[]): number => {
  const at = here.findIndex((event, index) => event.hash !== there[index]?.hash);
  return at < 0 ? here.length : at;
};

export const importJob: TerminalCommand = {
  name: 'import',
  summary: 'take in a job from an exported file or a record page',
  usage: ['import FILE'],
  about:
    'The file must verify. A job that is here already is carried on where its journal is the beginning of the one in the file.',
  options: storeOptions,
  words: [1, 1],
  run: async (given) => {
    const [path = ''] = given.words;
    const text = await textOf(path, given.world);
    if (text.kind === 'refused') return text;
    const verified = verifyRecord(text.value);
    if (verified.kind === 'not verified')
      return answerNo({ ...verified.refusal, what: `it does not verify: ${verified.refusal.what}` });
    const { job, events, pictures, missing } = verified;
    const id = events[0]?.job ?? '';
    const { number } = job.booked;
    return inWorkshop<Outcome>(given, true, async (store) => {
      const here = await store.readFrom(id, 0);
      const same = sameUntil(here, events);
      if (same < here.length && same < events.length)
        return answerNo({
          what: `${number} is here already and differs from event ${same + 1} on`,
          where: path,
          remedy: 'look at both and keep the one that you trust',
        });
      for (const [hash, bytes] of pictures) {
        const put = await store.putPicture(hash, bytes);
        if (put.kind === 'refused') return answerNo(put.refusal);
      }
      const fresh = events.slice(same);
      const appended = fresh.length === 0 ? undefined : await store.append(id, same, fresh);
      if (appended?.kind === 'stale')
        return answerNo({
          what: 'somebody wrote in it at the same moment',
          where: number,
          remedy: 'ask again',
        });
      return answer({
        text: `${plain(number)}: ${fresh.length} events taken in, ${same} were here${pictures.size > 0 ? `; ${pictures.size} pictures` : ''}.`,
        json: {
          imported: true,
          number,
          job: id,
          events: fresh.length,
          were: same,
          pictures: pictures.size,
          missing,
        },
        warnings: missingLines(missing),
      });
    });
  },
};
