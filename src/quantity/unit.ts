/** @module The units that figures are typed and shown in, with exact factors to the core's own. */
import { type Answer, answer, refuse } from './refusal.ts';

export type Dimension =
  | 'length'
  | 'angle'
  | 'force'
  | 'torque'
  | 'power'
  | 'temperature'
  | 'pressure'
  | 'time'
  | 'speed'
  | 'mass'
  | 'volume'
  | 'volume-per-time'
  | 'mass-per-energy'
  | 'ratio'
  | 'count'
  | 'angle-per-length'
  | 'length-per-angle';

export interface Unit {
  readonly symbol: string;
  readonly dimension: Dimension;
  /** In the core's unit: (value + shift) × times / over. Numerator and denominator apart, so that exact factors stay exact. */
  readonly times: number;
  readonly over: number;
  readonly shift: number;
}

type Row = readonly [symbol: string, times: number, over: number, others: string, shift?: number];

// source: the definitions of the inch (25.4 mm), the pound (0.45359237 kg), standard gravity
// (9.80665 m/s²), the bar and the degree Fahrenheit as ISO 80000 and NIST SP 811, Appendix B give them
// (from memory; each factor is held against another program's in the tests). The first of each list
// is the core's own unit.
const poundForce = 4.4482216152605;
const table: Readonly<Record<Dimension, readonly Row[]>> = {
  length: [
    ['mm', 1, 1, 'MM'],
    ['µm', 1, 1000, 'μm um'],
    ['cm', 10, 1, ''],
    ['m', 1000, 1, ''],
    ['in', 254, 10, 'IN inch inches " ″'],
    ['thou', 254, 10_000, 'mil'],
    ['ft', 3048, 10, 'foot feet'],
  ],
  angle: [
    ['rad', 1, 1, ''],
    ['deg', Math.PI, 180, '° degrees degree'],
  ],
  force: [
    ['N', 1, 1, ''],
    ['kN', 1000, 1, ''],
    ['lbf', poundForce, 1, ''],
    ['kgf', 980_665, 100_000, 'kp'],
  ],
  torque: [
    ['N·m', 1, 1, 'N.m Nm N*m N⋅m'],
    ['lbf·ft', poundForce * 3048, 10_000, 'lbf.ft lbfft lbf*ft lbf⋅ft lbft lb.ft lb·ft ft·lbf ft.lbf ftlbf'],
    ['lbf·in', poundForce * 254, 10_000, 'lbf.in lbfin lbf*in lbf⋅in lbin lb.in lb·in in·lbf in.lbf inlbf'],
    ['kgf·m', 980_665, 100_000, 'kgf.m kgfm kgf*m kgf⋅m kp·m kp.m kpm'],
  ],
  // Two horsepowers: 550 lbf·ft/s and 75 kgf·m/s.
  power: [
    ['W', 1, 1, ''],
    ['kW', 1000, 1, ''],
    ['hp', poundForce * 3048 * 550, 10_000, 'bhp HP'],
    ['PS', 73_549_875, 100_000, 'cv ch'],
  ],
  temperature: [
    ['°C', 1, 1, 'C degC ℃'],
    ['°F', 5, 9, 'F degF ℉', -32],
    ['K', 1, 1, '', -273.15],
  ],
  pressure: [
    ['Pa', 1, 1, 'N/m²'],
    ['kPa', 1000, 1, ''],
    ['MPa', 1_000_000, 1, 'N/mm² N/mm2'],
    ['bar', 100_000, 1, ''],
    ['mbar', 100, 1, 'hPa'],
    ['psi', poundForce * 1e8, 25.4 * 25.4 * 100, 'lbf/in² lbf/in2'],
    ['kgf/cm²', 980_665, 10, 'kgf/cm2 kp/cm² kp/cm2'],
  ],
  time: [
    ['h', 1, 1, 'hr hrs hour hours'],
    ['min', 1, 60, ''],
    ['s', 1, 3600, 'sec'],
  ],
  speed: [
    ['rpm', 1, 1, '1/min rev/min r/min min⁻¹'],
    ['Hz', 60, 1, '1/s rev/s s⁻¹'],
  ],
  mass: [
    ['kg', 1, 1, ''],
    ['g', 1, 1000, ''],
    ['lb', 45_359_237, 100_000_000, 'lbm'],
  ],
  volume: [
    ['mm³', 1, 1, 'mm3'],
    ['cm³', 1000, 1, 'cm3 ml mL'],
    ['L', 1_000_000, 1, 'l litre litres dm³ dm3'],
    ['in³', 254 ** 3, 1000, 'in3'],
  ],
  'volume-per-time': [
    ['L/min', 1, 1, 'l/min lpm'],
    ['L/h', 1, 60, 'l/h'],
    ['m³/h', 1000, 60, 'm3/h'],
    ['ft³/min', 3048 ** 3, 1e9, 'ft3/min cfm'],
    ['ft³/h', 3048 ** 3, 60e9, 'ft3/h'],
  ],
  'mass-per-energy': [
    ['g/(kW·h)', 1, 1, 'g/kWh g/kW·h g/(kWh) g/kW.h'],
    ['kg/(kW·h)', 1000, 1, 'kg/kWh kg/(kWh)'],
    ['lb/(hp·h)', 453_592_370 * 10, poundForce * 3048 * 550, 'lb/hph lb/hp·h lb/(hph) lb/bhph'],
    ['g/(PS·h)', 100_000_000, 73_549_875, 'g/PSh g/PS·h'],
  ],
  ratio: [
    ['1', 1, 1, ''],
    ['%', 1, 100, 'percent'],
  ],
  count: [['pieces', 1, 1, 'pcs off']],
  'angle-per-length': [
    ['rad/mm', 1, 1, ''],
    ['deg/mm', Math.PI, 180, '°/mm'],
    ['deg/in', Math.PI * 10, 180 * 254, '°/in'],
    ['deg/thou', Math.PI * 10_000, 180 * 254, '°/thou'],
  ],
  'length-per-angle': [
    ['mm/rad', 1, 1, ''],
    ['mm/deg', 180, Math.PI, 'mm/°'],
    ['in/deg', 180 * 254, Math.PI * 10, 'in/°'],
  ],
};

