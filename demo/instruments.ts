/** @module The invented workshop's register of instruments: figures as their invented certificates give them. */
import type { Instrument } from '../src/measure/instrument.ts';
import type { Typed } from '../src/quantity/typed.ts';

const mm = (text: string): Typed => ({ text, unit: 'mm' });

type Row = readonly [
  name: string,
  kind: string,
  least: string,
  greatest: string,
  resolution: string,
  permissibleError: string,
  repeatability: string,
  zero: string,
  turn?: string,
];

const rows: readonly Row[] = [
  ['mic-0-25', 'outside micrometer', '0', '25', '0.01', '0.004', '0.001', '0.000', '0.5'],
  ['mic-25-50', 'outside micrometer', '25', '50', '0.001', '0.004', '0.001', '0.001', '0.5'],
  ['mic-50-75', 'outside micrometer', '50', '75', '0.001', '0.004', '0.001', '-0.002', '0.5'],
  ['mic-75-100', 'outside micrometer', '75', '100', '0.001', '0.005', '0.001', '0.000', '0.5'],
  ['bore-35-160', 'bore gauge', '35', '160', '0.001', '0.004', '0.0015', '0.001', '1'],
  ['depth-0-100', 'depth gauge', '0', '100', '0.01', '0.010', '0.005', '0.00', '0.5'],
  ['dial-0-12', 'dial gauge', '0', '12', '0.01', '0.010', '0.003', '0.00', '1'],
  ['dial-0-1', 'dial gauge', '0', '1', '0.001', '0.003', '0.001', '0.000', '0.2'],
  ['feelers', 'feeler set', '0.03', '1.5', '0.01', '0.005', '0.005', '0.00'],
];

export const instruments: readonly Instrument[] = rows.map(
  ([name, kind, least, greatest, resolution, permissibleError, repeatability, zero, turn]) => ({
    name,
    kind,
    range: { least: mm(least), greatest: mm(greatest) },
    resolution: mm(resolution),
    permissibleError: mm(permissibleError),
    repeatability: mm(repeatability),
    zero: mm(zero),
    ...(turn === undefined ? {} : { turn: mm(turn) }),
  }),
);
