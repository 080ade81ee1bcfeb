/** @module A measuring instrument as the register knows it, figures as typed. */
import type { Material } from '../engine/engine-type.ts';
import type { Typed } from '../quantity/typed.ts';

/** What a comparing instrument, such as a two-point bore gauge, was set in before it was used. */
export interface Setting {
  /** Name in the register of the micrometer, ring or bar that it was set in. */
  readonly master: string;
  /** What the master stood at, or the size engraved on it. */
  readonly size: Typed;
  /** What the instrument showed in the master: 0.000 where its dial was turned to zero there. */
  readonly shown: Typed;
}

/** What its last certificate says of itself; dates are written 2026-03-02. */
export interface Calibration {
  /** The certificate's number. */
  readonly certificate: string;
  readonly on: string;
  /** The last day on which it holds. */
  readonly due: string;
}

/** The last time that it was held against its zero, a master or a laboratory's standards. */
export interface Check {
  readonly on: string;
  /** `zero`, the name of a master, or what else it was held against. */
  readonly against: string;
  readonly good: boolean;
}

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
  /** Where it compares: what it was set in. Takes the place of `zero`. */
  readonly setTo?: Setting;
  /** What its certificate says must be added to what it shows, or to the size engraved on it. */
  readonly correction?: Typed;
  /** Expanded uncertainty of that correction, k = 2, from the certificate; takes the place of `permissibleError`. */
  readonly correctionUncertainty?: Typed;
  /** What it is made of where that is not steel. */
  readonly material?: Material;
  readonly calibration?: Calibration;
  readonly checked?: Check;
}
