/** @module Shim packs for all pumps together, chosen exactly from the shims in the box. */
import type { Millimetres, Radians } from '../quantity/brand.ts';

export interface BoxShim {
  readonly thickness: Millimetres;
  readonly count: number;
}

export interface PackNeed {
  readonly pump: string;
  /** Datum dimension less the depth measured at the timing point. */
  readonly needed: Millimetres;
}

export interface ShimPack {
  readonly pump: string;
  readonly needed: Millimetres;
  /** Thickest first. */
  readonly shims: readonly Millimetres[];
  readonly thickness: Millimetres;
  /** Fitted less needed. */
  readonly error: Millimetres;
  /** The same as crank angle; positive is early (advanced). */
  readonly timingError: Radians;
}

export interface PackSet {
  readonly packs: readonly ShimPack[];
  readonly greatestError: Millimetres;
  /** Greatest less least error, cylinder to cylinder. */
  readonly spread: Millimetres;
  readonly shimsUsed: number;
}
