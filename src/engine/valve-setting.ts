/** @module Setting of valve clearances as the core uses it: what is read where, when the valves lift, the maker's own order. */
import type { Radians } from '../quantity/brand.ts';

/** Crank angles, each from the dead centre that it is told by. */
export interface ValveEvents {
  /** Before the top. */
  readonly inletOpens: Radians;
  /** After the bottom. */
  readonly inletCloses: Radians;
  /** Before the bottom. */
  readonly exhaustOpens: Radians;
  /** After the top. */
  readonly exhaustCloses: Radians;
}

/** A position of the maker's own order: a cylinder at its firing top, and the valves to set there by cylinder. */
export interface OwnPosition {
  readonly top: number;
  readonly inlet: readonly number[];
  readonly exhaust: readonly number[];
}

export interface ValveSetting {
  /** The characteristics that hold the clearances, read at places that belong to cylinders in turn. */
  readonly inlet: string;
  readonly exhaust: string;
  readonly events: ValveEvents;
  /** Past closing and before opening, until the tappet lies on the base circle. */
  readonly rest: Radians;
  readonly engineIs: 'cold' | 'hot';
  /** Which way the crank is turned, in words. */
  readonly turn: string;
  /** The characteristic that holds the lift of each lobe. */
  readonly lift?: string;
  /** The maker's own order, which goes before one worked out. */
  readonly order?: readonly OwnPosition[];
}
