/** @module The measuring sheet of one engine: everything that verdicts and doubts are computed from. */
import type { EngineType } from '../engine/engine-type.ts';
import type { Instrument } from './instrument.ts';
import { cellKey, type Reading } from './reading.ts';

export interface Sheet {
  readonly engine: EngineType;
  readonly instruments: ReadonlyMap<string, Instrument>;
  /** By `cellKey`, oldest first; the last one counts, earlier ones are kept as repeats are (never struck-out ones). */
  readonly readings: ReadonlyMap<string, readonly Reading[]>;
  /** Size at which a component was found, where it is not `standard`. */
  readonly sizesFound: ReadonlyMap<string, string>;
  /** Probability of conformance asked for; 0.95 is the default of ISO 14253-1. */
  readonly conformance: number;
}

/** A sheet from readings in the order in which they were taken. */
export const layOut = (
  engine: EngineType,
  readings: readonly Reading[],
  instruments: readonly Instrument[],
  { sizesFound = new Map(), conformance = 0.95 }: Partial<Pick<Sheet, 'sizesFound' | 'conformance'>> = {},
): Sheet => ({
  engine,
  instruments: new Map(instruments.map((instrument) => [instrument.name, instrument])),
  readings: Map.groupBy(readings, ({ cell }) => cellKey(cell)),
  sizesFound,
  conformance,
});
