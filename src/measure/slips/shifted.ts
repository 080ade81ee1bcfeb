/** @module A figure moved by a length and written the way it was typed, with the same mark and no fewer decimals. */
import { parseDecimal } from '../../quantity/decimal.ts';
import { lengthOf, type Typed } from '../../quantity/typed.ts';
import { fromCore, unitOf } from '../../quantity/unit.ts';
import { digitsOf } from './digits.ts';

/** Undefined for a fraction, an exponent, a unit that is no length, or where the figure would change its sign. */
export const shifted = (typed: Typed, by: Typed, times: number): Typed | undefined => {
  const decimal = parseDecimal(typed.text);
  const length = lengthOf(by);
  const unit = unitOf(typed.unit, 'length');
  const digits = digitsOf(typed.text);
  if (decimal.kind === 'refused' || length.kind === 'refused' || unit.kind === 'refused' || !digits)
    return undefined;
  const own = by.unit === typed.unit ? (digitsOf(by.text)?.decimals ?? 0) : 0;
  const moved = decimal.value.value + times * fromCore(length.value, unit.value);
  if (moved * decimal.value.value < 0) return undefined;
  return {
    text: moved.toFixed(Math.max(digits.decimals, own)).replace('.', digits.mark),
    unit: typed.unit,
  };
};
