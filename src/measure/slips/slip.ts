/** @module What a slip is: a usual way in which an honest hand gets a wrong figure on paper. */
import type { Typed } from '../../quantity/typed.ts';
import type { Instrument } from '../instrument.ts';

/** What the figure would have been without the slip. */
export interface Candidate {
  readonly likely: Typed;
  /** How often, of all readings, it is just this slip that happens. */
  readonly chance: number;
  /** How many times further apart true sizes lie than the figures that the slip makes of them; 1 for a shift. */
  readonly stretch: number;
}

export interface Slip {
  readonly name: string;
  /** What happened, to follow `looks like`. */
  readonly says: string;
  /** No candidate has a chance times stretch beyond this, so that most readings need no closer look. */
  readonly reach: number;
  readonly candidates: (typed: Typed, instrument: Instrument) => readonly Candidate[];
}
