/** @module Three readings in a row that lie together. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { restOf } from './steady.ts';
import { timeProved } from './time-proved.ts';

const at = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([minute, value]) => ({ minute, value }));

describe('three readings in a row', () => {
  it('are counted back from the last, each far enough from the next', () => {
    // source: three steady temperatures, as start-up reports of Unified Facilities Guide Specifications have them
    expect(restOf(at([0, 60], [15, 80], [30, 81], [45, 82]), 15)).toEqual({ counted: 3, spread: 2 });
    expect(restOf(at([0, 81], [14, 82]), 15)).toEqual({ counted: 1, spread: 0 });
    expect(restOf(at([0, 81], [15, 82]), 15)).toEqual({ counted: 2, spread: 1 });
    expect(restOf([], 15)).toEqual({ counted: 0, spread: 0 });
  });

  it('are not steady where what was read between them swings', () => {
    expect(restOf(at([0, 80], [5, 90], [10, 80], [20, 80]), 10)).toEqual({ counted: 3, spread: 10 });
  });

  it('lie as far apart in any unit of difference, and wherever the clock began', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: -50, max: 600 }), { maxLength: 12 }),
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 1, max: 900 }),
        (values, apart, later) => {
          const readings = values.map((value, index) => ({ minute: 7 * index, value }));
          const found = restOf(readings, apart);
          const moved = readings.map(({ minute, value }) => ({ minute: minute + later, value: 2 * value }));
          expect(restOf(moved, apart)).toEqual({ counted: found.counted, spread: 2 * found.spread });
          expect(found.counted).toBeLessThanOrEqual(3);
          const last = readings.slice(-3).map(({ value }) => value);
          if (apart <= 7 && last.length === 3)
            expect(found.spread).toBe(Math.max(...last) - Math.min(...last));
        },
      ),
    );
  });
});

describe('the time that readings prove', () => {
  it('is all of it where they are close enough, and no more than the gap allows', () => {
    // common practice, no source
    expect(timeProved([5, 10, 15, 20], 5)).toBe(20);
    expect(timeProved([60], 15)).toBe(15);
    expect(timeProved([60])).toBe(60);
    expect(timeProved([], 15)).toBe(0);
  });

  it('never grows by leaving a reading out, and never runs ahead of the clock', () => {
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.integer({ min: 0, max: 500 }), { minLength: 1, maxLength: 20 }),
        fc.integer({ min: 1, max: 60 }),
        fc.nat(),
        (minutes, every, which) => {
          const sorted = minutes.toSorted((a, b) => a - b);
          const whole = timeProved(sorted, every);
          const left = sorted.filter((_, index) => index !== which % sorted.length);
          expect(timeProved(left, every)).toBeLessThanOrEqual(whole);
          expect(whole).toBeLessThanOrEqual(sorted.at(-1) ?? 0);
        },
      ),
    );
  });
});
