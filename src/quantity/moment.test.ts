/** @module How long it is between two moments, against the calendar of the machine that runs the tests. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { durationText, minutesBetween } from './moment.ts';

const moment = fc
  .date({ min: new Date('1990-01-01'), max: new Date('2090-01-01'), noInvalidDate: true })
  .map((date) => date.toISOString());

describe('minutes between two moments', () => {
  it('are those of the calendar', () => {
    // source: ECMAScript Date, milliseconds since 1970
    fc.assert(
      fc.property(moment, moment, (from, to) => {
        expect(minutesBetween(from, to)).toBeCloseTo((Date.parse(to) - Date.parse(from)) / 60_000, 6);
      }),
    );
  });
  it('are said in hours and whole minutes', () => {
    expect([0, 59.4, 59.6, 125, 1440].map(durationText)).toEqual([
      '0 min',
      '59 min',
      '1 h 00 min',
      '2 h 05 min',
      '24 h 00 min',
    ]);
  });
});
