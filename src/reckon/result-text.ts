/** @module A result written out for reading: enough digits to check by, none that pretend. */
import { formatFigure } from '../quantity/figure.ts';
import type { Result } from './reckoning.ts';

const digits = (value: number): string => {
  if (value === 0) return '0';
  const places = Math.max(0, Math.min(9, 5 - Math.floor(Math.log10(Math.abs(value)))));
  const text = formatFigure(value, places);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
};

/**
 * The value of a result in words or digits, without its unit.
 *
 * @param result  as a sum gives it
 * @returns six significant digits at most nine decimals deep, without noughts at the end
 * @source  none: it writes out
 * @example valueText({ value: 0.0510000001, unit: 'mm' }) // '0.051'
 */
export const valueText = ({ value }: Result): string => (typeof value === 'string' ? value : digits(value));

/**
 * The unit of a result as it stands behind the value.
 *
 * @param result  as a sum gives it
 * @returns the symbol, nothing for a plain number
 * @source  none: it writes out
 * @example unitText({ value: 0.5, unit: '1' }) // ''
 */
export const unitText = ({ unit }: Result): string => (unit === '1' ? '' : unit);

/** Decimals that show two significant digits of a spread, none more than nine. */
const placesOf = (spread: number): number => Math.max(0, Math.min(9, 1 - Math.floor(Math.log10(spread))));

/**
 * A result with how well it is known, both cut where the spread ends to say anything.
 *
 * @param result    as a sum gives it
 * @param coverage  factor on its standard uncertainty, above 0
 * @returns value and spread as text, the spread to two significant digits; no spread where none is known
 * @source  JCGM 100:2008, 7.2.6: two significant digits of an uncertainty suffice
 * @example knownText({ value: 0.0510000001, unit: 'mm', u: 0.0027472 }, 2) // { value: '0.0510', spread: '0.0055' }
 */
export const knownText = (
  result: Result,
  coverage: number,
): { readonly value: string; readonly spread?: string } => {
  const { value, u } = result;
  if (typeof value === 'string' || u === undefined || !(u > 0)) return { value: valueText(result) };
  const places = placesOf(coverage * u);
  return { value: formatFigure(value, places), spread: formatFigure(coverage * u, places) };
};
