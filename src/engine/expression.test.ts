/** @module Derived characteristics: their short form in the file, the names in them, and the interval of their value. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm } from '../quantity/brand.ts';
import type { ExpressionFile } from './engine-file.ts';
import type { Expression } from './engine-type.ts';
import { operandsOf, readExpression } from './expression.ts';
import { intervalOf } from './interval.ts';

describe('an expression', () => {
  it.each([
    ['bore', { kind: 'reading', of: 'bore' }],
    [{ least: 'bore' }, { kind: 'least', of: 'bore' }],
    [{ greatest: 'bore' }, { kind: 'greatest', of: 'bore' }],
    [{ mean: 'bore' }, { kind: 'mean', of: 'bore' }],
    [{ 'range-over-axes': 'bore' }, { kind: 'range over axes', of: 'bore' }],
    [{ 'range-over-planes': 'bore' }, { kind: 'range over planes', of: 'bore' }],
    [{ factor: [2, 'bore'] }, { kind: 'factor', factor: 2, of: { kind: 'reading', of: 'bore' } }],
  ] as readonly (readonly [ExpressionFile, Expression])[])('%o is read', (file, expression) => {
    expect(readExpression(file)).toEqual(expression);
    expect(operandsOf(expression).map(({ of }) => of)).toEqual(['bore']);
  });

  it('names its characteristics in their order', () => {
    const file = { difference: [{ sum: ['a', { factor: [0.5, { mean: 'b' }] }] }, { least: 'c' }] } as const;
    expect(operandsOf(readExpression(file)).map(({ of, kind }) => `${kind} ${of}`)).toEqual([
      'reading a',
      'mean b',
      'least c',
    ]);
  });
});

describe('the interval of an expression', () => {
  const limits = new Map([
    ['bore', { least: mm(50), greatest: mm(50.02) }],
    ['journal', { least: mm(49.95), greatest: mm(49.97) }],
    ['open', { least: mm(1) }],
  ]);
  const interval = (file: ExpressionFile) => intervalOf(readExpression(file), (name) => limits.get(name));

  it('of a clearance goes from least bore less greatest journal to greatest bore less least journal', () => {
    const [least, greatest] = interval({ difference: ['bore', 'journal'] }) ?? [0, 0];
    expect(least).toBeCloseTo(0.03, 12);
    expect(greatest).toBeCloseTo(0.07, 12);
  });

  it('is turned round by a factor below zero', () => {
    expect(interval({ factor: [-1, 'bore'] })).toEqual([-50.02, -50]);
  });

  it('is not known where an end is open, a name unknown or form is asked for', () => {
    for (const file of ['open', 'nobody', { 'range-over-axes': 'bore' }] as const) {
      expect(interval(file)).toBeUndefined();
      expect(interval({ difference: ['bore', file] })).toBeUndefined();
      expect(interval({ sum: [file, 'bore'] })).toBeUndefined();
      expect(interval({ factor: [2, file] })).toBeUndefined();
    }
  });

  it('holds the value for any sizes within their limits', () => {
    const within = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(within, within, fc.integer({ min: -5, max: 5 }), (a, b, factor) => {
        const bore = 50 + 0.02 * a;
        const journal = 49.95 + 0.02 * b;
        const value = factor * (bore - journal) + bore;
        const file = { sum: [{ factor: [factor, { difference: ['bore', 'journal'] }] }, 'bore'] } as const;
        const [least, greatest] = interval(file) ?? [0, 0];
        expect(value).toBeGreaterThanOrEqual(least - 1e-9);
        expect(value).toBeLessThanOrEqual(greatest + 1e-9);
      }),
    );
  });
});
