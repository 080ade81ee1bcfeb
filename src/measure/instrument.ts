/** @module A measuring instrument as the register knows it, figures as typed. */
import type { Typed } from '../quantity/typed.ts';

export interface Instrument {
  /** Its number on the bench, for example `mic-50-75`. */
  readonly name: string;
  readonly kind: string;
  readonly range: { readonly least: Typed; readonly greatest: Typed };
  readonly resolution: Typed;
  /** Maximum permissible error, plus or minus, from its certificate or standard. */
  readonly permissibleError: Typed;
  /** Standard deviation of repeats by one person. */
  readonly repeatability: Typed;
  /** What it showed on its zero or master; a reading is corrected by it. Missing: never checked. */
  readonly zero?: Typed;
  /** What one turn of its thimble or pointer is; missing where it has none. */
  readonly turn?: Typed;
}
