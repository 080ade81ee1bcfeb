/** @module Laws of what an honest reading may show. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Limits } from '../engine/engine-type.ts';
import { mm } from '../quantity/brand.ts';
import { expectationOf, runShare } from './expectation.ts';
import { honestOf, trustIn } from './honest.ts';
import { believed, median, nearness, othersOf } from './neighbours.ts';
import { shapeOf } from './place-shape.ts';

const bounds = (least: number | undefined, greatest: number | undefined) => ({
  ...(least !== undefined && { least: mm(least) }),
  ...(greatest !== undefined && { greatest: mm(greatest) }),
});

const limits = (
  made: readonly [number | undefined, number | undefined],
  goesBack: readonly [number | undefined, number | undefined],
): Limits => ({ new: bounds(...made), goesBack: bounds(...goesBack), printed: {} });

const blur = 0.003;

/** By the trapezium rule, fine enough for the narrowest step there is. */
const integral = (density: (size: number) => number, from: number, to: number): number => {
  const steps = 200_000;
  const width = (to - from) / steps;
  let sum = (density(from) + density(to)) / 2;
  for (let step = 1; step < steps; step += 1) sum += density(from + step * width);
  return sum * width;
};

const shapes = [
  ['a journal', limits([54.981, 55], [54.93, 55]), 'smaller', 55],
  ['a bore', limits([85, 85.022], [85, 85.2]), 'larger', 85],
  ['a run-out of which only the most is given', limits([undefined, 0.03], [undefined, 0.05]), 'larger', 0.03],
  [
    'a thickness of which only the least is given',
    limits([2.4, undefined], [2.3, undefined]),
    'smaller',
    2.4,
  ],
  ['a length that may go either way', limits([10, 10.05], [9.9, 10.2]), 'either', 10],
  ['a size with no wear limit', limits([30, 30.02], [30, 30.02]), 'smaller', 30],
  ['a size with a wear limit alone', limits([undefined, undefined], [undefined, 0.4]), 'larger', 0.4],
  ['a size with its limits on the other side alone', limits([20, undefined], [20, undefined]), 'larger', 20],
] as const;

describe.each(shapes)('the expectation of %s', (_what, given, wears, around) => {
  const expected = expectationOf(given, wears, blur);
  if (!expected) throw new Error('no expectation');

  it('is a probability: it sums to one', () => {
    expect(integral(expected.density, around - 3, around + 3)).toBeCloseTo(1, 2);
  });

  it('is nowhere above its peak, and nowhere nothing', () => {
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), (off) => {
        expect(expected.density(around + off)).toBeLessThanOrEqual(expected.peak);
        expect(expected.density(around + off)).toBeGreaterThan(0);
      }),
    );
  });
});

describe('the hours run', () => {
  it('narrow what wear is expected of a young engine, and never widen it', () => {
    const of = (run: number) => {
      const expected = expectationOf(limits([54.981, 55], [54.93, 55]), 'smaller', blur, run);
      if (!expected) throw new Error('no expectation');
      return expected;
    };
    expect(of(0.3).density(54.94)).toBeLessThan(of(1).density(54.94) / 3);
    expect(of(0.3).density(54.99)).toBeGreaterThan(of(1).density(54.99));
    expect(integral(of(0.3).density, 52, 58)).toBeCloseTo(1, 2);
    for (let off = -0.3; off < 0.1; off += 0.001) {
      expect(of(0.3).density(55 + off)).toBeLessThanOrEqual(of(0.3).peak);
    }
  });

  it('count from half the life on for nothing, and where they are not known', () => {
    expect(runShare(1500, 6000)).toBe(0.5);
    expect(runShare(200, 6000)).toBe(0.3);
    expect(runShare(5000, 6000)).toBe(1);
    expect(runShare(undefined, 6000)).toBe(1);
    expect(runShare(500, undefined)).toBe(1);
    expect(runShare(Number.NaN, 6000)).toBe(1);
  });
});

