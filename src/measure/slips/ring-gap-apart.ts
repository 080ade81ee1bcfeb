/** @module A ring gap that does not go with its bore: it opens by π times what the bore has grown. */
import type { KnownSlip } from './slip.ts';

export const ringGapApart: KnownSlip = {
  name: 'ring gap off its bore',
  says: 'a ring gap smaller than its bore allows',
  /** Read in another bore, or misread, once in fifty: common practice, no source. */
  chance: 0.02,
  of: 'ring gaps',
};

/** A ring fitted closer than the manual asks for, once in two hundred, by about so much, mm: common practice, no source. */
const closer = 0.005;
const byAbout = 0.02;
/** A gap that is wrong may be anything within about a millimetre, per mm. */
const anywhere = 1;

/**
 * Least gap that a ring can show in a bore: the least as made, opened by π times the growth of the bore.
 *
 * @param madeGap   least gap as made, mm
 * @param madeBore  greatest bore as made, mm
 * @param bore      least size found in the bore, mm
 * @returns mm; no less than as made
 * @source  circumference = π × diameter; TM 5-3805-261-34: 0.003 in of gap for 0.001 in of bore
 * @example leastGap(0.3, 85.022, 85.122) // 0.6142
 */
export const leastGap = (madeGap: number, madeBore: number, bore: number): number =>
  madeGap + Math.PI * Math.max(0, bore - madeBore);

/**
 * Odds that a gap was misread, against a ring that was fitted too close.
 *
 * @param short   by how much the gap falls short of the least one, mm
 * @param spread  standard uncertainty of gap and bore together, mm, above 0
 * @param chance  how often a gap is read wrong
 * @returns 0 where it does not fall short beyond what its uncertainty covers
 * @source  Bayes's rule; common practice, no source
 */
export const gapOdds = (short: number, spread: number, chance: number): number =>
  short > 3 * spread ? (chance * anywhere) / ((closer / byAbout) * Math.exp(-short / byAbout) + 1e-5) : 0;
