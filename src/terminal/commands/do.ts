/** @module `endfloat do`: asks things of a job, as every screen does, so that a whole job can be carried here. */
import type { Request } from '../../job/command.ts';
import type { OpenJob } from '../../job/job.ts';
import { readRequest } from '../../job/read-command.ts';
import { type Answer, answer, type Refusal, refuse } from '../../quantity/refusal.ts';
import { cautionLines, cautionsSince } from '../cautions.ts';
import { answerNo, type Given, lastValue, type Outcome, type TerminalCommand } from '../command.ts';
import { textOf } from '../input-file.ts';
import { didYouMean } from '../nearest.ts';
import { plain } from '../plain.ts';
import { jobRequests } from '../requests/job-request.ts';
import { keysText, readSomeValues, readValues } from '../requests/read-values.ts';
import { readRequests } from '../requests/request-file.ts';
import type { JobRequest } from '../requests/typed-request.ts';
import { carryOut, inJob, signingOptions } from '../workshop.ts';

const names = jobRequests.map(({ name }) => name);

const helpLine = (one: JobRequest): string =>
  `  ${one.name} ${keysText(one.keys)}${'others' in one ? ` ${one.others}` : ''}`;

/** Requests, or that the job itself says no to them. */
type Asked = Answer<readonly Request[]> | { readonly kind: 'no'; readonly refusal: Refusal };

type Asking = (job: OpenJob) => Asked;

const asTyped = (given: Given): Answer<Asking> => {
  const [name = '', command, ...words] = given.words;
  if (command === undefined)
    return refuse('no command is given', 'endfloat do', `the commands are ${names.join(', ')}`);
  const asked = jobRequests.find((one) => one.name === command);
  if (!asked)
    return refuse(
      `there is no command ${plain(command).slice(0, 60)} for a job`,
      'endfloat do',
      didYouMean(command, names, `the commands are ${names.join(', ')}`),
    );
  const where = `endfloat do ${plain(name)} ${asked.name}`;
  if ('ask' in asked) {
    const typed = readSomeValues(words, asked.keys, where);
    if (typed.kind === 'refused') return typed;
    return answer((job) => {
      const request = asked.ask(typed.value.values, typed.value.others, job);
      return request.kind === 'refused' ? { kind: 'no', refusal: request.refusal } : answer([request.value]);
    });
  }
  const values = readValues(words, asked.keys, where);
  if (values.kind === 'refused') return values;
  return answer((job) => {
    const request = readRequest({ kind: asked.kind, ...asked.body(values.value, job) });
    return request.kind === 'refused' ? request : answer([request.value]);
  });
};

const fromFile = async (path: string, given: Given): Promise<Answer<Asking>> => {
  const [, command] = given.words;
  if (command !== undefined)
    return refuse('a command and a file of requests are given', 'endfloat do', 'give one of the two');
  const text = await textOf(path, given.world);
  if (text.kind === 'refused') return text;
  const requests = readRequests(text.value);
  return requests.kind === 'refused' ? requests : answer(() => requests);
};

export const doInJob: TerminalCommand = {
  name: 'do',
  summary: 'ask things of a job: take a reading, note a finding, fit a pack, sign an operation …',
  usage: ['do JOB COMMAND key=value…', 'do JOB --requests FILE'],
  about: `Commands and their keys:\n${jobRequests.map(helpLine).join('\n')}\nA plan is chosen with endfloat choose. A file of requests, in JSON, is carried out whole or not at all.\nExit code 1 when the job refuses.`,
  options: [
    ...signingOptions,
    { name: 'requests', value: 'FILE', says: 'requests as JSON, a list or one a line; - is standard input' },
  ],
  words: [1, 64],
  run: async (given) => {
    const path = lastValue(given, 'requests');
    const asking = path === undefined ? asTyped(given) : await fromFile(path, given);
    if (asking.kind === 'refused') return asking;
    return inJob<Outcome>(given, async ({ id, job }, store) => {
      const requests = asking.value(job);
      if (requests.kind === 'refused') return requests;
      if (requests.kind === 'no') return answerNo(requests.refusal);
      const carried = await carryOut(store, given, id, job, requests.value);
      if (carried.kind === 'refused') return carried;
      if (carried.value.kind === 'no') {
        const { refusal, at } = carried.value;
        const where = path === undefined ? refusal.where : `request ${at + 1}, ${refusal.where}`;
        return answerNo({ ...refusal, where });
      }
      const { events } = carried.value;
      const cautions = await cautionsSince(store, carried.value);
      return answer({
        text: [
          ...events.map(
            (event) => `${plain(job.booked.number)}: ${event.fact.kind}, event ${event.sequence}.`,
          ),
          ...cautionLines(cautions),
        ].join('\n'),
        json: { done: true, events, cautions },
      });
    });
  },
};
