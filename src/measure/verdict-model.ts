/** @module What measuring comes to: a judged value, and what looks wrong. */
import type { Limits, PlaceId } from '../engine/engine-type.ts';
import type { Typed } from '../quantity/typed.ts';
import type { Uncertain } from '../quantity/uncertain.ts';
import type { Cell } from './reading.ts';

export type Verdict = 'within' | 'outside' | 'unsure' | 'not yet known';

/** A characteristic at one place, judged. All lengths mm. */
export interface Judged {
  readonly place: PlaceId;
  readonly characteristic: string;
  /** The size that decides (of several two-point sizes the one nearest to or furthest beyond its limit). */
  readonly value?: Uncertain;
  /** Half the width of the 95 % coverage interval. */
  readonly expanded?: number;
  /** Probability that it conforms to the limits for going back (JCGM 106). */
  readonly conformance?: number;
  readonly limits?: Limits;
  readonly verdict: Verdict;
  /** Whether the value also lies within the limits as made. */
  readonly asNew?: boolean;
  /** Cells of the scheme, in their order, with the verdict of each where it has been read. */
  readonly cells: readonly JudgedCell[];
  /** Cells still to read before the characteristic is known (of its operands where derived). */
  readonly missing: readonly Cell[];
}

export interface JudgedCell {
  readonly cell: Cell;
  /** The last one taken. */
  readonly reading?: string;
  /** How many readings the size is the mean of, where there is more than one. */
  readonly repeats?: number;
  /** Readings of the cell that the last one replaced, since they are no repeats of it. */
  readonly replaced?: readonly string[];
  readonly size?: Uncertain;
  readonly expanded?: number;
  readonly conformance?: number;
  readonly verdict: Verdict;
}

/** A reading that looks wrong, and what it probably should be. */
export interface Doubt {
  /** Stable for the same readings, so that an answer to it can be stored. */
  readonly id: string;
  readonly slip: string;
  /** What looks wrong, in words. */
  readonly says: string;
  /** Ids of the readings in doubt. */
  readonly readings: readonly string[];
  readonly places: readonly PlaceId[];
  /** What each of them probably was, in the same order. */
  readonly likely: readonly Typed[];
  /** Odds of the slip against an honest reading: 40 stands for 40 to 1. */
  readonly odds: number;
  /** Where it happens as a scale is read: the scale as typed and as it probably was is worth comparing. */
  readonly onScale?: boolean;
}
