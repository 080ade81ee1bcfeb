/** @module The hours at which survival comes down to a share: closed forms of lognormal and exponential lives. */
import { describe, expect, it } from 'vitest';
import { hoursAt, longest } from './falls-to.ts';
import { normalCumulative, normalQuantile } from './normal.ts';

const lognormal = (middle: number, spread: number) => (run: number) =>
  run <= 0 ? 1 : normalCumulative(Math.log(middle / run) / spread);

describe('the hours at which survival comes down to a share', () => {
  it('are those of a lognormal life, wherever it is begun', () => {
    // source: closed form, middle × exp(-spread × normal value)
    for (const start of [0.5, 900, 4000, 1e6]) {
      for (const [share, spread] of [
        [0.9, 0.25],
        [0.5, 0.02],
        [1e-4, 1.2],
      ] as const) {
        const exact = 4000 * Math.exp(-spread * normalQuantile(share));
        expect(hoursAt(lognormal(4000, spread), share, start) / exact).toBeCloseTo(1, 5);
      }
    }
  });

  it('are those of an exponential life, and of one of which some goes at once', () => {
    // source: closed form, -mean × ln(share), and of a part that holds with 0.95 besides -mean × ln(share / 0.95)
    const life = (run: number) => Math.exp(-run / 3000);
    expect(hoursAt(life, 0.9, 100)).toBeCloseTo(-3000 * Math.log(0.9), 2);
    expect(hoursAt((run) => 0.95 * life(run), 0.9, 100)).toBeCloseTo(-3000 * Math.log(0.9 / 0.95), 2);
  });

  it('find a cliff', () => {
    expect(hoursAt((run) => (run < 1234.5 ? 1 : 0), 0.9, 20)).toBeCloseTo(1234.5, 2);
  });

  it('are none where it begins below the share, and the longest asked for where it never comes down', () => {
    expect(hoursAt(() => 0.8, 0.9, 100)).toBe(0);
    expect(hoursAt(() => 0.95, 0.9, 100)).toBe(longest);
  });
});
