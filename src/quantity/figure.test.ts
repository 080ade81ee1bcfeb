/** @module Figures are written to a count of decimals, without binary noise. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { formatFigure, tidy } from './figure.ts';

describe('a figure', () => {
  // source: JCGM 100:2008, 7.2.6 (28.05 to 28, 10.05762 to 10.058); halves to even: ISO 80000-1, Annex B, rule A
  it.each([
    [28.05, 0, '28'],
    [10.05762, 3, '10.058'],
    [25.400000000000002, 3, '25.400'],
    [0.285, 2, '0.28'],
    [0.275, 2, '0.28'],
    [-1.005, 2, '-1.00'],
    [2.5, 0, '2'],
    [3.5, 0, '4'],
    [9.9996, 3, '10.000'],
    [0, 3, '0.000'],
    [1e-7, 7, '0.0000001'],
    [1.5e-7, 7, '0.0000002'],
    [1e21, 1, '1000000000000000000000.0'],
  ])('%f to %i decimals is %s', (value, decimals, text) => {
    expect(formatFigure(value, decimals)).toBe(text);
  });

  it('is never minus nothing', () => {
    expect(formatFigure(-0.0004, 3)).toBe('0.000');
    expect(formatFigure(-0, 1)).toBe('0.0');
  });

  it('is a mistake in the program where there is no number', () => {
    expect(() => formatFigure(Number.NaN, 2)).toThrow(RangeError);
  });

  it('lies within half a step of the number, and mirrors for its opposite', () => {
    fc.assert(
      fc.property(between(-1e6, 1e6), fc.integer({ min: 0, max: 9 }), (x, decimals) => {
        const text = formatFigure(x, decimals);
        expect(Math.abs(Number(text) - x)).toBeLessThanOrEqual(0.5 * 10 ** -decimals * (1 + 1e-6));
        expect(text.split('.')[1]?.length ?? 0).toBe(decimals);
        if (Number(text) !== 0) expect(formatFigure(-x, decimals)).toBe(x < 0 ? text.slice(1) : `-${text}`);
      }),
    );
  });

  it('loses its last binary noise and nothing that was typed', () => {
    expect(tidy(25.400000000000002)).toBe(25.4);
    fc.assert(
      fc.property(fc.integer({ min: -1e9, max: 1e9 }), (n) => {
        expect(tidy(n / 1e4)).toBe(n / 1e4);
      }),
    );
  });
});
