/** @module A value with what is not known of it, as a linear form over named influences (JCGM 100, 5.1 and 5.2). */

/** One influence's share: its standard uncertainty times the sensitivity to it, sign kept, in the value's unit. */
export interface Term {
  /** The influence's name. Values that share a name share the error: that is how correlation comes about. */
  readonly name: string;
  /** Sensitivity times standard uncertainty, in the unit of the value; signed. */
  readonly share: number;
  /** Degrees of freedom behind the standard uncertainty; Infinity when it is taken as known. */
  readonly freedom: number;
}

export interface Uncertain {
  readonly value: number;
  /** Sorted by name, each name once. */
  readonly terms: readonly Term[];
}
