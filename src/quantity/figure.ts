/** @module A number written out to a stated count of decimals, the same on every machine. */

/** The number that a person reads, exactly: digits × 10^-places. */
const digitsOf = (value: number): { readonly digits: bigint; readonly places: number } => {
  const [mantissa = '0', exponent = '0'] = String(value).split('e');
  const [whole = '0', part = ''] = mantissa.split('.');
  return { digits: BigInt(whole + part), places: part.length - Number(exponent) };
};

/**
 * Writes a number with a fixed count of decimals.
 *
 * Rounds the shortest decimal that stands for the number; a half goes to the even digit (ISO 80000-1,
 * Annex B, rule A, from memory), so that the means of many figures are not pushed up. Never `-0.00`.
 *
 * @param value     any finite number
 * @param decimals  0 to 20
 * @example formatFigure(25.400000000000002, 3) // '25.400'
 */
export const formatFigure = (value: number, decimals: number): string => {
  if (!Number.isFinite(value)) throw new RangeError(`${value} cannot be written as a figure`);
  const { digits, places } = digitsOf(Math.abs(value));
  let scaled: bigint;
  if (places <= decimals) {
    scaled = digits * 10n ** BigInt(decimals - places);
  } else {
    const step = 10n ** BigInt(places - decimals);
    const rest = (digits % step) * 2n;
    scaled = digits / step;
    if (rest > step || (rest === step && scaled % 2n === 1n)) scaled += 1n;
  }
  const text = scaled.toString().padStart(decimals + 1, '0');
  const sign = value < 0 && scaled !== 0n ? '-' : '';
  return decimals === 0 ? sign + text : `${sign}${text.slice(0, -decimals)}.${text.slice(-decimals)}`;
};

/** A computed number without the noise of its last binary digit: 25.400000000000002 is 25.4. */
export const tidy = (value: number): number => Number(value.toPrecision(15));
