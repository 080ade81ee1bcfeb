/** @module A figure as a row of digits with a mark: what a slip does to it, written the way it was typed. */

/** A plain decimal taken apart: sign, digits, how many of them stand after the mark, and the mark. */
export interface Digits {
  readonly sign: string;
  readonly digits: string;
  readonly decimals: number;
  readonly mark: string;
}

const plain = /^([+\-−]?)(\d{1,20})(?:([.,])(\d{1,20}))?$/;

/** Undefined for a fraction or an exponent, on which these slips are not looked for. */
export const digitsOf = (text: string): Digits | undefined => {
  const [, sign = '', whole = '', mark = '.', part = ''] = plain.exec(text.trim()) ?? [];
  return whole === '' ? undefined : { sign, digits: whole + part, decimals: part.length, mark };
};

export const written = ({ sign, digits, decimals, mark }: Digits): string => {
  const padded = digits.padStart(decimals + 1, '0');
  const whole = padded.slice(0, padded.length - decimals).replace(/^0+(?=\d)/, '');
  return decimals === 0 ? sign + whole : `${sign}${whole}${mark}${padded.slice(padded.length - decimals)}`;
};
