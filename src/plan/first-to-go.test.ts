/** @module The first part to go: closed forms of exponential and Weibull lives, and the laws of a least. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { hoursAt } from '../quantity/falls-to.ts';
import { normalCumulative } from '../quantity/normal.ts';
import { type Alike, firstToGo, survivalOfAll } from './first-to-go.ts';

const exponential = (mean: number, count = 1): Alike => ({ survival: (run) => Math.exp(-run / mean), count });
const weibull = (scale: number, shape: number, count = 1): Alike => ({
  survival: (run) => Math.exp(-((run / scale) ** shape)),
  count,
});
const sum = (parts: readonly Alike[], shares: readonly number[]): number =>
  shares.reduce((all, share, index) => all + share * (parts[index]?.count ?? 0), 0);

describe('the first part to go', () => {
  it('is that of exponential lives in proportion to their rates', () => {
    // source: closed form; rates 1/2000, 1/3000 and twice 1/6000 add up to 7/6000, shares 3/7, 2/7 and 1/7 each
    const parts = [exponential(2000), exponential(3000), exponential(6000, 2)];
    const { shares } = firstToGo(parts, 1000);
    for (const [index, share] of [3 / 7, 2 / 7, 1 / 7].entries()) expect(shares[index]).toBeCloseTo(share, 9);
    expect(hoursAt(survivalOfAll(parts), 0.5, 100)).toBeCloseTo((Math.log(2) * 6000) / 7, 3);
  });

  it('is that of Weibull lives of one shape in proportion to their scales to that power', () => {
    // source: closed form; the least has the same shape and the scale (Σ scale^-shape)^(-1/shape)
    const parts = [weibull(8000, 3), weibull(10_000, 3), weibull(5000, 3)];
    const rates = [8000 ** -3, 10_000 ** -3, 5000 ** -3];
    const all = rates.reduce((a, b) => a + b);
    const { shares } = firstToGo(parts, 4000);
    for (const [index, rate] of rates.entries()) expect(shares[index]).toBeCloseTo(rate / all, 9);
    expect(hoursAt(survivalOfAll(parts), 0.9, 4000)).toBeCloseTo((-Math.log(0.9) / all) ** (1 / 3), 3);
  });

  it('counts a part that may be past its limit already', () => {
    // source: by hand; one in five is gone at once, and of the rest the exponential part takes its share: 4/5 of all
    const gone: Alike = { survival: (run) => (run < 1e6 ? 0.8 : 0), count: 1 };
    const { shares, curve } = firstToGo([gone, exponential(1000)], 500);
    expect(shares[0]).toBeCloseTo(0.2, 4);
    expect(curve[0]).toEqual({ hours: 0, share: expect.closeTo(0.8, 12) });
  });

  it('follows one of which all go at nearly the same hours', () => {
    // source: closed form of the exponential part and a sum over the other's normal values: 1 - E(exp(-hours / mean))
    const steep: Alike = {
      survival: (run) => (run <= 0 ? 1 : normalCumulative(Math.log(7500 / run) / 0.02)),
      count: 1,
    };
    let [before, weights] = [0, 0];
    for (let z = -6; z <= 6; z += 0.01) {
      const weight = Math.exp((-z * z) / 2);
      before += weight * (1 - Math.exp((-7500 * Math.exp(0.02 * z)) / 9000));
      weights += weight;
    }
    const { shares } = firstToGo([exponential(9000), steep], 1000);
    expect(Math.abs((shares[0] ?? 0) - before / weights)).toBeLessThan(0.0005);
  });

  const part = fc
    .tuple(between(500, 20_000), between(0.7, 5), fc.integer({ min: 1, max: 6 }))
    .map(([scale, shape, count]) => weibull(scale, shape, count));
  const parts = fc.array(part, { minLength: 1, maxLength: 5 });

  it('has shares of which none is below nothing and that make one', () => {
    fc.assert(
      fc.property(parts, (some) => {
        const { shares } = firstToGo(some, 1000);
        for (const share of shares) expect(share).toBeGreaterThanOrEqual(0);
        expect(sum(some, shares)).toBeCloseTo(1, 9);
      }),
    );
  });

  it('goes no later with a part more', () => {
    fc.assert(
      fc.property(parts, part, between(0.01, 0.99), (some, more, share) => {
        const without = hoursAt(survivalOfAll(some), share, 1000);
        expect(hoursAt(survivalOfAll([...some, more]), share, 1000)).toBeLessThanOrEqual(without + 1e-3);
      }),
    );
  });
});
