/** @module Odds of a slip against an honest reading: from when on they are raised, and how they are told. */

/** A doubt is raised from ten to one: common practice, no source; below, it would be crying wolf. */
export const raisedAt = 10;

/** Nothing at a bench is surer than this; it also keeps odds finite, so that they can be stored. */
export const greatestOdds = 1e9;

/** `40 to 1`, and no more than anyone would believe. */
export const oddsText = (odds: number): string =>
  odds >= 1000 ? 'more than 1000 to 1' : `${Number(odds.toPrecision(1))} to 1`;

/** A slip made twice over in the same cell, in the same way: one in twenty, common practice, no source. */
const twice = 0.05;
/** Whatever speaks against a figure that was read again, it is no surer than this. */
const surestAgain = 1e4;

/** Odds of a slip once the same figure has been read again so many times. */
export const oddsAgain = (odds: number, confirmations: number): number =>
  confirmations === 0 ? Math.min(greatestOdds, odds) : Math.min(surestAgain, odds) * twice ** confirmations;
