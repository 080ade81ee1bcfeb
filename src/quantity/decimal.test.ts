/** @module Decimals are read as typed, or refused with what to type instead. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseDecimal } from './decimal.ts';
import { refusalText } from './refusal.ts';

const read = (text: string): number | undefined => {
  const decimal = parseDecimal(text);
  return decimal.kind === 'answer' ? decimal.value.value : undefined;
};
const refusalOf = (text: string): string | undefined => {
  const decimal = parseDecimal(text);
  return decimal.kind === 'refused' ? refusalText(decimal.refusal) : undefined;
};

describe('a decimal', () => {
  it.each([
    ['54.980', 54.98, 0.001],
    ['54,980', 54.98, 0.001],
    ['12.50', 12.5, 0.01],
    ['-0.02', -0.02, 0.01],
    ['−0,02', -0.02, 0.01],
    ['+3', 3, 1],
    ['.5', 0.5, 0.1],
    ['  7.0 ', 7, 0.1],
    ['1.2e-5', 1.2e-5, 1e-6],
    ['2e3', 2000, 1000],
    ['9/16', 0.5625, 1 / 16],
    ['2 9/16', 2.5625, 1 / 16],
    ['-1 1/2', -1.5, 1 / 2],
    ['0 127/128', 127 / 128, 1 / 128],
  ])('%s is read, with the step of its last digit', (text, value, resolution) => {
    expect(parseDecimal(text)).toEqual({
      kind: 'answer',
      value: { text: text.trim(), value, resolution },
    });
  });

  it('is the same number as the decimal, to the last bit, however it is read', () => {
    const digits = fc.stringMatching(/^\d{1,7}$/);
    fc.assert(
      fc.property(digits, digits, fc.constantFrom('.', ','), (whole, part, mark) => {
        expect(read(`${whole}${mark}${part}`)).toBe(Number(`${whole}.${part}`));
        expect(read(`+${whole}${mark}${part}`)).toBe(Number(`${whole}.${part}`));
      }),
    );
  });

  it('is never minus nothing', () => {
    expect(Object.is(read('-0.000'), 0)).toBe(true);
  });

  it.each([
    ['', 'nothing was typed'],
    ['   ', 'nothing was typed'],
    ['-', 'a sign without a number'],
    ['12.', 'the digits after the mark are missing'],
    ['1,234.5', 'it can be read in two ways'],
    ['1.234,5', 'it can be read in two ways'],
    ['1 234,5', 'it can be read in two ways'],
    ['1,234,567', 'it can be read in two ways'],
    ['NaN', 'it is no number'],
    ['-Infinity', 'it is no number'],
    ['.', 'it cannot be read as a number'],
    ['0x1F', 'it cannot be read as a number'],
    ['5 4.98', 'it cannot be read as a number'],
    ['9'.repeat(101), 'it is too long for a number'],
    ['1/3', 'a rule is not divided in 3 parts'],
    ['2 16/16', '16/16 is not less than one'],
    ['1e14', 'it is far too large for anything on a bench'],
    ['1e300', 'it is far too large for anything on a bench'],
    ['9'.repeat(41), 'it cannot be read as a number'],
    ['१२', 'it cannot be read as a number'],
  ])('%s is refused with a remedy', (text, what) => {
    expect(refusalOf(text)).toMatch(new RegExp(`^${what}.*: .+`));
  });

  it('reads what any number of millimetres prints to, in either country', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -9_999_999, max: 9_999_999 }),
        fc.integer({ min: 0, max: 6 }),
        (n, places) => {
          const text = (n / 10 ** places).toFixed(places);
          expect(parseDecimal(text)).toEqual({
            kind: 'answer',
            value: { text, value: Number(text) + 0, resolution: Number(`1e-${places}`) },
          });
          expect(read(text.replace('.', ','))).toBe(Number(text) + 0);
        },
      ),
    );
  });

  it('answers or refuses whatever is typed, and never with something that is no number', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.stringMatching(/^[-+−]?[\d.,eE/ +-]{0,30}$/)), (text) => {
        const decimal = parseDecimal(text);
        if (decimal.kind === 'refused') expect(decimal.refusal.remedy).not.toBe('');
        else expect(Number.isFinite(decimal.value.value) && decimal.value.resolution > 0).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it('takes no time over a long text made to slow it down', () => {
    for (const text of ['1'.repeat(1e6), '1,'.repeat(1e5), `${'1 '.repeat(1e5)}/`, `-${' '.repeat(1e6)}1`]) {
      const start = performance.now();
      expect(parseDecimal(text).kind).toBe('refused');
      expect(performance.now() - start).toBeLessThan(200);
    }
  });
});
