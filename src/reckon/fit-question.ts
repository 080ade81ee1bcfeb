/** @module What selective fitting is asked: places with their room, parts with their sizes, the limits of the clearance. */
import type { DecisionRule } from '../measure/decision-rule.ts';
import type { Uncertain } from '../quantity/uncertain.ts';

export interface FitPlace {
  readonly name: string;
  /** What there is without the part, mm: the housing less the journal, the bore. */
  readonly room: Uncertain;
  /** Limits of the clearance, mm, least below greatest. */
  readonly limits: { readonly least: number; readonly greatest: number };
}

export interface FitPart {
  readonly name: string;
  /** mm. */
  readonly size: Uncertain;
  /** Where the two parts of a place differ: which of the two it is, such as `upper`. */
  readonly half?: string;
}

export interface FitQuestion {
  readonly places: readonly FitPlace[];
  readonly parts: readonly FitPart[];
  /** Parts take up room (clearance = room − parts), or go round what is there (clearance = parts − room). */
  readonly goes: 'inside' | 'outside';
  /** The halves that each place takes, one part of each; one or two, which may be alike: `['', '']`. */
  readonly takes: readonly string[];
  readonly rule: DecisionRule;
  /** Bound on the search for pairs, in pairs looked at. */
  readonly effort?: number;
}
