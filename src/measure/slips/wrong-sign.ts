/** @module A dial read the wrong way about: plus for minus. */
import { digitsOf, written } from './digits.ts';
import type { Slip } from './slip.ts';

/** Instruments whose pointer goes both ways from its zero. */
const kinds = ['dial gauge', 'bore gauge', 'depth gauge'];

export const wrongSign: Slip = {
  name: 'wrong sign',
  says: 'plus and minus mixed up on the dial',
  /** Once in two hundred and fifty readings of a dial: common practice, no source. */
  chance: 0.004,
  of: 'readings',
  reach: 1,
  onScale: true,
  sticks: true,
  candidates: ({ text, unit }, { kind }) => {
    const typed = digitsOf(text);
    const minus = typed !== undefined && /^[-−]$/.test(typed.sign);
    // A minus before the figure of any other instrument is a slip of the keys.
    if (!typed || !/[1-9]/.test(typed.digits) || (!minus && !kinds.includes(kind))) return [];
    return [{ likely: { text: written({ ...typed, sign: minus ? '' : '-' }), unit }, share: 1, stretch: 1 }];
  },
};
