/** @module `endfloat take`: takes the readings of a file into a job, with the instruments that they were taken with. */

import { doubtsIn } from '../../job/doubted.ts';
import { requestsToTake } from '../../job/readings-to-take.ts';
import { answer } from '../../quantity/refusal.ts';
import { inUse } from '../../register/register.ts';
import { registerNow } from '../../store/register-now.ts';
import { cautionLines, cautionsSince } from '../cautions.ts';
import { answerNo, type Outcome, type TerminalCommand } from '../command.ts';
import { plain } from '../plain.ts';
import { showing } from '../progress.ts';
import { readingsOnFile } from '../readings-on-file.ts';
import { notTaken, rowLines } from '../row-lines.ts';
import { doubtLines } from '../verdict-table.ts';
import { carryOut, inJob, signingOptions } from '../workshop.ts';

export const take: TerminalCommand = {
  name: 'take',
  summary: 'take the readings of a file into a job',
  usage: ['take JOB READINGS-FILE'],
  about:
    'All of them or, where one is refused, none. Instruments come from the file, else from the register.',
  options: signingOptions,
  words: [2, 2],
  run: async (given) => {
    const [, path = ''] = given.words;
    return inJob<Outcome>(given, async ({ id, job }, store) => {
      const register = inUse(await registerNow(store));
      const read = await readingsOnFile(path, given.world, job.sheet.engine, [
        ...register,
        ...job.sheet.instruments.values(),
      ]);
      if (read.kind === 'refused') return read;
      const file = read.value;
      if (file.troubles.some(({ weight }) => weight === 'error'))
        return answer(notTaken(path, file.troubles));
      const requests = requestsToTake(file, job, register);
      const carried = await showing('Taking readings', given.world, () =>
        carryOut(store, given, id, job, requests),
      );
      if (carried.kind === 'refused') return carried;
      if (carried.value.kind === 'no') return answerNo(carried.value.refusal);
      const after = carried.value.job;
      const doubts = after.kind === 'open' ? doubtsIn(after) : [];
      const cautions = await cautionsSince(store, carried.value);
      return answer({
        text: [
          `${plain(job.booked.number)}: ${file.readings.length} readings taken.`,
          ...doubtLines(doubts),
          ...cautionLines(cautions),
        ].join('\n'),
        json: { taken: file.readings.length, doubts, cautions },
        warnings: rowLines(path, file.troubles),
      });
    });
  },
};
