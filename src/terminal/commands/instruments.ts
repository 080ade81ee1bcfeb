/** @module `endfloat instruments`: the register of instruments, each as it stands, or one with its history. */
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { typedText } from '../../quantity/typed.ts';
import { timeText } from '../../record/figure-text.ts';
import type { InstrumentInQuestion } from '../../register/in-question.ts';
import type { Entry, Register, Registered } from '../../register/register.ts';
import { standingInRegister } from '../../register/standing.ts';
import { checkedWords, entryWords, rangeWords } from '../../register/words.ts';
import { inQuestionNow, registerNow } from '../../store/register-now.ts';
import type { Outcome, TerminalCommand } from '../command.ts';
import { inQuestionText } from '../in-question-text.ts';
import { didYouMean } from '../nearest.ts';
import { plain } from '../plain.ts';
import { table } from '../table.ts';
import { inWorkshop, storeOptions } from '../workshop.ts';

const line = (registered: Registered, today: string): readonly string[] => {
  const { instrument } = registered;
  const against = standingInRegister(registered, today).map(({ says }) => says);
  return [
    instrument.name,
    instrument.kind,
    rangeWords(instrument),
    checkedWords(registered),
    against.length === 0 ? 'good' : against.join('; '),
  ];
};

const json = (registered: Registered, today: string) => ({
  ...registered.instrument,
  ...(registered.withdrawn && { withdrawn: registered.withdrawn }),
  cautions: standingInRegister(registered, today),
});

const list = ({ instruments }: Register, today: string): Outcome => {
  const all = [...instruments.values()].sort((a, b) => (a.instrument.name < b.instrument.name ? -1 : 1));
  return {
    text:
      all.length === 0
        ? 'No instrument is in the register: enter one with endfloat register enter.'
        : table(
            ['Instrument', 'Kind', 'Range', 'Known of it', 'Stands'].map((head) => ({ head })),
            all.map((one) => line(one, today)),
          ),
    json: { instruments: all.map((one) => json(one, today)) },
  };
};

const historyTable = (history: readonly Entry[]): string =>
  table(
    ['When', 'By', 'What', 'Id'].map((head) => ({ head })),
    history.map(({ id, fact, by, at, struckOut }) => [
      timeText(at),
      by,
      `${entryWords(fact)}${struckOut ? ` (struck out by ${struckOut.by}: ${struckOut.why})` : ''}`,
      id,
    ]),
  );

const one = (registered: Registered, today: string, questions: readonly InstrumentInQuestion[]): Outcome => {
  const { instrument, history } = registered;
  const against = standingInRegister(registered, today).map(({ says }) => says);
  const asked = questions.filter((question) => question.instrument === instrument.name);
  return {
    text: [
      `${plain(`${instrument.name}, ${instrument.kind}, ${rangeWords(instrument)}`)}\n`,
      `Reads to ${plain(typedText(instrument.resolution))}, allowed ± ${plain(typedText(instrument.permissibleError))}, repeats within ${plain(typedText(instrument.repeatability))} (1 s)\n`,
      ...(against.length === 0
        ? ['Nothing speaks against it.\n']
        : against.map((says) => `Caution: it ${plain(says)}.\n`)),
      `\nHistory\n${historyTable(history)}`,
      ...asked.map((question) => `\n${inQuestionText(question)}`),
    ].join(''),
    json: { ...json(registered, today), history, inQuestion: asked },
  };
};

const named = async (
  register: Register,
  name: string,
  today: string,
  questions: () => Promise<readonly InstrumentInQuestion[]>,
): Promise<Answer<Outcome>> => {
  const found = register.instruments.get(name);
  if (found !== undefined) return answer(one(found, today, await questions()));
  return refuse(
    `there is no instrument ${plain(name)}`,
    'register',
    didYouMean(name, [...register.instruments.keys()], 'endfloat instruments lists them'),
  );
};

export const instruments: TerminalCommand = {
  name: 'instruments',
  summary: 'list the register of instruments and how each stands, or show one with its history',
  usage: ['instruments', 'instruments NAME'],
  options: storeOptions,
  words: [0, 1],
  run: (given) =>
    inWorkshop(given, false, async (store) => {
      const register = await registerNow(store);
      const today = given.world.now();
      const [name] = given.words;
      return name === undefined
        ? answer(list(register, today))
        : named(register, name, today, () => inQuestionNow(store, register));
    }),
};
