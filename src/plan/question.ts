/** @module What a plan is asked about: the measured engine, what was found on it, how long it ran, what is wanted. */
import type { PlaceId } from '../engine/engine-type.ts';
import type { Sheet } from '../measure/sheet.ts';
import type { Hours } from '../quantity/brand.ts';
import type { Demands } from './plan-model.ts';

/** What a finding means for the plan. */
interface FindingForPlan {
  readonly place: string;
  readonly component: string;
  readonly mayGoBack: boolean;
  /** A crack: it may not be machined either. */
  readonly cracked: boolean;
  /** Blued: its hardness must be known before it is ground. */
  readonly overheated?: boolean;
  /** As noted, with its scale: `52 HRC`. */
  readonly hardness?: string;
  readonly says: string;
}

export interface PlanQuestion {
  readonly sheet: Sheet;
  readonly findings: readonly FindingForPlan[];
  readonly hoursRun: Hours;
  readonly demands: Demands;
  /** Names of operations done, each of which may have disturbed something. */
  readonly done?: readonly string[];
  /** What a partial overhaul does not open; nothing where the whole engine is in question. */
  readonly leftOut?: {
    readonly places: ReadonlySet<PlaceId>;
    /** Characteristics at places that are not to be read, as `characteristic|place`. */
    readonly judgements: ReadonlySet<string>;
  };
  /** Ids of options that are ordered already, and cost nothing more. */
  readonly ordered?: readonly string[];
}
