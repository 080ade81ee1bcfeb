/** @module The kinds of instruments that a workshop has: what each measures, and whether it holds one size for others. */
import type { Dimension } from '../quantity/unit.ts';

export interface InstrumentKind {
  readonly name: string;
  readonly measures: Dimension;
  /** It holds one size, and others are checked or set in it. */
  readonly master?: true;
}

export const instrumentKinds: readonly InstrumentKind[] = [
  { name: 'outside micrometer', measures: 'length' },
  { name: 'ball micrometer', measures: 'length' },
  // Two-point, set in a ring or a micrometer.
  { name: 'bore gauge', measures: 'length' },
  { name: 'dial gauge', measures: 'length' },
  { name: 'depth gauge', measures: 'length' },
  { name: 'caliper', measures: 'length' },
  { name: 'feeler set', measures: 'length' },
  { name: 'protractor', measures: 'angle' },
  { name: 'spring tester', measures: 'force' },
  { name: 'pressure gauge', measures: 'pressure' },
  { name: 'scales', measures: 'mass' },
  { name: 'torque wrench', measures: 'torque' },
  { name: 'thermometer', measures: 'temperature' },
  { name: 'setting ring', measures: 'length', master: true },
  { name: 'length bar', measures: 'length', master: true },
  { name: 'gauge block', measures: 'length', master: true },
];

/** What is known of a kind; one that is on no list is taken to measure lengths. */
export const kindOf = (name: string): InstrumentKind =>
  instrumentKinds.find((kind) => kind.name === name) ?? { name, measures: 'length' };
