/** @module `endfloat do`: asks one thing of a job, as every screen does, so that a whole job can be carried here. */
import { readRequest } from '../../job/read-command.ts';
import { answer, refuse } from '../../quantity/refusal.ts';
import { answerNo, type Outcome, type TerminalCommand } from '../command.ts';
import { didYouMean } from '../nearest.ts';
import { plain } from '../plain.ts';
import { jobRequests } from '../requests/job-request.ts';
import { keysText, readValues } from '../requests/read-values.ts';
import { carryOut, findJob, inWorkshop, signingOptions } from '../workshop.ts';

const names = jobRequests.map(({ name }) => name);

export const doInJob: TerminalCommand = {
  name: 'do',
  summary: 'ask one thing of a job: take a reading, note a finding, fit a pack, sign an operation …',
  usage: ['do JOB COMMAND key=value…'],
  about: `Commands and their keys:\n${jobRequests.map(({ name, keys }) => `  ${name} ${keysText(keys)}`).join('\n')}\nA plan is chosen with endfloat choose. Exit code 1 when the job refuses.`,
  options: signingOptions,
  words: [2, 64],
  run: async (given) => {
    const [name = '', command = '', ...words] = given.words;
    const asked = jobRequests.find((one) => one.name === command);
    if (!asked)
      return refuse(
        `there is no command ${plain(command).slice(0, 60)} for a job`,
        'endfloat do',
        didYouMean(command, names, `the commands are ${names.join(', ')}`),
      );
    const values = readValues(words, asked.keys, `endfloat do ${plain(name)} ${asked.name}`);
    if (values.kind === 'refused') return values;
    return inWorkshop<Outcome>(given, false, async (store) => {
      const found = await findJob(store, name);
      if (found.kind === 'refused') return found;
      const { id, job } = found.value;
      const request = readRequest({ kind: asked.kind, ...asked.body(values.value, job) });
      if (request.kind === 'refused') return request;
      const carried = await carryOut(store, given, id, job, [request.value]);
      if (carried.kind === 'refused') return carried;
      if (carried.value.kind === 'no') return answerNo(carried.value.refusal);
      const [event] = carried.value.events;
      return answer({
        text: `${plain(job.booked.number)}: ${asked.kind}, noted as event ${event?.sequence ?? ''}.`,
        json: { done: true, events: carried.value.events },
      });
    });
  },
};
