/** @module What is read while an engine runs: each gauge by its name, the units it may show, whether each cylinder has one. */
import type { Dimension } from '../quantity/unit.ts';

interface GaugeKind {
  readonly title: string;
  /** What it may be a figure of; the first where nothing says which. */
  readonly of: readonly [Dimension, ...Dimension[]];
  /** What a bare figure is taken for. */
  readonly unit: string;
  /** Whether each cylinder has its own. */
  readonly each?: true;
}

const kinds = {
  speed: { title: 'speed', of: ['speed'], unit: 'rpm' },
  load: { title: 'load', of: ['ratio', 'torque'], unit: '%' },
  'oil-pressure': { title: 'oil pressure', of: ['pressure'], unit: 'bar' },
  'oil-temperature': { title: 'oil temperature', of: ['temperature'], unit: '°C' },
  'water-temperature': { title: 'water out', of: ['temperature'], unit: '°C' },
  'water-in-temperature': { title: 'water in', of: ['temperature'], unit: '°C' },
  'exhaust-temperature': { title: 'exhaust', of: ['temperature'], unit: '°C', each: true },
  'crankcase-pressure': { title: 'crankcase pressure', of: ['pressure'], unit: 'mbar' },
  'blow-by': { title: 'blow-by', of: ['volume-per-time'], unit: 'L/min' },
  'fuel-used': { title: 'fuel used', of: ['volume', 'mass'], unit: 'L' },
  'ambient-temperature': { title: 'room air', of: ['temperature'], unit: '°C' },
} as const satisfies Readonly<Record<string, GaugeKind>>;

export type GaugeName = keyof typeof kinds;

export interface Gauge extends GaugeKind {
  readonly name: GaugeName;
}

/** In the order in which they are read: what is set, what an engine dies of first, the rest. */
export const gauges: readonly Gauge[] = (Object.keys(kinds) as GaugeName[]).map((name) => ({
  name,
  ...kinds[name],
}));

export const gaugeNamed = (name: string): Gauge | undefined => gauges.find((one) => one.name === name);

/** Those that a manual gives limits for. */
export const limitedGauges = [
  'speed',
  'oil-pressure',
  'oil-temperature',
  'water-temperature',
  'water-in-temperature',
  'exhaust-temperature',
  'crankcase-pressure',
  'blow-by',
] as const satisfies readonly GaugeName[];

export type LimitedGauge = (typeof limitedGauges)[number];

/** Those that tell whether an engine has come to rest at a speed and load. */
export const steadyGauges = [
  'oil-temperature',
  'water-temperature',
  'exhaust-temperature',
] as const satisfies readonly GaugeName[];

export type SteadyGauge = (typeof steadyGauges)[number];
