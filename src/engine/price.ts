/** @module Prices as an engine type writes them, in whole hundredths. */
import type { Offer } from './engine-type.ts';

/** A price such as `148.5` in hundredths, from its digits, so that no binary fraction comes in between. */
export const centsOf = (price: string): number => {
  const [whole = '0', part = ''] = price.split('.');
  return Number(whole) * 100 + Number(part.padEnd(2, '0'));
};

/** What each costs when so many are taken. */
export const eachOf = ({ cents, quantity = [] }: Pick<Offer, 'cents' | 'quantity'>, count: number): number =>
  quantity.findLast(({ from }) => from <= count)?.cents ?? cents;
