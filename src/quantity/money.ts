/** @module Money in whole hundredths: read as typed, and a share of it rounded once, half up. */
import { formatFigure } from './figure.ts';
import { type Answer, answer, refuse } from './refusal.ts';
import { amountOf, type Typed } from './typed.ts';

/** Nothing in a workshop costs more; with it every product below stays a whole number that a double holds. */
export const mostCents = 1_000_000_000;

/**
 * An amount of money as typed, in whole hundredths.
 *
 * @returns hundredths, 0 to a thousand million; refuses what is no amount, or is finer than a hundredth
 * @example readCents('1234,5') // 123450
 */
export const readCents = (text: string): Answer<number> => {
  const [, whole = '', part = ''] = /^(\d{1,9})(?:[.,](\d{1,2}))?$/.exec(text.trim()) ?? [];
  const cents = whole === '' ? Number.NaN : Number(whole) * 100 + Number(part.padEnd(2, '0'));
  return cents <= mostCents
    ? answer(cents)
    : refuse(
        `${text.trim() === '' ? 'nothing' : text.trim()} is no amount of money`,
        '',
        'type it like 1234.50',
      );
};

/** The quotient of two whole numbers, half up; exact as long as both are. */
const halfUp = (over: number, under: number): number => {
  const rest = over % under;
  return (over - rest) / under + (2 * rest >= under ? 1 : 0);
};

/** Whole hundredths as they are typed: `1234.50`. */
export const centsText = (cents: number): string => formatFigure(cents / 100, 2);

const million = 1_000_000;

/**
 * A tax on a sum: the sum times the rate, rounded once to the nearest hundredth, half up.
 *
 * @param cents  the sum before tax, whole hundredths, 0 to a thousand million
 * @param rate   from 0 to 100 %, four decimals of a per cent at most
 * @returns whole hundredths; refuses a rate that cannot be read or reckoned exactly
 */
export const taxOn = (cents: number, rate: Typed): Answer<number> => {
  const value = amountOf(rate, 'ratio');
  if (value.kind === 'refused') return value;
  if (!(value.value >= 0 && value.value <= 1))
    return refuse(`${rate.text} ${rate.unit} is no rate of tax`, '', 'type it like 19 %, from 0 to 100 %');
  if (!(cents >= 0 && cents <= mostCents))
    return refuse('the sum is more than can be reckoned exactly', '', 'part it into several');
  const millionths = Math.round(value.value * million);
  return Math.abs(value.value * million - millionths) <= 1e-5
    ? answer(halfUp(cents * millionths, million))
    : refuse(
        'the rate has more decimals than can be reckoned exactly',
        '',
        'give four of a per cent at most',
      );
};

/**
 * What hours of labour cost: hours times the rate an hour, rounded once to the nearest hundredth, half up.
 *
 * @param hours        from 0 to 100,000 h, a thousandth of an hour at the finest
 * @param centsAnHour  whole hundredths, 0 to ten million
 * @returns whole hundredths; refuses hours that cannot be read or reckoned exactly
 */
export const labourCost = (hours: Typed, centsAnHour: number): Answer<number> => {
  const value = amountOf(hours, 'time');
  if (value.kind === 'refused') return value;
  if (!(value.value >= 0 && value.value <= 100_000))
    return refuse(`${hours.text} ${hours.unit} is no time that a job takes`, '', 'type it like 14.5 h');
  const thousandths = Math.round(value.value * 1000);
  return Math.abs(value.value * 1000 - thousandths) <= 1e-6
    ? answer(halfUp(thousandths * centsAnHour, 1000))
    : refuse('the hours have more decimals than can be reckoned exactly', '', 'give three at most');
};
