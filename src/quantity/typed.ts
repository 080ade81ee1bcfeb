/** @module A figure as a person typed it: the decimal text and the unit, so that resolution and wording are never lost. */

export interface Typed {
  /** The decimal as typed, for example `54.980` or `2 9/16`. */
  readonly text: string;
  /** The unit's symbol as the unit list names it, for example `mm` or `in`. */
  readonly unit: string;
}
