/** @module What an offer comes to, in hundredths. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { offer, planA, planB } from '../../test/job/offers.ts';
import { offerSum } from './offer-sum.ts';

describe('what a plan of an offer comes to', () => {
  // source: worked by hand: 40.00 + 6.00 carriage + 180.00 + 14.5 h × 42.00 = 835.00; 8.875 % of it is 74.10625, 1.5 % is 12.525
  it('is its lines, then each tax on their sum, a half rounded up', () => {
    expect(offerSum(offer, planA)).toEqual({
      components: 4000,
      beside: 600,
      oneUse: 0,
      labour: 78_900,
      net: 83_500,
      taxes: [
        { says: 'sales tax 8.875 %', cents: 7411 },
        { says: 'quay due 1.5 %', cents: 1253 },
      ],
      gross: 92_164,
    });
  });

  // source: worked by hand: 180.00 + 40.00 + 6.00 + 180.00 + 20 h × 42.00 = 1246.00; 8.875 % is 110.5825, 1.5 % is 18.69
  it('takes no tax on another tax', () => {
    expect(offerSum(offer, planB)).toMatchObject({
      net: 124_600,
      taxes: [{ cents: 11_058 }, { cents: 1869 }],
      gross: 137_527,
    });
  });

  // source: worked by hand: 835.00 + 2 × 0.75 + 1.20 = 837.70; 8.875 % of it is 74.345875, 1.5 % is 12.5655
  it('has gaskets and the like in it, and their tax', () => {
    const oneUse = [
      { says: 'lock tabs', count: 2, cents: 150 },
      { says: 'pump gasket', count: 1, cents: 120 },
    ];
    expect(offerSum(offer, { ...planA, oneUse })).toMatchObject({
      beside: 600,
      oneUse: 270,
      net: 83_770,
      taxes: [{ cents: 7435 }, { cents: 1257 }],
      gross: 92_462,
    });
  });

  // source: worked by hand: three lines of 0.50 at 5 %: on the sum 0.075, rounded 0.08; line by line it would be 3 × 0.03
  it('is taxed on the sum, not line by line', () => {
    const line = { says: 'x', cents: 50 };
    const taxes = [{ name: 'tax', rate: { text: '5', unit: '%' } }];
    const plan = { choices: [], cents: 0, labour: [line, line, line] };
    expect(offerSum({ taxes }, plan).taxes).toEqual([{ says: 'tax 5 %', cents: 8 }]);
  });

  it('is always the sum of its lines, exactly', () => {
    const cents = fc.integer({ min: 0, max: 10_000_000 });
    const lines = fc.array(fc.record({ says: fc.constant('x'), cents }), { maxLength: 20 });
    const rate = fc.integer({ min: 0, max: 9999 }).map((part) => ({
      name: 'tax',
      rate: { text: `${Math.floor(part / 100)}.${String(part % 100).padStart(2, '0')}`, unit: '%' },
    }));
    fc.assert(
      fc.property(
        lines,
        lines,
        fc.integer({ min: -5000, max: 5000 }),
        fc.array(rate, { maxLength: 3 }),
        (parts, labour, beside, taxes) => {
          const choices = parts.map((part) => ({ ...part, slot: '', option: '', what: '', why: '' }));
          const components = parts.reduce((sum, part) => sum + part.cents, 0);
          const sum = offerSum(
            { taxes },
            { choices, cents: components + Math.max(beside, -components), labour },
          );
          expect(sum.components).toBe(components);
          expect(sum.components + sum.beside + sum.labour).toBe(sum.net);
          expect(sum.taxes.reduce((total, tax) => total + tax.cents, sum.net)).toBe(sum.gross);
          expect(Number.isSafeInteger(sum.gross)).toBe(true);
        },
      ),
    );
  });
});
