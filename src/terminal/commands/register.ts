/** @module `endfloat register`: enters, checks, calibrates, withdraws instruments, and says what that puts in question. */
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { readRegisterRequest } from '../../register/read.ts';
import { cautionText, standingInRegister } from '../../register/standing.ts';
import { registerWords } from '../../register/words.ts';
import { inQuestionNow, registerNow } from '../../store/register-now.ts';
import type { Store } from '../../store/sql-store.ts';
import { askRegister } from '../ask-register.ts';
import { answerNo, type Given, type Outcome, type TerminalCommand } from '../command.ts';
import { inQuestionText } from '../in-question-text.ts';
import { didYouMean } from '../nearest.ts';
import { plain } from '../plain.ts';
import { keysText, readValues } from '../requests/read-values.ts';
import { type RegisterAsk, registerRequests } from '../requests/register-request.ts';
import type { Values } from '../requests/values.ts';
import { inWorkshop, signingOptions } from '../workshop.ts';

const names = registerRequests.map(({ name }) => name);

const nameIn = (request: object): string => {
  if ('name' in request && typeof request.name === 'string') return request.name;
  const instrument = 'instrument' in request ? request.instrument : undefined;
  return typeof instrument === 'object' && instrument !== null ? nameIn(instrument) : '';
};

const carried = async (
  given: Given,
  store: Store,
  asked: RegisterAsk,
  values: Values,
): Promise<Answer<Outcome>> => {
  const { world } = given;
  const before = await registerNow(store);
  const request = readRegisterRequest({ kind: asked.kind, ...asked.body(values, before) });
  if (request.kind === 'refused') return request;
  const done = await askRegister(given, store, before, request.value);
  if (done.kind === 'refused') return done;
  if (done.value.kind === 'no') return answerNo(done.value.refusal);
  const { register, event } = done.value;
  const { fact } = event;
  const name = nameIn(request.value);
  const found = register.instruments.get(name);
  const questions = (await inQuestionNow(store, register)).filter(({ instrument }) => instrument === name);
  const cautions = found ? standingInRegister(found, world.now()) : [];
  return answer({
    text: [
      plain(registerWords(fact)),
      ...cautions.map((caution) => plain(`Caution: ${cautionText(caution)}.`)),
      ...questions.map(inQuestionText),
    ].join('\n'),
    json: { done: true, event, cautions, inQuestion: questions },
  });
};

export const register: TerminalCommand = {
  name: 'register',
  summary: 'enter an instrument in the register, note its check or calibration; say how often slips happen',
  usage: ['register COMMAND key=value…'],
  about: `Commands and their keys:\n${registerRequests.map(({ name, keys }) => `  ${name} ${keysText(keys)}`).join('\n')}\nA check is good where it showed no more off than the instrument is allowed, unless good=no is said. Leave size out\nwhere it shows only how far off it is. A calibration found it good before anything was set right, unless found-good=no.\nHow often a slip happens is once in so many; once-in=0 leaves it out, and endfloat slips lists them.\nExit code 1 when the register refuses.`,
  options: signingOptions,
  words: [1, 64],
  run: async (given) => {
    const [command = '', ...words] = given.words;
    const asked = registerRequests.find((one) => one.name === command);
    if (asked === undefined)
      return refuse(
        `there is no command ${plain(command).slice(0, 60)} for the register`,
        'endfloat register',
        didYouMean(command, names, `the commands are ${names.join(', ')}`),
      );
    const values = readValues(words, asked.keys, `endfloat register ${asked.name}`);
    if (values.kind === 'refused') return values;
    return inWorkshop<Outcome>(given, asked.kind === 'enter instrument', (store) =>
      carried(given, store, asked, values.value),
    );
  },
};
