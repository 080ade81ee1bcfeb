/** @module The run-in as the core uses it: its steps, what each gauge may show in them, and what a fault takes down. */
import type { Typed } from '../quantity/typed.ts';
import type { LimitedGauge, SteadyGauge } from './gauge.ts';

/** What a gauge may show, in the core's unit of its kind. */
export interface GaugeLimit {
  readonly least?: number;
  readonly greatest?: number;
  /** The greatest counts, and the step is passed, with the oil at least so warm, °C. */
  readonly withOilAt?: number;
  /** How far the cylinders may lie apart, °C. */
  readonly spread?: number;
  /** As the manual prints them: `least`, `greatest`, `with-oil-at`, `spread`. */
  readonly printed: Readonly<Record<string, Typed>>;
}

/** Temperatures that must have come to rest before a step is passed. */
export interface Steady {
  /** Minutes from one of the readings that count to the next, at least. */
  readonly apart: number;
  /** How far the last three may lie from one another, °C; as printed beside it. */
  readonly within: ReadonlyMap<SteadyGauge, { readonly amount: number; readonly printed: Typed }>;
}

export interface RunInStep {
  readonly title: string;
  /** The operation that it is a part of: what comes before that is signed first. */
  readonly operation: string;
  readonly speed: Typed;
  readonly load: Typed;
  readonly minutes: number;
  readonly limits: ReadonlyMap<LimitedGauge, GaugeLimit>;
  readonly steady?: Steady;
}

export interface RunIn {
  readonly steps: readonly RunInStep[];
  /** What the gauges may show in every step that gives no other limits; the steps hold them too. */
  readonly limits: ReadonlyMap<LimitedGauge, GaugeLimit>;
  /** How far speed and load may be from what a step asks, a share of the greatest that any step asks. */
  readonly setWithin: number;
  /** What is run again when a fault was found. */
  readonly afterFault: 'restart all' | 'repeat the step';
  /** Minutes from one reading to the next, at most. */
  readonly readEvery?: number;
  /** After each start: as printed, a time. */
  readonly noOilPressureWithin?: Typed;
  readonly source?: string;
}
