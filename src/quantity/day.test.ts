/** @module Days counted on, held against the calendar of the machine. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dayAfter } from './day.ts';

describe('a day counted on', () => {
  // source: the Gregorian rule of leap years: 2024 and 2000 have a leap day, 2100 has none
  it.each([
    ['2024-02-28', 1, '2024-02-29'],
    ['2025-02-28', 1, '2025-03-01'],
    ['2000-02-28', 2, '2000-03-01'],
    ['2100-02-28', 1, '2100-03-01'],
    ['2026-12-31', 1, '2027-01-01'],
    ['2026-10-13T09:20:00Z', 30, '2026-11-12'],
    ['2026-10-13', 0, '2026-10-13'],
  ])('%s and %i days is %s', (day, days, expected) => {
    expect(dayAfter(day, days)).toBe(expected);
  });

  // source: the calendar of the JavaScript engine (ECMA-262, Date)
  it('is the day that the machine’s own calendar gives', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 100_000 }),
        fc.integer({ min: 0, max: 10_000 }),
        (start, days) => {
          const iso = (count: number) => new Date(count * 86_400_000).toISOString().slice(0, 10);
          expect(dayAfter(iso(start), days)).toBe(iso(start + days));
        },
      ),
    );
  });
});
