/** @module `endfloat book-in`: begins a job with the engine type file as it stands now. */

import type { Request } from '../../job/command.ts';
import { readRequest } from '../../job/read-command.ts';
import { scopeNow } from '../../job/scope-words.ts';
import { formerWords } from '../../measure/former.ts';
import { readRule } from '../../measure/read-rule.ts';
import { answer } from '../../quantity/refusal.ts';
import { slipChancesNow } from '../../register/slip-chance.ts';
import { registerNow } from '../../store/register-now.ts';
import { answerNo, type Outcome, type TerminalCommand } from '../command.ts';
import { engineOnFile, notUsable } from '../engine-file.ts';
import { formerNamed } from '../former-named.ts';
import { plain } from '../plain.ts';
import { figure, type Key, names, number, optional, text } from '../requests/keys.ts';
import { keysText, readValues } from '../requests/read-values.ts';
import { listed } from '../requests/values.ts';
import { carryOut, inWorkshop, signingOptions } from '../workshop.ts';

const keys: readonly Key[] = [
  text('owner', '"Gullwick Sluice Company"'),
  text('plate', 'QF-0417'),
  figure('hours', 'time', '7400h'),
  text('complaint', '"low oil pressure when hot"'),
  optional(text('currency', 'crowns')),
  optional(text('number', 'J-12')),
  optional(text('former', 'J-3')),
  optional(text('shop', '"Saltmarsh Bench & Bore"')),
  optional(number('conformance', '0.95')),
  optional(text('rule', '"simple 4"')),
  optional(figure('hours-wanted', 'time', '5000h')),
  optional(number('days-wanted', '20')),
  optional(names('reach', 'pump.1, head')),
  optional(names('also', 'lift-flywheel')),
];

/** How far it goes, where it is not the whole engine. */
const setScope = (reach: readonly unknown[], also: readonly unknown[]): readonly Request[] =>
  reach.length + also.length === 0
    ? []
    : [
        {
          kind: 'set scope',
          reach: reach.map(String),
          ...(also.length === 0 ? {} : { also: also.map(String) }),
          says: 'as booked in',
        },
      ];

/** The next number after the greatest that is written J-n. */
const nextNumber = (numbers: readonly string[]): string => {
  const used = numbers.map((number) => Number(/^J-(\d{1,9})$/i.exec(number)?.[1] ?? 0));
  return `J-${Math.max(0, ...used) + 1}`;
};

export const bookIn: TerminalCommand = {
  name: 'book-in',
  summary: 'begin a job: whose engine, which, why',
  usage: ['book-in ENGINE-FILE key=value…'],
  about: `Keys: ${keysText(keys)}\nWithout a number the next free J-number is taken; without a conformance 0.95. Currency and shop are those of\nendfloat workshop where none are given.\nWhere the same engine was overhauled here before, its sizes as it went are brought: of another time by the job’s number,\nof none by former=none.\nReach names places or kinds of place of an overhaul that goes no further, also what is done as well; without them it is\nthe whole engine, and set-scope sets it later.\nA rule is guarded 95 % (ISO 14253-1, taken where none is given), simple 4 or shared risk 50 %.`,
  options: signingOptions,
  words: [1, 32],
  run: async (given) => {
    const [path = '', ...words] = given.words;
    const read = await engineOnFile(path, given.world);
    if (read.kind === 'refused') return read;
    if (!read.value.engine) return answer(notUsable(read.value));
    const values = readValues(words, keys, 'endfloat book-in');
    if (values.kind === 'refused') return values;
    const { engine } = read.value;
    const engineType = new TextDecoder().decode(read.value.bytes);
    return inWorkshop<Outcome>(given, true, async (store) => {
      const { workshop } = await registerNow(store);
      const numbers = (await store.list()).map((line) => line.number);
      const {
        hours,
        'hours-wanted': hoursWanted,
        'days-wanted': daysWanted,
        rule: ruleTyped,
        former: formerTyped,
        reach = [],
        also = [],
        ...rest
      } = values.value;
      const rule = ruleTyped === undefined ? undefined : readRule(String(ruleTyped));
      if (rule?.kind === 'refused') return rule;
      const request = readRequest({
        kind: 'book in',
        number: nextNumber(numbers),
        conformance: 0.95,
        // Refused in words where nobody has said it yet.
        currency: workshop?.currency ?? '',
        ...(workshop && { shop: workshop.name }),
        ...rest,
        engineType,
        hoursRun: hours,
        ...(hoursWanted === undefined ? {} : { hoursWanted }),
        ...(daysWanted === undefined ? {} : { daysWanted }),
        ...(rule === undefined ? {} : { rule: rule.value }),
      });
      if (request.kind === 'refused') return request;
      const number = request.value.kind === 'book in' ? request.value.number : '';
      if (numbers.some((used) => used.toLowerCase() === number.toLowerCase()))
        return answerNo({
          what: `there is a job ${number} already`,
          where: 'number',
          remedy: 'give another number, or none',
        });
      const id = given.world.newId();
      const former = await formerNamed(store, engine, String(rest.plate), formerTyped);
      if (former.kind === 'refused') return answerNo(former.refusal);
      const chances = slipChancesNow(await registerNow(store));
      const carried = await carryOut(store, given, id, undefined, [
        request.value,
        ...setScope(listed(reach), listed(also)),
        ...(chances.length === 0 ? [] : [{ kind: 'bring slip chances' as const, chances }]),
        ...(former.value ? [{ kind: 'bring former overhaul' as const, ...former.value }] : []),
      ]);
      if (carried.kind === 'refused') return carried;
      if (carried.value.kind === 'no') return answerNo(carried.value.refusal);
      return answer({
        text: [
          `Booked in as ${plain(number)}.`,
          ...(carried.value.job.kind === 'open' && carried.value.job.scopes.length > 0
            ? [plain(`It goes as far as this: ${scopeNow(carried.value.job)}.`)]
            : []),
          ...(former.value ? [plain(`It brings its sizes of ${formerWords(former.value)}.`)] : []),
        ].join('\n'),
        json: { booked: true, number, job: id, ...(former.value && { former: former.value.number }) },
      });
    });
  },
};
