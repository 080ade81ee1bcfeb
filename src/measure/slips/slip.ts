/** @module What a slip is: a usual way in which an honest hand gets a wrong figure on paper. */
import type { Typed } from '../../quantity/typed.ts';
import type { Instrument } from '../instrument.ts';

/** What the figure would have been without the slip. */
export interface Candidate {
  readonly likely: Typed;
  /** Of all such slips, the share that goes just this way. */
  readonly share: number;
  /** How many times further apart true sizes lie than the figures that the slip makes of them; 1 for a shift. */
  readonly stretch: number;
}

/** A slip as a shop sees it in the list of slips. */
export interface KnownSlip {
  readonly name: string;
  /** What happened, to follow `looks like`. */
  readonly says: string;
  /** How often it happens; 1 where that is no chance but whether it is asked about at all. */
  readonly chance: number;
  /** Of what: `readings`. */
  readonly of: string;
}

/** A slip that befalls one figure. */
export interface Slip extends KnownSlip {
  /** No candidate has a share times stretch beyond this, so that most readings need no closer look. */
  readonly reach: number;
  /** Whether it happens as a scale is read, so that the scale is drawn to be compared. */
  readonly onScale: boolean;
  /** Whether a hand that makes it once is apt to make it over a whole row. */
  readonly sticks: boolean;
  readonly candidates: (typed: Typed, instrument: Instrument) => readonly Candidate[];
}
