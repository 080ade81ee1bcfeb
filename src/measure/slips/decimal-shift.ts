/** @module The decimal mark forgotten or set in the wrong place. */
import { digitsOf, written } from './digits.ts';
import type { Slip } from './slip.ts';

/** Once in two hundred readings, over all places where the mark can land: common practice, no source. */
const chance = 0.005;
const shifts = [-3, -2, -1, 1, 2, 3];

export const decimalShift: Slip = {
  name: 'decimal shift',
  says: 'the decimal mark in the wrong place',
  reach: (chance / shifts.length) * 10 ** Math.max(...shifts),
  candidates: ({ text, unit }) => {
    const typed = digitsOf(text);
    if (!typed) return [];
    return shifts.map((shift) => {
      const decimals = typed.decimals - shift;
      const moved =
        decimals >= 0
          ? { ...typed, decimals }
          : { ...typed, decimals: 0, digits: typed.digits + '0'.repeat(-decimals) };
      return { likely: { text: written(moved), unit }, chance: chance / shifts.length, stretch: 10 ** shift };
    });
  },
};
