/** @module Every conversion agrees with Debian's `units` program and with a mathematics library. */
import { unit as mathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { convert, type Dimension, unitsOf } from '../../src/quantity/unit.ts';
import { outsideCheck } from '../outside-check.ts';
import { ask, lacking } from './program.ts';

/** What each unit is called in `units` and in mathjs; missing where mathjs has none. Temperatures are apart. */
const names: Readonly<Record<string, readonly [units: string, mathjs?: string]>> = {
  mm: ['mm', 'mm'],
  µm: ['micrometer', 'um'],
  cm: ['cm', 'cm'],
  m: ['m', 'm'],
  in: ['inch', 'inch'],
  thou: ['mil', 'mil'],
  ft: ['foot', 'ft'],
  rad: ['radian', 'rad'],
  deg: ['degree', 'deg'],
  N: ['N', 'N'],
  kN: ['kN', 'kN'],
  lbf: ['lbf', 'lbf'],
  kgf: ['kgf', 'kgf'],
  N·m: ['N m', 'N m'],
  lbf·ft: ['lbf ft', 'lbf ft'],
  lbf·in: ['lbf inch', 'lbf inch'],
  kgf·m: ['kgf m', 'kgf m'],
  W: ['watt', 'W'],
  kW: ['kW', 'kW'],
  hp: ['horsepower', 'hp'],
  PS: ['metrichorsepower'],
  Pa: ['Pa', 'Pa'],
  kPa: ['kPa', 'kPa'],
  MPa: ['MPa', 'MPa'],
  bar: ['bar', 'bar'],
  mbar: ['mbar', 'mbar'],
  psi: ['psi', 'psi'],
  'kgf/cm²': ['kgf/cm^2', 'kgf/cm^2'],
  h: ['hour', 'hour'],
  min: ['minute', 'minute'],
  s: ['second', 'second'],
  rpm: ['rev/min'],
  Hz: ['rev/s'],
  kg: ['kg', 'kg'],
  g: ['gram', 'gram'],
  lb: ['lb', 'lbm'],
  'mm³': ['mm^3', 'mm^3'],
  'cm³': ['cm^3', 'cm^3'],
  L: ['liter', 'L'],
  'in³': ['inch^3', 'in^3'],
  'L/min': ['liter/min', 'L/min'],
  'L/h': ['liter/hour', 'L/h'],
  'm³/h': ['m^3/hour', 'm^3/h'],
  'ft³/min': ['foot^3/min', 'ft^3/min'],
  'ft³/h': ['foot^3/hour', 'ft^3/h'],
  'g/(kW·h)': ['gram/(kW hour)', 'gram/(kW h)'],
  'kg/(kW·h)': ['kg/(kW hour)', 'kg/(kW h)'],
  'lb/(hp·h)': ['lb/(horsepower hour)', 'lbm/(hp h)'],
  'g/(PS·h)': ['gram/(metrichorsepower hour)'],
  '1': ['1'],
  '%': ['percent'],
  'rad/mm': ['radian/mm', 'rad/mm'],
  'deg/mm': ['degree/mm', 'deg/mm'],
  'deg/in': ['degree/inch', 'deg/inch'],
  'deg/thou': ['degree/mil', 'deg/mil'],
  'mm/rad': ['mm/radian', 'mm/rad'],
  'mm/deg': ['mm/degree', 'mm/deg'],
  'in/deg': ['inch/degree', 'inch/deg'],
};
const temperatures: Readonly<Record<string, readonly [units: string, mathjs: string]>> = {
  '°C': ['tempC', 'degC'],
  '°F': ['tempF', 'degF'],
  K: ['tempK', 'K'],
};
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
  'volume',
  'volume-per-time',
  'mass-per-energy',
  'ratio',
  'angle-per-length',
  'length-per-angle',
];

interface Pair {
  readonly value: number;
  readonly from: string;
  readonly to: string;
}
const pairs: readonly Pair[] = dimensions.flatMap((dimension) =>
  unitsOf(dimension).flatMap((from, at) =>
    unitsOf(dimension)
      .filter((to) => to !== from)
      .map((to, other) => ({ value: 1.25 + 3 * at + 0.5 * other, from, to })),
  ),
);

const ours = ({ value, from, to }: Pair): number => {
  const converted = convert(value, from, to);
  if (converted.kind === 'refused') throw new Error(converted.refusal.what);
  return converted.value;
};

const disagreeing = (theirs: (pair: Pair) => number | undefined, tolerance: number): readonly string[] =>
  pairs.flatMap((pair) => {
    const expected = theirs(pair);
    const got = ours(pair);
    return expected === undefined || Math.abs(got - expected) <= tolerance * (Math.abs(expected) + 1e-9)
      ? []
      : [`${pair.value} ${pair.from} is ${got} ${pair.to}, not ${expected}`];
  });

describe('every conversion', () => {
  it('is known by another name in the other programs', () => {
    const symbols = dimensions.flatMap(unitsOf);
    expect(symbols.filter((symbol) => !(symbol in names || symbol in temperatures))).toEqual([]);
    expect(pairs.length).toBeGreaterThanOrEqual(150);
  });

  it('agrees with units', (context) => {
    const lacks = lacking('units');
    context.skip(lacks !== undefined, `${lacks}`);
    const asked = pairs.flatMap(({ value, from, to }) => {
      const [shift] = temperatures[from] ?? [];
      const [target] = temperatures[to] ?? [];
      return shift === undefined
        ? [`${value} ${names[from]?.[0]}`, names[to]?.[0]]
        : [`${shift}(${value})`, target];
    });
    const told = ask('units', ['--terse', '--digits', '15'], `${asked.join('\n')}\n`)
      .trim()
      .split('\n')
      .map(Number);
    expect(told).toHaveLength(pairs.length);
    expect(told.every(Number.isFinite)).toBe(true);
    const byPair = new Map(pairs.map((pair, index) => [pair, told[index]]));
    // it prints 15 digits; a shifted temperature loses one more
    expect(disagreeing((pair) => byPair.get(pair), 2e-14)).toEqual([]);
    const alike = outsideCheck('convert', 'the program units, every pair of units', '%', 1e-10);
    for (const pair of pairs) alike(ours(pair), byPair.get(pair) ?? Number.NaN);
  });

  it('agrees with mathjs', () => {
    // its psi is 6894.75729276459 Pa, by definition 6894.757293168...: 6e-11 off
    const theirs = ({ value, from, to }: Pair): number | undefined => {
      const [source, target] = [from, to].map((symbol) => temperatures[symbol]?.[1] ?? names[symbol]?.[1]);
      return source === undefined || target === undefined
        ? undefined
        : mathUnit(value, source).toNumber(target);
    };
    expect(pairs.filter((pair) => theirs(pair) !== undefined).length).toBeGreaterThan(140);
    expect(disagreeing(theirs, 1e-10)).toEqual([]);
  });
});