describe('the expectation', () => {
  it('of a shaft is that of a bore in the mirror', () => {
    const shaft = expectationOf(limits([-10.02, -10], [-10.1, -10]), 'smaller', blur);
    const bore = expectationOf(limits([10, 10.02], [10, 10.1]), 'larger', blur);
    fc.assert(
      fc.property(fc.double({ min: 9.5, max: 10.5, noNaN: true }), (size) => {
        expect(shaft?.density(-size)).toBeCloseTo(bore?.density(size) ?? Number.NaN, 9);
      }),
    );
  });

  it('falls as wear goes on beyond the limit, and falls off at once where a part would have to grow', () => {
    const journal = expectationOf(limits([54.981, 55], [54.93, 55]), 'smaller', blur);
    const at = (size: number) => journal?.density(size) ?? Number.NaN;
    for (const size of [54.93, 54.9, 54.8, 54.7]) expect(at(size)).toBeGreaterThan(at(size - 0.05));
    expect(at(55.05)).toBeLessThan(at(54.981 - 0.05) / 100);
  });

  it('is none where there are no limits', () => {
    expect(expectationOf(undefined, 'smaller', blur)).toBeUndefined();
    expect(
      expectationOf(limits([undefined, undefined], [undefined, undefined]), 'smaller', blur),
    ).toBeUndefined();
  });
});

describe('neighbours', () => {
  const all = () => 1;

  it('are all the others, and past a dozen a dozen of them from the least to the greatest', () => {
    expect(othersOf([1, 2, 3], 0.1, all)[1]?.sizes).toEqual([1, 3]);
    expect(othersOf([1], 0.1, all)).toEqual([undefined]);
    const many = othersOf(
      Array.from({ length: 100 }, (_, index) => 99 - index),
      0.1,
      all,
    );
    expect(many).toHaveLength(100);
    expect(many[0]?.sizes).toHaveLength(12);
    expect(many[0]?.sizes).toContain(0);
    // The first is the 99 itself, which does not speak for itself.
    expect(many[0]?.sizes).toContain(98);
    expect(many[0]?.sizes).not.toContain(99);
  });

  it('are near as far as they are believed: their nearness sums to that share', () => {
    const [others] = othersOf([54, 54.98, 54.97, 54.48], 0.01, (size) => (size < 54.5 ? 0.1 : 1));
    if (!others) throw new Error('no neighbours');
    expect(believed(others)).toBeCloseTo((1 + 1 + 0.1) / 3, 12);
    expect(integral((size) => nearness(size, others), 53, 56)).toBeCloseTo(believed(others), 3);
  });

  it('have a middle', () => {
    expect(median([3, 1, 2])).toBe(2);
    expect(median([4, 1, 3, 2])).toBe(2.5);
  });

  it('leave an honest reading a probability, whatever they say', () => {
    const own = expectationOf(limits([54.981, 55], [54.93, 55]), 'smaller', blur);
    if (!own) throw new Error('no expectation');
    const believe = (size: number) => trustIn(size, own);
    const cells = [54.97, 54.96, 54.972].map((size, axis) => ({ size, plane: 0, axis }));
    const [bells] = shapeOf(cells, { middle: 54.99, level: 1.2, wear: 0.05, noise: 0.003 }, []);
    if (!bells) throw new Error('no bells');
    const place = { bells, cells: 2, trust: 1 };
    const [others] = othersOf([0, 55.47, 54.95], 0.02, believe);
    for (const honest of [
      honestOf(own, place, others),
      honestOf(own, place, undefined),
      honestOf(own, undefined, others),
      honestOf(own, undefined, undefined),
    ]) {
      const whole = integral(honest.density, 52, 58);
      // What neighbours say is taken back where the part would have to grow: never more than one, seldom much less.
      expect(whole).toBeLessThan(1.01);
      expect(whole).toBeGreaterThan(0.6);
      expect(honest.density(54.965)).toBeLessThanOrEqual(honest.peak);
    }
  });

  it('are believed where sizes are expected, and hardly where a part would have to grow', () => {
    const own = expectationOf(limits([54.981, 55], [54.93, 55]), 'smaller', blur);
    if (!own) throw new Error('no expectation');
    expect(trustIn(54.97, own)).toBeGreaterThan(0.99);
    expect(trustIn(54.88, own)).toBeGreaterThan(0.5);
    expect(trustIn(55.47, own)).toBeLessThan(0.01);
  });
});
