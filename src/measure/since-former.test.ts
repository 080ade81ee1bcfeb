/** @module What is expected of a cell since a former overhaul: laws of the density, and who believes what. */
import { describe, expect, it } from 'vitest';
import { mm } from '../quantity/brand.ts';
import { expectationOf } from './expectation.ts';
import { changedAsTold, sinceFormer, wearShare } from './since-former.ts';

const limits = (wears: 'smaller' | 'larger' | 'either') =>
  expectationOf(
    {
      new: { least: mm(54.98), greatest: mm(55) },
      goesBack:
        wears === 'larger'
          ? { least: mm(54.98), greatest: mm(55.07) }
          : { least: mm(54.91), greatest: mm(55.07) },
      printed: {},
    },
    wears,
    0.003,
  );

const since = (wears: 'smaller' | 'larger' | 'either', size: number, share = 0.5, changed = 0.02) => {
  const own = limits(wears);
  if (!own) throw new Error('no limits');
  return sinceFormer(own, { size, u: 0.003, wears, share, changed });
};

describe('a size since a former overhaul', () => {
  // source: a density comes to one over all sizes; trapezoids of 20 nm over what anything can reach
  it.each(['smaller', 'larger', 'either'] as const)('has a density that comes to one: %s', (wears) => {
    const { density, peak } = since(wears, 54.95, 0.5, 0);
    let sum = 0;
    for (let at = -100_000; at < 100_000; at += 1) {
      const here = density(54.95 + at * 1e-5);
      expect(here).toBeLessThanOrEqual(peak * (1 + 1e-9));
      sum += here * 1e-5;
    }
    expect(sum).toBeCloseTo(1, 3);
  });

  it('has worn, and not grown back', () => {
    const { density, grownBy, room } = since('smaller', 54.95);
    expect(density(54.945)).toBeGreaterThan(20 * density(54.97));
    expect(grownBy(54.97)).toBeCloseTo(0.02, 9);
    expect(grownBy(54.94)).toBe(0);
    expect(room(54.94)).toBeCloseTo(1, 9);
    expect(room(54.97)).toBeLessThan(0.05);
    expect(since('either', 54.95).grownBy(54.97)).toBe(0);
  });

  it('is expected to have worn the less, the fewer the hours', () => {
    const far = (share: number) => since('smaller', 54.98, share).density(54.94);
    expect(far(0.5)).toBeGreaterThan(far(0.1));
    expect(wearShare(300, 6000)).toBe(0.05);
    expect(wearShare(3000, 6000)).toBe(0.5);
    expect(wearShare(60_000, 6000)).toBe(2);
    for (const unknown of [wearShare(undefined, 6000), wearShare(3000, undefined), wearShare(3000, 0)])
      expect(unknown).toBe(0.5);
  });

  it('is whatever the limits allow where the part was changed', () => {
    const own = limits('smaller');
    const changed = since('smaller', 54.92, 0.5, 0.999);
    expect(changed.density(54.99) / (own?.density(54.99) ?? 1)).toBeCloseTo(0.999, 3);
  });
});

describe('the chance that a part was changed', () => {
  it('is one in fifty before anything tells, and follows what other cells tell', () => {
    expect(changedAsTold([])).toBe(0.02);
    const same = { same: 30, any: 3 };
    expect(changedAsTold([same])).toBeLessThan(0.003);
    expect(changedAsTold([same, same, same])).toBeLessThan(changedAsTold([same]));
    // More than three of one place tell no more than three.
    expect(changedAsTold(Array(8).fill(same))).toBeCloseTo(changedAsTold(Array(3).fill(same)), 12);
    expect(changedAsTold([{ same: 1e-6, any: 3 }])).toBeGreaterThan(0.99);
  });
});
