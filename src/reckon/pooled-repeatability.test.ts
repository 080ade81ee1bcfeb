/** @module Pooled repeatability asked for by name, against the guide's and the handbook's studies. */
import { describe, expect, it } from 'vitest';
import { outsideCheck } from '../../test/outside-check.ts';
import { reckonByName } from './list.ts';
import { pooledRepeatability } from './pooled-repeatability.ts';

const ask = (texts: Readonly<Record<string, string>>) => reckonByName('pooled-repeatability', texts);
const resultsOf = (texts: Readonly<Record<string, string>>) => {
  const asked = ask(texts);
  if (asked.kind === 'refused') throw new Error(asked.refusal.what);
  return asked.value.results;
};

describe('pooled repeatability', () => {
  it('sums squares about the mean of each size', () => {
    // source: JCGM 100:2008, 4.2.4, by hand: squares of 2 and 0.5 µm² over 2 and 1 degrees of freedom
    const { repeatability, freedom } = resultsOf({ readings: '10.001, 10.003, 10.002; 5.000, 5.001 mm' });
    const source = 'JCGM 100:2008, 4.2.4, by hand';
    outsideCheck(
      'pooled-repeatability',
      source,
      'mm',
      1e-9,
    )(Number(repeatability?.value), Math.sqrt(2.5 / 3) / 1000);
    expect(freedom?.value).toBe(3);
  });

  it('gives the ten days of the guide', () => {
    // source: JCGM 100:2008, H.5.2.3: pooled 85 µV of daily deviations 60 … 86 µV, five readings a day. Each day stands
    // here as five readings with just that deviation: -a, -a, 0, a, a about its mean, a = s.
    const days = [60, 77, 111, 101, 67, 93, 80, 73, 88, 86].map((s, day) =>
      [-s, -s, 0, s, s].map((off) => (1000 * day + off).toString()).join(', '),
    );
    const { repeatability, freedom } = resultsOf({ readings: `${days.join('; ')} µm` });
    outsideCheck(
      'pooled-repeatability',
      'JCGM 100:2008, H.5.2.3',
      'µV',
      0.5,
    )(Number(repeatability?.value) * 1000, 85);
    expect(freedom?.value).toBe(40);
  });

  it('is that of one size read often, wherever the sizes lie', () => {
    const nothing = { deviation: 0, freedom: 0 };
    const { deviation } = pooledRepeatability([[1, 2, 3]], nothing);
    expect(deviation).toBe(1);
    const moved = [[1, 2, 3], [101, 102, 103], [7]];
    expect(pooledRepeatability(moved, nothing)).toEqual({ deviation: 1, freedom: 4 });
  });

  it('counts what was known before', () => {
    const { repeatability, freedom } = resultsOf({ readings: '1.000, 1.000 mm', before: '0.002mm' });
    expect(repeatability?.value).toBeCloseTo(0.002 * Math.sqrt(0.9), 9);
    expect(freedom?.value).toBe(10);
  });

  it('refuses sizes that were each read once, and what was known with no freedom', () => {
    const once = ask({ readings: '1.000; 2.000 mm' });
    expect(once.kind === 'refused' && once.refusal.what).toBe('no size was read twice');
    const nothing = ask({ readings: '1.000, 1.001 mm', before: '0.002mm', 'before-freedom': '0' });
    expect(nothing.kind === 'refused' && nothing.refusal.where).toBe('before, before-freedom');
  });
});