const units: readonly Unit[] = (Object.keys(table) as Dimension[]).flatMap((dimension) =>
  table[dimension].map(([symbol, times, over, , shift = 0]) => ({ symbol, dimension, times, over, shift })),
);

const bySymbol: ReadonlyMap<string, Unit> = new Map(
  Object.values(table)
    .flat()
    .flatMap(([symbol, , , others], index) =>
      [symbol, ...others.split(' ').filter((other) => other !== '')].map(
        (name) => [name, units[index] as Unit] as const,
      ),
    ),
);

/** Symbols of one dimension, the core's own first. */
export const unitsOf = (dimension: Dimension): readonly string[] =>
  units.filter((unit) => unit.dimension === dimension).map(({ symbol }) => symbol);

/** A dimension in words: `angle per length`. */
export const dimensionText = (dimension: Dimension): string => dimension.replaceAll('-', ' ');

const alikeTo = (symbol: string): Unit | undefined =>
  units.find((known) => known.symbol.toLowerCase() === symbol.toLowerCase());

/** The unit that a symbol names; spellings such as `um`, `Nm` or `degC` are known too. */
export const findUnit = (symbol: string): Answer<Unit> => {
  const unit = bySymbol.get(symbol);
  if (unit !== undefined) return answer(unit);
  const alike = alikeTo(symbol);
  if (alike !== undefined) {
    return refuse(`there is no unit ${symbol}`, symbol, `write ${alike.symbol}, if that is what you mean`);
  }
  return refuse(
    `there is no unit ${symbol.slice(0, 30)}`,
    symbol.slice(0, 30),
    `use one of ${units.map((known) => known.symbol).join(', ')}`,
  );
};

/** The unit that a symbol names, where it must be of one dimension. */
export const unitOf = (symbol: string, dimension: Dimension): Answer<Unit> => {
  const found = findUnit(symbol);
  if (found.kind === 'refused') {
    const remedy = `give it in ${unitsOf(dimension).join(', ')}`;
    return alikeTo(symbol) !== undefined ? found : refuse(found.refusal.what, symbol.slice(0, 30), remedy);
  }
  if (found.value.dimension === dimension) return found;
  return refuse(
    `${found.value.symbol} is a unit of ${dimensionText(found.value.dimension)}, not of ${dimensionText(dimension)}`,
    symbol,
    `give it in ${unitsOf(dimension).join(', ')}`,
  );
};

/** A value in a unit as the core holds it: mm, rad, N, N·m, W, °C, Pa, h, rpm, kg, g/(kW·h), 1, rad/mm. */
export const toCore = (value: number, { times, over, shift }: Unit): number =>
  ((value + shift) * times) / over;

/** A value of the core in a unit. */
export const fromCore = (value: number, { times, over, shift }: Unit): number =>
  (value * over) / times - shift;

/** A difference, a step or an uncertainty: converted by the factor alone, whatever the zero of the scale. */
export const stepToCore = (step: number, { times, over }: Unit): number => (step * times) / over;
export const stepFromCore = (step: number, { times, over }: Unit): number => (step * over) / times;

/**
 * Converts a value from one unit to another of the same dimension.
 *
 * @param value  any finite number, in the unit `from`
 * @returns the value in the unit `to`; refuses unknown units and units of different dimensions
 * @source  exact factors by definition: ISO 80000, NIST SP 811 Appendix B (from memory)
 * @example convert(1, 'in', 'mm') // 25.4
 */
export const convert = (value: number, from: string, to: string): Answer<number> => {
  const source = findUnit(from);
  if (source.kind === 'refused') return source;
  const target = unitOf(to, source.value.dimension);
  if (target.kind === 'refused') return target;
  const a = source.value;
  const b = target.value;
  return answer(((value + a.shift) * (a.times * b.over)) / (a.over * b.times) - b.shift);
};
