/** @module The decimal mark forgotten or set in the wrong place. */
import { digitsOf, written } from './digits.ts';
import type { Slip } from './slip.ts';

const shifts = [-3, -2, -1, 1, 2, 3];

export const decimalShift: Slip = {
  name: 'decimal shift',
  says: 'the decimal mark in the wrong place',
  /** Once in two hundred and fifty readings, over all places where the mark can land: common practice, no source. */
  chance: 0.004,
  of: 'readings',
  reach: 10 ** Math.max(...shifts) / shifts.length,
  onScale: false,
  sticks: false,
  candidates: ({ text, unit }) => {
    const typed = digitsOf(text);
    if (!typed) return [];
    return shifts.map((shift) => {
      const decimals = typed.decimals - shift;
      const moved =
        decimals >= 0
          ? { ...typed, decimals }
          : { ...typed, decimals: 0, digits: typed.digits + '0'.repeat(-decimals) };
      return { likely: { text: written(moved), unit }, share: 1 / shifts.length, stretch: 10 ** shift };
    });
  },
};
