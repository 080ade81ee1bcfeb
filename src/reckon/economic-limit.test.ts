/** @module Repair against replacement: worked by hand, and what is refused. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { breakEvenPrice } from './economic-limit.ts';
import { reckonByName } from './list.ts';

const asked = (texts: Readonly<Record<string, string>>) =>
  reckonByName('economic-limit', {
    repair: '1500.00',
    'repair-hours': '4000h',
    replacement: '6000.00',
    'replacement-hours': '8000h',
    ...texts,
  });
const resultsOf = (texts: Readonly<Record<string, string>>) => {
  const found = asked(texts);
  if (found.kind === 'refused') throw new Error(found.refusal.what);
  return found.value;
};

describe('repair against replacement', () => {
  it('costs so much for each hour either way', () => {
    // source: by hand; 1500 / 4 = 375 and 6000 / 8 = 750 for a thousand hours, so that a repair pays up to 3000
    expect(resultsOf({}).results).toEqual({
      'repair-per-thousand-hours': { value: 375, unit: '' },
      'replacement-per-thousand-hours': { value: 750, unit: '' },
      'repair-pays-up-to': { value: 3000, unit: '' },
      'share-of-replacement': { value: 25, unit: '%' },
      'cheaper-by-the-hour': { value: 'repair', unit: '' },
    });
  });

  it('goes by a share of the replacement price where a rule sets one, and by none else', () => {
    // source: TB 43-0154 (85 % of the price of a replacement); 85 % of 6000 is 5100
    const rule = { limit: '85%' };
    const ruled = Number(resultsOf({ ...rule, repair: '5099' }).results['limit-by-rule']?.value);
    outsideCheck(
      'economic-limit',
      'TB 43-0154, 85 % of the price of a replacement',
      'of the currency',
      1e-9,
    )(ruled, 5100);
    expect(resultsOf({ ...rule, repair: '5099' }).results['by-rule']?.value).toBe('may be repaired');
    expect(resultsOf({ ...rule, repair: '5101' }).results['by-rule']?.value).toBe('replace');
    expect(resultsOf({}).results['by-rule']).toBeUndefined();
  });

  it('says where the rule and the price for each hour do not agree', () => {
    // source: by hand; 5000 is within 85 % of 6000, and 1250 a thousand hours is dearer than 750
    expect(resultsOf({ limit: '85%', repair: '5000' }).notes.join()).toContain('do not agree');
    expect(resultsOf({ limit: '85%' }).notes.join()).not.toContain('do not agree');
  });

  it('refuses prices and hours of nothing', () => {
    for (const texts of [
      { repair: '0' },
      { repair: 'much' },
      { replacement: '-5' },
      { 'repair-hours': '0h' },
      { limit: '0%' },
    ])
      expect(asked(texts).kind).toBe('refused');
  });

  it('pays just as far as the hours are as dear', () => {
    fc.assert(
      fc.property(between(1, 1e5), between(1, 1e5), between(1, 1e5), (price, hours, repairHours) => {
        const even = breakEvenPrice(repairHours, { price, hours });
        expect(even / repairHours / (price / hours)).toBeCloseTo(1, 12);
      }),
    );
  });
});
