/** @module How what the workshop says of itself is typed: each key changes its own part, the others stay. */
import { centsText, readCents } from '../../quantity/money.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { readTyped, typedText } from '../../quantity/typed.ts';
import type { FixedLabour, Tax, WorkshopSays } from '../../register/workshop.ts';
import { plain } from '../plain.ts';
import { type Key, number, optional, text } from './keys.ts';
import type { Values } from './values.ts';

/** Each part of a list is read for itself; `none` is an empty one. */
const listOf = <Part>(
  name: string,
  example: string,
  mark: RegExp,
  read: (part: string) => Answer<Part>,
): Key => ({
  name,
  needed: false,
  example: `"${example}"`,
  read: (typed) => {
    const parts: Part[] = [];
    for (const part of typed.trim() === 'none' ? [] : typed.split(mark)) {
      if (part.trim() === '') continue;
      const one = read(part.trim());
      if (one.kind === 'refused')
        return refuse(one.refusal.what, `${name}=${plain(part)}`, `write for example ${name}="${example}"`);
      parts.push(one.value);
    }
    return answer(parts);
  },
});

const readTax = (part: string): Answer<Tax> => {
  const [, name = '', figure = ''] = /^(.*\S)\s+([\d.,]+\s*%)$/.exec(part) ?? [];
  if (name === '') return refuse('it is not a name and a rate', '', '');
  const rate = readTyped(figure, 'ratio');
  return rate.kind === 'refused' ? rate : answer({ name, rate: rate.value });
};

const readLine = (part: string): Answer<FixedLabour> => {
  const [, says = '', price = ''] = /^(.*\S)\s+([\d.,]+)$/.exec(part) ?? [];
  if (says === '') return refuse('it is not what is done and its price', '', '');
  const cents = readCents(price);
  return cents.kind === 'refused' ? cents : answer({ says, cents: cents.value });
};

const money = (name: string, example: string): Key => ({ name, needed: false, example, read: readCents });

export const workshopKeys: readonly Key[] = [
  optional(text('name', '"Saltmarsh Bench & Bore"')),
  listOf('address', 'Slip Lane 3; Saltmarsh', /;/, answer<string>),
  optional(text('currency', 'crowns')),
  listOf('taxes', 'sales tax 12 %; quay due 1.5 %', /;/, readTax),
  money('labour-rate', '42.00'),
  listOf('labour', 'strip, clean and measure 180.00; build and run in 260.00', /;/, readLine),
  optional(number('valid-days', '30')),
  optional(text('terms', '"half before work begins"')),
];

const blankWorkshop: WorkshopSays = {
  name: '',
  address: [],
  currency: '',
  taxes: [],
  labour: [],
  validDays: 30,
  terms: '',
};

/** As described before, with what was typed in its place. */
export const describedBy = (
  { 'labour-rate': labourRate, 'valid-days': validDays, ...values }: Values,
  before: WorkshopSays = blankWorkshop,
): Values => {
  const { name, address, currency, taxes, labour, terms, validDays: days, labourRate: rate } = before;
  return {
    name,
    address,
    currency,
    taxes,
    labour,
    terms,
    validDays: validDays ?? days,
    ...((labourRate ?? rate) === undefined ? {} : { labourRate: labourRate ?? rate }),
    ...values,
  };
};

/** In the order in which the keys are. */
export const workshopRows = (says: WorkshopSays): readonly (readonly [string, string])[] => [
  ['name', says.name],
  ['address', says.address.join('; ')],
  ['currency', says.currency],
  ['taxes', says.taxes.map(({ name, rate }) => `${name} ${typedText(rate)}`).join('; ') || 'none'],
  ['labour-rate', says.labourRate === undefined ? 'none' : `${centsText(says.labourRate)} an hour`],
  ['labour', says.labour.map((line) => `${line.says} ${centsText(line.cents)}`).join('; ') || 'none'],
  ['valid-days', String(says.validDays)],
  ['terms', says.terms],
];
