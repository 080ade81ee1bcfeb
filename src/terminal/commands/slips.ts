/** @module `endfloat slips`: the slips that readings are doubted by, how often each happens, and whose figure that is. */
import type { OpenJob } from '../../job/job.ts';
import { chanceWords, knownSlips, priorsWith } from '../../measure/slips/priors.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import type { Register } from '../../register/register.ts';
import { slipChancesNow } from '../../register/slip-chance.ts';
import { slipChanceWords } from '../../register/words.ts';
import { registerNow } from '../../store/register-now.ts';
import { answerNo, type Outcome, type TerminalCommand } from '../command.ts';
import { plain } from '../plain.ts';
import { table } from '../table.ts';
import { carryOut, findJob, inWorkshop, signingOptions } from '../workshop.ts';

/** In words where it is another than usual. */
const other = (usual: string, now: string): string => (now === usual ? 'as usual' : now);

const list = (register: Register, job?: OpenJob): Outcome => {
  const shop = priorsWith(slipChancesNow(register));
  const rows = knownSlips.map((slip) => {
    const { name, says, chance } = slip;
    const here = shop[name] ?? 0;
    const last = register.slipChances.findLast(({ fact }) => fact.slip === name);
    const inJob = job && (job.sheet.priors?.[name] ?? chance);
    return { slip, name, says, usual: chance, here, last, ...(inJob !== undefined && { inJob }) };
  });
  const heads = ['Slip', 'What it is', 'Usually', 'In this shop', ...(job ? [job.booked.number] : []), 'Why'];
  return {
    text: table(
      heads.map((head) => ({ head: plain(head) })),
      rows.map(({ slip, name, says, usual, here, last, inJob }) => [
        name,
        says,
        chanceWords(slip, usual),
        other(chanceWords(slip, usual), chanceWords(slip, here)),
        ...(inJob === undefined ? [] : [other(chanceWords(slip, usual), chanceWords(slip, inJob))]),
        last ? `${slipChanceWords(last.fact)} (${last.by}, ${last.at.slice(0, 10)})` : '',
      ]),
    ),
    json: { slips: rows.map(({ slip, ...row }) => ({ ...row, of: slip.of })) },
  };
};

export const slips: TerminalCommand = {
  name: 'slips',
  summary: 'list the slips that readings are doubted by and how often each happens, here and in a job',
  usage: ['slips', 'slips JOB', 'slips JOB --bring'],
  about:
    'The shop sets a chance with endfloat register slip-chance. A job goes by the chances that it was booked in with,\nuntil the shop’s are brought to it anew.',
  options: [
    ...signingOptions,
    { name: 'bring', says: 'bring the shop’s chances, as they now stand, to the job' },
  ],
  words: [0, 1],
  run: (given) =>
    inWorkshop<Outcome>(given, false, async (store): Promise<Answer<Outcome>> => {
      const register = await registerNow(store);
      const [name] = given.words;
      const bring = given.switches.has('bring');
      if (name === undefined)
        return bring
          ? refuse('no job is named', 'endfloat slips --bring', 'name the job that they are brought to')
          : answer(list(register));
      const found = await findJob(store, name);
      if (found.kind === 'refused') return found;
      const { id, job } = found.value;
      if (!bring) return answer(list(register, job));
      const chances = slipChancesNow(register);
      const carried = await carryOut(store, given, id, job, [{ kind: 'bring slip chances', chances }]);
      if (carried.kind === 'refused') return carried;
      if (carried.value.kind === 'no') return answerNo(carried.value.refusal);
      const after = carried.value.job;
      return answer(list(register, after.kind === 'open' ? after : job));
    }),
};
