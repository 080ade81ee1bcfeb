/** @module What a plan is made of: options of each component, and the one chosen set of them with its proof. */
import type { Bounds, Does } from '../engine/engine-type.ts';
import type { Refusal } from '../quantity/refusal.ts';
import type { Life } from './life.ts';

/** Paid once, however many options share it; below zero what is taken off for a quantity. */
export interface SetUp {
  readonly name: string;
  readonly cents: number;
}

/** Bought by the piece: what so many together cost more, or less where below zero, than their own prices. */
interface Quantity {
  /** The same for all that are counted together. */
  readonly name: string;
  /** By how many are taken: the first is for none. */
  readonly cents: readonly number[];
}

/** How an option would fit what goes back beside it, where that is barred or shortens the hours. */
export interface Fit {
  /** Id of the option that puts the other part back. */
  readonly with: string;
  /** 0 where the fit would be outside its limits. */
  readonly hours: number;
  readonly says: string;
}

/** What may be done with one component (at one place, or all places together). */
export interface Option {
  /** `mains: machine to 0.25` as a stable name: component@place:does:size:supplier. */
  readonly id: string;
  /** The component and, where each place decides by itself, the place: `pistons@piston.2`; else the component alone. */
  readonly slot: string;
  readonly component: string;
  readonly place?: string;
  readonly does: Does;
  readonly size: string;
  /** Of what goes back: the size at each place, where they are not all of one. */
  readonly sizesAt?: Readonly<Record<string, string>>;
  readonly supplier: string;
  readonly cents: number;
  /** Paid once, however many options share them. */
  readonly setUps: readonly SetUp[];
  readonly quantity?: Quantity;
  /** Of ways that exclude one another. */
  readonly way?: string;
  /** Between what masses the part lies, where that is known, kg. */
  readonly mass?: Bounds;
  readonly days: number;
  /** Hours it may be counted on for. */
  readonly hours: number;
  /** All that is known of how long it lasts. */
  readonly life?: Life;
  readonly fits?: readonly Fit[];
  readonly newParts: number;
  /** Why it is sound, in words. */
  readonly reason: string;
}

/** The size that a place has with an option. */
export const sizeWith = ({ size, sizesAt }: Option, place: string): string => sizesAt?.[place] ?? size;

/** An option that was not open, and why. */
export interface Barred {
  readonly slot: string;
  readonly says: string;
}

/** What is asked of the plan; each can be named in a conflict. */
export interface Demands {
  readonly hours?: number;
  readonly days?: number;
  readonly cents?: number;
  /** Slots fixed by a person to one option's id. */
  readonly fixed?: Readonly<Record<string, string>>;
  /** Suppliers from whom nothing is to be had. */
  readonly withoutSuppliers?: readonly string[];
  /** What if it cost otherwise: cents by an option's id or a set-up's name. */
  readonly prices?: Readonly<Record<string, number>>;
}

export interface Plan {
  readonly kind: 'plan';
  readonly choices: readonly Option[];
  readonly barred: readonly Barred[];
  /** What is paid once, and what is taken off for quantities. */
  readonly setUps: readonly SetUp[];
  readonly cents: number;
  readonly days: number;
  /** The engine lasts as long as its shortest component. */
  readonly hours: number;
  readonly newParts: number;
  /** Cost below which no plan exists; equal to cents, since the optimum is proved. */
  readonly bound: number;
  /** By which proof: every combination weighed by the sweep, or the bounds of a general solver. */
  readonly provedBy: 'sweep' | 'solver';
}

/** No plan exists: a set of demands and limits none of which can be left out of the conflict. */
export interface Conflict extends Refusal {
  readonly kind: 'conflict';
  readonly demands: readonly string[];
}

/** Readings or decisions that must come first. */
export interface NotYet {
  readonly kind: 'not yet';
  readonly missing: readonly string[];
}

/** The solver's time ran out before the optimum was proved, or a person stopped it. */
export interface Stopped extends Refusal {
  readonly kind: 'stopped';
}

export type Planned = Plan | Conflict | NotYet | Stopped;

/** What the core is handed to solve a model: text in LP format in, values of the columns out. */
export interface LinearAnswer {
  readonly status: 'optimal' | 'infeasible' | 'stopped';
  readonly objective: number;
  readonly columns: Readonly<Record<string, number>>;
}
export type Solve = (model: string) => Promise<LinearAnswer>;
