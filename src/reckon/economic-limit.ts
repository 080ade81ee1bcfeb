/** @module Repair against replacement: what an hour costs either way, and up to what price a repair pays. */
import { parseDecimal } from '../quantity/decimal.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { quantityInput, textInput } from './inputs.ts';
import { quantityOf, type Reckoning, type Values } from './reckoning.ts';

interface Way {
  /** In the shop's currency. */
  readonly price: number;
  /** Hours that it gives, above 0. */
  readonly hours: number;
}

/**
 * The price up to which a repair costs no more for each hour than a replacement does.
 *
 * price = price of the replacement × hours of the repair / hours of the replacement
 *
 * @param repairHours  hours that the repair gives, above 0
 * @param replacement  its price in the shop's currency and its hours, above 0
 * @returns price in the same currency
 * @source  equal price for each hour; TB 43-0154 holds the estimate against a share of the price of a replacement instead
 * @example breakEvenPrice(4500, { price: 6200, hours: 9000 }) // 3100
 */
export const breakEvenPrice = (repairHours: number, replacement: Way): number =>
  (replacement.price * repairHours) / replacement.hours;

const priceIn = ({ texts }: Values, key: string): Answer<number> => {
  const read = parseDecimal(texts[key] ?? '');
  if (read.kind === 'refused')
    return refuse(read.refusal.what, key, 'write the price in figures, without the currency');
  return read.value.value > 0
    ? answer(read.value.value)
    : refuse('a price of nothing or less', key, 'give what it costs in all');
};

/**
 * The two ways as given to the sum.
 *
 * @param values  read by the sum's list of inputs
 * @returns prices in the shop's currency, hours; refuses what is no price, and prices and hours of nothing
 * @source  none: it looks up
 * @example waysGiven({ quantities: {}, texts: { repair: 'much' } }) // refused
 */
export const waysGiven = (values: Values): Answer<{ readonly repair: Way; readonly replacement: Way }> => {
  const repair = priceIn(values, 'repair');
  if (repair.kind === 'refused') return repair;
  const replacement = priceIn(values, 'replacement');
  if (replacement.kind === 'refused') return replacement;
  const hoursOf = (key: string): number => quantityOf(values, key).value;
  for (const key of ['repair-hours', 'replacement-hours'])
    if (!(hoursOf(key) > 0)) return refuse('no hours', key, 'give the hours that it can be counted on for');
  return answer({
    repair: { price: repair.value, hours: hoursOf('repair-hours') },
    replacement: { price: replacement.value, hours: hoursOf('replacement-hours') },
  });
};

const cents = (value: number): number => Math.round(value * 100) / 100;
const percent = (share: number): number => Math.round(share * 1000) / 10;

const hoursInput = (key: string, title: string, example: string) =>
  quantityInput(key, 'time', title, 'above 0', example);
const priceInput = (key: string, title: string, example: string) =>
  textInput(key, title, example, { range: 'above 0, without the currency' });

export const economicLimitReckoning: Reckoning = {
  name: 'economic-limit',
  title: 'Repair against replacement: price for each hour, and up to what price a repair pays',
  inputs: [
    priceInput('repair', 'price of the repair in all: parts, machining, labour', '1455.50'),
    hoursInput('repair-hours', 'hours that the repaired engine may be counted on for', '4000h'),
    priceInput('replacement', 'price of a new or exchange engine, fitted', '6200.00'),
    hoursInput('replacement-hours', 'hours that it may be counted on for', '9000h'),
    quantityInput(
      'limit',
      'ratio',
      'share of the replacement price that a repair may cost, where a rule sets one, for example 85 %',
      'above 0',
      '85%',
      { optional: true },
    ),
  ],
  formula:
    'price for each hour = price / hours; repair pays up to replacement price × repair hours / replacement hours',
  source:
    'equal price for each hour; TB 43-0154 allows 85 % of the price of a replacement for small engines, elsewhere 50 to 70 % is common practice, no source; none is taken unless given',
  reckon: (values) => {
    const ways = waysGiven(values);
    if (ways.kind === 'refused') return ways;
    const { repair, replacement } = ways.value;
    const limit = values.quantities.limit?.value;
    if (limit !== undefined && !(limit > 0))
      return refuse(
        'a limit of nothing or less',
        'limit',
        'give it as a share, for example 85 %, or leave it out',
      );
    const [byRepair, byReplacement] = [repair, replacement].map(({ price, hours }) => price / hours);
    const pays = (byRepair ?? 0) <= (byReplacement ?? 0);
    const share = repair.price / replacement.price;
    const beyond = limit !== undefined && share > limit;
    return answer({
      results: {
        'repair-per-thousand-hours': { value: cents((byRepair ?? 0) * 1000), unit: '' },
        'replacement-per-thousand-hours': { value: cents((byReplacement ?? 0) * 1000), unit: '' },
        'repair-pays-up-to': { value: cents(breakEvenPrice(repair.hours, replacement)), unit: '' },
        'share-of-replacement': { value: percent(share), unit: '%' },
        ...(limit !== undefined && {
          'limit-by-rule': { value: cents(limit * replacement.price), unit: '' },
        }),
        'cheaper-by-the-hour': { value: pays ? 'repair' : 'replacement', unit: '' },
        ...(limit !== undefined && {
          'by-rule': { value: beyond ? 'replace' : 'may be repaired', unit: '' },
        }),
      },
      notes: [
        'Prices and hours are taken as known; days out of work, fuel and what the old engine fetches are not in it.',
        ...(beyond === pays && limit !== undefined
          ? ['The rule and the price for each hour do not agree: say which of them decides.']
          : []),
      ],
    });
  },
};
