/** @module Hours left: worked by hand, and the laws of wear that goes on as it went. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import type { Limits } from '../engine/engine-type.ts';
import { hours, mm } from '../quantity/brand.ts';
import { hoursLeft } from './hours-left.ts';

/** A shaft made 54.97 to 54.99, put back down to 54.93. */
const shaft: Limits = {
  new: { least: mm(54.97), greatest: mm(54.99) },
  goesBack: { least: mm(54.93), greatest: mm(54.99) },
  printed: {},
};
/** A bore made 85 to 85.02, put back up to 85.15. */
const bore: Limits = {
  new: { least: mm(85), greatest: mm(85.02) },
  goesBack: { least: mm(85), greatest: mm(85.15) },
  printed: {},
};

describe('hours left to the wear limit', () => {
  it('carry on the wear of a shaft and of a bore as it went', () => {
    // source: by hand; 0.04 mm in 6000 h leaves 0.02 mm for 3000 h, and 0.10 mm leaves 0.05 mm for 3000 h
    expect(hoursLeft(54.95, shaft, 'smaller', hours(6000), hours(9000))).toBeCloseTo(3000, 6);
    expect(hoursLeft(85.1, bore, 'larger', hours(6000), hours(9000))).toBeCloseTo(3000, 6);
  });

  it('share out the life where the hours run are not known', () => {
    // source: by hand; a third of the wear allowed is left, so a third of 9000 h
    expect(hoursLeft(54.95, shaft, 'smaller', hours(0), hours(9000))).toBeCloseTo(3000, 6);
  });

  it('are none at the limit and beyond, and the whole life where nothing is worn', () => {
    expect(hoursLeft(54.93, shaft, 'smaller', hours(6000), hours(9000))).toBe(0);
    expect(hoursLeft(54.9, shaft, 'smaller', hours(6000), hours(9000))).toBe(0);
    expect(hoursLeft(54.995, shaft, 'smaller', hours(6000), hours(9000))).toBe(9000);
  });

  it('are the whole life where wear goes either way, or no limit says when it ends', () => {
    expect(hoursLeft(54.95, shaft, 'either', hours(6000), hours(9000))).toBe(9000);
    expect(hoursLeft(54.95, { ...shaft, goesBack: {} }, 'smaller', hours(6000), hours(9000))).toBe(9000);
  });

  it('lie between none and the life, and are fewer the more is worn', () => {
    fc.assert(
      fc.property(between(54.9, 55), between(54.9, 55), between(0, 20_000), (one, other, run) => {
        const at = (size: number): number => hoursLeft(size, shaft, 'smaller', hours(run), hours(9000));
        const [less, more] = [at(Math.min(one, other)), at(Math.max(one, other))];
        expect(less).toBeGreaterThanOrEqual(0);
        expect(more).toBeLessThanOrEqual(9000);
        expect(less).toBeLessThanOrEqual(more);
      }),
    );
  });
});
