/** @module Verdict of a value that is not exactly known against its limits: conformance probability and guard band. */
import { studentCumulative, studentQuantile } from '../quantity/student.ts';

/** An interval in the unit of the value, open where a bound is missing. */
interface Interval {
  readonly least?: number;
  readonly greatest?: number;
}

/** Probability that the true value lies above a bound (sign 1) or below it (sign -1). */
const beyond = (
  value: number,
  u: number,
  freedom: number,
  bound: number | undefined,
  sign: 1 | -1,
): number => {
  if (bound === undefined) return 0;
  const past = sign * (value - bound);
  if (u === 0) return past > 0 ? 1 : 0;
  // Less than 1e-19 is left so far out, which takes nothing from a probability of 1.
  if (past < -12 * u && freedom >= 100) return 0;
  return studentCumulative(past / u, freedom);
};

/**
 * Probability that the true value conforms to its limits.
 *
 * p = 1 - F((least - y)/u) - F((y - greatest)/u), where F is the normal distribution, or Student's t with
 * the effective degrees of freedom where the standard uncertainty is itself not well known.
 *
 * @param value    measured value, in any unit that the others share
 * @param u        standard uncertainty, not negative; 0 for an exact value, for which a bound itself conforms
 * @param freedom  effective degrees of freedom, above 0; Infinity for the normal distribution
 * @param bounds   interval with one bound, both or none
 * @returns 0 to 1; 1 where there is no bound
 * @source  JCGM 106:2012, 7.2 to 7.5 (normal), JCGM 100:2008, G.3 (t)
 * @example conformanceProbability(-5.47, 0.05, Infinity, { greatest: -5.4 }) // 0.919
 */
export const conformanceProbability = (value: number, u: number, freedom: number, bounds: Interval): number =>
  Math.min(
    1,
    Math.max(
      0,
      1 - beyond(value, u, freedom, bounds.least, -1) - beyond(value, u, freedom, bounds.greatest, 1),
    ),
  );

/** Probabilities that the true value lies below its least, and above its greatest limit. */
interface Tails {
  readonly below: number;
  readonly above: number;
}

/**
 * Probabilities that the true value lies beyond each of its limits.
 *
 * @param value    measured value, in any unit that the others share
 * @param u        standard uncertainty, not negative
 * @param freedom  effective degrees of freedom, above 0; Infinity for the normal distribution
 * @param bounds   interval with one bound, both or none
 * @returns 0 to 1 each; 0 where there is no bound
 * @source  JCGM 106:2012, 7.3
 * @example tailsBeyond(56, 0.5, Infinity, { greatest: 55 }).above // 0.977
 */
export const tailsBeyond = (value: number, u: number, freedom: number, bounds: Interval): Tails => ({
  below: beyond(value, u, freedom, bounds.least, -1),
  above: beyond(value, u, freedom, bounds.greatest, 1),
});

/**
 * The decision rule: within when conformance is proved, outside when nonconformance is, else unsure.
 *
 * Nonconformance is proved at one bound: a poor instrument whose spread reaches past both bounds has shown
 * nothing, however small the probability of lying between them.
 *
 * @param value    measured value, in any unit that the others share
 * @param u        standard uncertainty, not negative
 * @param freedom  effective degrees of freedom, above 0; Infinity for the normal distribution
 * @param bounds   interval with one bound, both or none
 * @param asked    probability asked for, above 0.5 and below 1; ISO 14253-1 takes 0.95 where nothing is agreed
 * @returns `within`, `outside` or `unsure`; `within` where there is no bound to lie beyond
 * @source  ISO 14253-1:2017 (rule and default), JCGM 106:2012, 8.3 (guarded acceptance)
 * @example verdictOf(54.99, 0.002, Infinity, { least: 54.98, greatest: 55 }, 0.95) // 'within'
 */
export const verdictOf = (
  value: number,
  u: number,
  freedom: number,
  bounds: Interval,
  asked: number,
): 'within' | 'outside' | 'unsure' => {
  if (conformanceProbability(value, u, freedom, bounds) >= asked) return 'within';
  const { below, above } = tailsBeyond(value, u, freedom, bounds);
  return Math.max(below, above) >= asked ? 'outside' : 'unsure';
};

/**
 * How far inside a single limit a value must lie to conform with the probability asked for, where the
 * interval is wide against the uncertainty.
 *
 * @param u            standard uncertainty, not negative
 * @param probability  asked for, above 0.5 and below 1
 * @param freedom      effective degrees of freedom, above 0; Infinity for the normal distribution
 * @returns guard band in the unit of u
 * @source  ISO 14253-1:2017: 1.65·u at 95 %
 * @example guardBand(0.002, 0.95) // 0.00329
 */
export const guardBand = (
  u: number,
  probability: number,
  freedom: number = Number.POSITIVE_INFINITY,
): number => u * studentQuantile(probability, freedom);
