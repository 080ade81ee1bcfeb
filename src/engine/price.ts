/** @module Prices as an engine type writes them, in whole hundredths. */

/** A price such as `148.5` in hundredths, from its digits, so that no binary fraction comes in between. */
export const centsOf = (price: string): number => {
  const [whole = '0', part = ''] = price.split('.');
  return Number(whole) * 100 + Number(part.padEnd(2, '0'));
};
