/** @module Two neighbouring digits written in the wrong order. */
import { digitsOf, written } from './digits.ts';
import type { Slip } from './slip.ts';

export const transposedDigits: Slip = {
  name: 'digits transposed',
  says: 'two digits written in the wrong order',
  /** Once in three hundred readings, over all pairs of digits: common practice, no source. */
  chance: 0.003,
  of: 'readings',
  reach: 1,
  onScale: false,
  sticks: false,
  candidates: ({ text, unit }) => {
    const typed = digitsOf(text);
    if (!typed) return [];
    const { digits } = typed;
    const pairs = Array.from({ length: digits.length - 1 }, (_, index) => index).filter(
      (index) => digits[index] !== digits[index + 1],
    );
    return pairs.map((index) => {
      const [first = '', second = ''] = digits.slice(index, index + 2);
      const swapped = digits.slice(0, index) + second + first + digits.slice(index + 2);
      return {
        likely: { text: written({ ...typed, digits: swapped }), unit },
        share: 1 / pairs.length,
        stretch: 1,
      };
    });
  },
};
