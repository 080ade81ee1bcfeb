/** @module Money in hundredths: read exactly, taxed and charged exactly, rounded half up. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { centsText, labourCost, mostCents, readCents, taxOn } from './money.ts';

const percent = (text: string) => ({ text, unit: '%' });
const hours = (text: string) => ({ text, unit: 'h' });
const given = (read: ReturnType<typeof readCents>) =>
  read.kind === 'answer' ? read.value : read.refusal.what;

describe('an amount of money', () => {
  it.each([
    ['1234.50', 123_450],
    ['1234,5', 123_450],
    ['0', 0],
    ['19', 1900],
    ['0.29', 29],
  ])('%s is %i hundredths', (text, cents) => {
    expect(given(readCents(text))).toBe(cents);
  });

  it.each(['', '1.234', '-5', '1,234.50', 'ten', '1e5', '99999999'.repeat(2), '12000000.00'])(
    '“%s” is refused',
    (text) => {
      expect(readCents(text).kind).toBe('refused');
    },
  );

  it('is written as it is read', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: mostCents }), (cents) => {
        expect(given(readCents(centsText(cents)))).toBe(cents);
      }),
    );
  });
});

describe('a tax', () => {
  // source: worked by hand: 100.50 × 19 % = 19.095; 0.50 × 5 % = 0.025; 226.00 × 8.875 % = 20.0575; 12.34 × 7 % = 0.8638
  it.each([
    [10_050, '19', 1910],
    [50, '5', 3],
    [22_600, '8.875', 2006],
    [1234, '7', 86],
    [1234, '0', 0],
    [99_999, '100', 99_999],
  ])('on %i hundredths at %s %% is %i', (cents, rate, tax) => {
    expect(given(taxOn(cents, percent(rate)))).toBe(tax);
  });

  // source: whole numbers of any length (ECMA-262, BigInt): (2·n + d) div 2·d is half up
  it('is half up, exactly, however large', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: mostCents }),
        fc.integer({ min: 0, max: 1_000_000 }),
        (cents, rate) => {
          const text = `${Math.floor(rate / 10_000)}.${String(rate % 10_000).padStart(4, '0')}`;
          const exact = (2n * BigInt(cents) * BigInt(rate) + 1_000_000n) / 2_000_000n;
          expect(given(taxOn(cents, percent(text)))).toBe(Number(exact));
        },
      ),
    );
  });

  it.each(['-1', '101', '19.12345', 'some'])('at “%s %%” is refused', (rate) => {
    expect(taxOn(100, percent(rate)).kind).toBe('refused');
  });

  it('on more than can be reckoned exactly is refused', () => {
    expect(taxOn(mostCents + 1, percent('19')).kind).toBe('refused');
  });
});

describe('labour', () => {
  // source: worked by hand: 14.5 h at 42.00 = 609.00; 0.125 h at 42.10 = 5.2625; 0.25 h at 0.02 = 0.005
  it.each([
    ['14.5', 4200, 60_900],
    ['0.125', 4210, 526],
    ['0.25', 2, 1],
    ['0', 4200, 0],
  ])('of %s h at %i hundredths an hour costs %i', (time, rate, cents) => {
    expect(given(labourCost(hours(time), rate))).toBe(cents);
  });

  it.each(['-1', '0.0625', '100001', 'long'])('of “%s h” is refused', (time) => {
    expect(labourCost(hours(time), 4200).kind).toBe('refused');
  });
});
