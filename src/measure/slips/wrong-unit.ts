/** @module Inches entered among millimetres, or the other way about. */
import type { Slip } from './slip.ts';

const millimetresInAnInch = 25.4;

export const wrongUnit: Slip = {
  name: 'wrong unit',
  says: 'a figure entered in the wrong unit',
  /** Once in two hundred and fifty readings: common practice, no source. */
  chance: 0.004,
  of: 'readings',
  reach: millimetresInAnInch,
  onScale: false,
  sticks: true,
  candidates: ({ text, unit }) => {
    // A figure shown as too small was inches all along: true sizes lie 25.4 times further apart.
    if (unit === 'mm') return [{ likely: { text, unit: 'in' }, share: 1, stretch: millimetresInAnInch }];
    if (unit === 'in') return [{ likely: { text, unit: 'mm' }, share: 1, stretch: 1 / millimetresInAnInch }];
    return [];
  },
};
