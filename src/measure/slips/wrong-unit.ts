/** @module Inches entered among millimetres, or the other way about. */
import type { Slip } from './slip.ts';

/** Once in three hundred readings: common practice, no source. */
const chance = 0.003;
const millimetresInAnInch = 25.4;

export const wrongUnit: Slip = {
  name: 'wrong unit',
  says: 'a figure entered in the wrong unit',
  reach: chance * millimetresInAnInch,
  candidates: ({ text, unit }) => {
    // A figure shown as too small was inches all along: true sizes lie 25.4 times further apart.
    if (unit === 'mm') return [{ likely: { text, unit: 'in' }, chance, stretch: millimetresInAnInch }];
    if (unit === 'in') return [{ likely: { text, unit: 'mm' }, chance, stretch: 1 / millimetresInAnInch }];
    return [];
  },
};
