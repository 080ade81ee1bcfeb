/** @module How many standard uncertainties wide an interval must be to hold a value with a probability. */
import { normalQuantile } from './normal.ts';
import { studentQuantile } from './student.ts';

/** Truncated as JCGM 100 does in its examples; what arithmetic left a hair below a whole number is that number. */
const truncated = (freedom: number): number => Math.max(Math.floor(freedom + 1e-9), Math.min(1, freedom));

/** Factors already found for the probability asked for last, by degrees of freedom: they recur by the thousand. */
let kept: { readonly probability: number; readonly factors: Map<number, number> } = {
  probability: Number.NaN,
  factors: new Map(),
};
const mostKept = 1000;

/**
 * Coverage factor of a two-sided interval.
 *
 * The degrees of freedom are truncated to the next lower whole number (JCGM 100 allows that or
 * interpolation), which never makes the interval narrower.
 *
 * @param probability  of holding the value, 0 to 1, for example 0.95
 * @param freedom      effective degrees of freedom, above 0, Infinity allowed
 * @returns standard uncertainties on each side
 * @source  JCGM 100:2008, G.3 and G.6.4
 * @example coverageFactor(0.95, 16.7) // 2.120
 */
export const coverageFactor = (probability: number, freedom: number): number => {
  if (freedom === Infinity) return normalQuantile((1 + probability) / 2);
  const whole = truncated(freedom);
  if (kept.probability !== probability || kept.factors.size >= mostKept) {
    kept = { probability, factors: new Map() };
  }
  let factor = kept.factors.get(whole);
  if (factor === undefined) {
    factor = studentQuantile((1 + probability) / 2, whole);
    kept.factors.set(whole, factor);
  }
  return factor;
};
