/** @module The measuring sheet of one engine: everything that verdicts and doubts are computed from. */
import type { EngineType } from '../engine/engine-type.ts';
import type { DecisionRule } from './decision-rule.ts';
import type { FormerOverhaul } from './former-overhaul.ts';
import type { Instrument } from './instrument.ts';
import { cellKey, type Reading } from './reading.ts';
import type { Priors } from './slips/priors.ts';

/**
 * Sizes as they were noted, the later over the earlier: of all places of a component under its name, of one place
 * under `bores@bore.2`. What is noted of a place counts before what is noted of all.
 */
export type Sizes = ReadonlyMap<string, string>;

export interface Sheet {
  readonly engine: EngineType;
  readonly instruments: ReadonlyMap<string, Instrument>;
  /** By `cellKey`, oldest first; the last one counts with those that it repeats. Struck-out ones are not among them. */
  readonly readings: ReadonlyMap<string, readonly Reading[]>;
  /** Sizes as found, by component or by `component@place`, where they are not `standard`: see `fittedSize`. */
  readonly sizesFound: Sizes;
  /** Sizes of what has come for a place since, likewise. */
  readonly sizesReceived?: Sizes;
  /** Probability of conformance asked for; 0.95 is the default of ISO 14253-1. */
  readonly conformance: number;
  /** Judged by the limits as made, as what was ordered must be when it comes; else by those for going back. */
  readonly against?: 'as made';
  /** The shop's rule, where it is another than that of ISO 14253-1 with the conformance above. */
  readonly rule?: DecisionRule;
  /** Hours that the engine has run, where they are known: how much wear is nothing out of the ordinary. */
  readonly hoursRun?: number;
  /** How it was left when it was last in the shop. */
  readonly former?: FormerOverhaul;
  /** How often each slip happens, where the shop goes by other chances than the usual ones. */
  readonly priors?: Priors;
}

const guarded = new WeakMap<Sheet, DecisionRule>();

/** The rule by which a sheet is judged. */
export const ruleOf = (sheet: Sheet): DecisionRule => {
  if (sheet.rule) return sheet.rule;
  const before = guarded.get(sheet);
  if (before) return before;
  const rule: DecisionRule = { kind: 'guarded', conformance: sheet.conformance };
  guarded.set(sheet, rule);
  return rule;
};

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
