/** @module Figures with units are read as typed, and come back as typed. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amountOf, lengthOf, readTyped, resolutionOf, typedText, unitTyped } from './typed.ts';
import { type Dimension, unitsOf } from './unit.ts';

describe('a typed figure', () => {
  it.each([
    ['54.980 mm', 'length', '54.980', 'mm', 54.98, 0.001],
    ['54,980mm', 'length', '54,980', 'mm', 54.98, 0.001],
    ['2 9/16"', 'length', '2 9/16', 'in', 65.0875, 1.5875],
    ['2.1650 in', 'length', '2.1650', 'in', 54.991, 0.00254],
    ['-2 thou', 'length', '-2', 'thou', -0.0508, 0.0254],
    ['90 Nm', 'torque', '90', 'N·m', 90, 1],
    ['20°', 'angle', '20', 'deg', Math.PI / 9, Math.PI / 180],
    ['68 degF', 'temperature', '68', '°F', 20, 5 / 9],
    ['5e-3 mm', 'length', '5e-3', 'mm', 0.005, 0.001],
    ['1500 1/min', 'speed', '1500', 'rpm', 1500, 1],
    ['8000 h', 'time', '8000', 'h', 8000, 1],
    ['0.12', 'ratio', '0.12', '1', 0.12, 0.01],
    ['12 %', 'ratio', '12', '%', 0.12, 0.01],
    ['4', 'count', '4', 'pieces', 4, 1],
    ['0.95 deg/mm', 'angle-per-length', '0.95', 'deg/mm', (0.95 * Math.PI) / 180, (0.01 * Math.PI) / 180],
  ] as const)('%s keeps its text and unit', (text, dimension, figure, unit, amount, resolution) => {
    const typed = readTyped(text, dimension);
    expect(typed).toEqual({ kind: 'answer', value: { text: figure, unit } });
    if (typed.kind === 'refused') return;
    const read = amountOf(typed.value, dimension);
    expect(read.kind === 'answer' && read.value).toBeCloseTo(amount, 12);
    expect(resolutionOf(typed.value)).toBeCloseTo(resolution, 12);
  });

  it.each([
    ['54.980', 'length', 'the unit is missing: a length is asked for', 'write for example 54.980 mm'],
    ['20 deg', 'length', 'deg is a unit of angle, not of length', 'give it in mm, µm, cm, m, in, thou, ft'],
    ['1,500 h', 'time', 'it can be read in two ways', 'type 1500, or leave out the last zeros'],
    ['1.500 rpm', 'speed', 'it can be read in two ways', 'type 1500, or leave out the last zeros'],
    ['', 'length', 'nothing was typed', 'type a number such as 54.980, 54,980 or 2 9/16'],
    ['mm', 'length', 'it cannot be read as a number', 'type a number such as 54.980, 54,980 or 2 9/16'],
  ] as const)('%s is refused as a %s', (text, dimension, what, remedy) => {
    const typed = readTyped(text, dimension);
    expect(typed.kind === 'refused' && [typed.refusal.what, typed.refusal.remedy]).toEqual([what, remedy]);
  });

  it('reads again what it shows', () => {
    const dimension = fc.constantFrom<Dimension>('length', 'torque', 'temperature', 'pressure', 'angle');
    fc.assert(
      fc.property(dimension, fc.integer({ min: -99_999, max: 99_999 }), fc.nat(), (kind, n, pick) => {
        const unit = unitsOf(kind)[pick % unitsOf(kind).length] ?? '';
        const typed = { text: (n / 1000).toFixed(3), unit };
        expect(readTyped(typedText(typed), kind)).toEqual({ kind: 'answer', value: typed });
      }),
    );
    expect(typedText({ text: '0.12', unit: '1' })).toBe('0.12');
  });

  it('in millimetres is a length as it stands', () => {
    expect(lengthOf({ text: '54.980', unit: 'mm' })).toEqual({ kind: 'answer', value: 54.98 });
    expect(lengthOf({ text: '54.980', unit: 'deg' }).kind).toBe('refused');
    expect(lengthOf({ text: 'x', unit: 'mm' }).kind).toBe('refused');
  });

  it('that cannot be read has no resolution', () => {
    expect(resolutionOf({ text: 'x', unit: 'mm' })).toBe(0);
    expect(resolutionOf({ text: '1', unit: 'x' })).toBe(0);
  });

  it('names its unit as typed', () => {
    expect(['98mm', '2 9/16 in', '98', '1500 1/min', 'mm'].map(unitTyped)).toEqual([
      'mm',
      'in',
      '',
      '1/min',
      '',
    ]);
  });

  it('answers or refuses whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        const typed = readTyped(text, 'length');
        if (typed.kind === 'answer') expect(lengthOf(typed.value).kind).toBe('answer');
      }),
      { numRuns: 1000 },
    );
    const start = performance.now();
    for (const text of ['1'.repeat(1e6), `1${' '.repeat(1e6)}`, `1 ${'m'.repeat(1e6)}`])
      readTyped(text, 'length');
    expect(performance.now() - start).toBeLessThan(500);
  });
});
