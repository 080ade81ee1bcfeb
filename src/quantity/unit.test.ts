/** @module Units are known by their usual spellings and convert there and back. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import {
  convert,
  type Dimension,
  findUnit,
  fromCore,
  stepFromCore,
  stepToCore,
  toCore,
  unitOf,
  unitsOf,
} from './unit.ts';

const dimensions: readonly Dimension[] = [
  'length',
  'angle',
  'force',
  'torque',
  'power',
  'temperature',
  'pressure',
  'time',
  'speed',
  'mass',
  'volume-per-time',
  'mass-per-energy',
  'ratio',
  'count',
  'angle-per-length',
  'length-per-angle',
];
const symbols = dimensions.flatMap((dimension) =>
  unitsOf(dimension).map((symbol) => ({ dimension, symbol })),
);

const read = (value: number, from: string, to: string): number => {
  const converted = convert(value, from, to);
  if (converted.kind === 'refused') throw new Error(converted.refusal.what);
  return converted.value;
};

describe('a conversion', () => {
  // source: definitions of the inch, the pound, standard gravity, the bar, the Fahrenheit scale:
  // ISO 80000 and NIST SP 811, Appendix B.8 (from memory; another program's figures in test/outside)
  it.each([
    [1, 'in', 'mm', 25.4],
    [25.4, 'mm', 'in', 1],
    [1, 'thou', 'µm', 25.4],
    [2.165, 'in', 'mm', 54.991],
    [54_980, 'µm', 'mm', 54.98],
    [1, 'ft', 'in', 12],
    [180, 'deg', 'rad', Math.PI],
    [1, 'kgf', 'N', 9.80665],
    [1, 'lbf', 'N', 4.4482216152605],
    [1, 'lbf·ft', 'lbf·in', 12],
    [1, 'PS', 'W', 735.49875],
    [100, 'hp', 'kW', 74.569987158227],
    [1, 'lb/(hp·h)', 'g/(kW·h)', 608.277387841761],
    [32, '°F', '°C', 0],
    [212, '°F', '°C', 100],
    [20, '°C', '°F', 68],
    [-40, '°C', '°F', -40],
    [0, 'K', '°C', -273.15],
    [1, 'bar', 'kPa', 100],
    [1, 'kgf/cm²', 'kPa', 98.0665],
    [90, 'min', 'h', 1.5],
    [25, 'Hz', 'rpm', 1500],
    [1, 'lb', 'g', 453.59237],
    [12, '%', '1', 0.12],
    [0.95, 'deg/mm', 'deg/thou', 0.02413],
  ])('of %f %s to %s gives %f', (value, from, to, expected) => {
    expect(Math.abs(read(value, from, to) - expected)).toBeLessThanOrEqual(
      1e-14 * Math.abs(expected) + 1e-13,
    );
  });

  it('to a decimal unit leaves no binary noise behind', () => {
    expect(read(1, 'in', 'mm')).toBe(25.4);
    expect(read(54_980, 'µm', 'mm')).toBe(54.98);
    expect(read(2.165, 'in', 'mm')).toBe(54.991);
  });

  it.each(symbols)(
    'from $symbol to any unit of $dimension and back loses nothing',
    ({ dimension, symbol }) => {
      for (const other of unitsOf(dimension)) {
        fc.assert(
          fc.property(between(-1e4, 1e4), (value) => {
            const back = read(read(value, symbol, other), other, symbol);
            expect(Math.abs(back - value)).toBeLessThanOrEqual(1e-11 * (1 + Math.abs(value)));
          }),
          { numRuns: 20 },
        );
      }
    },
  );

  it.each(symbols)('of a step in $symbol is the difference of two values', ({ dimension, symbol }) => {
    const unit = unitOf(symbol, dimension);
    if (unit.kind === 'refused') throw new Error(unit.refusal.what);
    const step = stepToCore(0.5, unit.value);
    expect(toCore(3, unit.value) - toCore(2.5, unit.value)).toBeCloseTo(step, 9);
    expect(stepFromCore(step, unit.value)).toBeCloseTo(0.5, 12);
    expect(fromCore(toCore(2.5, unit.value), unit.value)).toBeCloseTo(2.5, 11);
  });

  it('is refused between different kinds of unit, naming the right ones', () => {
    expect(convert(1, 'in', 'deg')).toEqual({
      kind: 'refused',
      refusal: {
        what: 'deg is a unit of angle, not of length',
        where: 'deg',
        remedy: 'give it in mm, µm, cm, m, in, thou, ft',
      },
    });
    expect(convert(1, 'furlong', 'mm').kind).toBe('refused');
  });
});

describe('a unit', () => {
  it.each([
    ['um', 'µm'],
    ['μm', 'µm'],
    ['inch', 'in'],
    ['"', 'in'],
    ['Nm', 'N·m'],
    ['N.m', 'N·m'],
    ['N⋅m', 'N·m'],
    ['lbf.ft', 'lbf·ft'],
    ['lbft', 'lbf·ft'],
    ['°', 'deg'],
    ['C', '°C'],
    ['degC', '°C'],
    ['degF', '°F'],
    ['1/min', 'rpm'],
    ['N/mm²', 'MPa'],
    ['°/mm', 'deg/mm'],
  ])('spelled %s is %s', (spelled, symbol) => {
    const found = findUnit(spelled);
    expect(found.kind === 'answer' && found.value.symbol).toBe(symbol);
  });

  it('has one spelling for one unit', () => {
    expect(new Set(symbols.map(({ symbol }) => symbol)).size).toBe(symbols.length);
    for (const { symbol, dimension } of symbols) {
      const found = findUnit(symbol);
      expect(found.kind === 'answer' && [found.value.symbol, found.value.dimension]).toEqual([
        symbol,
        dimension,
      ]);
    }
  });

  it('that is nearly known is named', () => {
    const found = findUnit('mpa');
    expect(found.kind === 'refused' && found.refusal.remedy).toBe('write MPa, if that is what you mean');
    const sized = unitOf('Mm', 'length');
    expect(sized.kind === 'refused' && sized.refusal.remedy).toBe('write mm, if that is what you mean');
  });

  it('that is unknown is refused with those that fit', () => {
    const found = unitOf('furlong', 'torque');
    expect(found.kind === 'refused' && found.refusal).toEqual({
      what: 'there is no unit furlong',
      where: 'furlong',
      remedy: 'give it in N·m, lbf·ft, lbf·in, kgf·m',
    });
  });
});
