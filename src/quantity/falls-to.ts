/** @module Where a function that falls with the hours comes down to a value. */
import { normalQuantile } from './normal.ts';

/** Hours beyond which nothing is asked. */
export const longest = 1e8;

/** Further out than any share that is asked for. */
const furthest = 8;

/** How far out on the normal curve a share lies: all but a straight line of the logarithm of the hours, for most lives. */
const outOf = (share: number): number =>
  Math.max(-furthest, Math.min(furthest, normalQuantile(Math.max(0, Math.min(1, share)))));

/**
 * The hours at which survival comes down to a probability, to a millionth of them; 0 where it begins there.
 *
 * The secant of two ends, an end that stays weighed half (Illinois), on normal paper: a lognormal life is a straight
 * line there, so that a few turns do.
 *
 * @param survival     falls with the hours, from 1 or from what is left at once
 * @param probability  above 0, below 1
 * @param start        hours from which to look about, above 0
 */
export const hoursAt = (survival: (run: number) => number, probability: number, start: number): number => {
  if (survival(0) <= probability) return 0;
  const wanted = outOf(probability);
  const off = (logHours: number): number => outOf(survival(Math.exp(logHours))) - wanted;
  let [a, b] = [Math.log(start), Math.log(start)];
  let above = off(a);
  let below = above;
  // Out by steps that grow until the two ends lie on either side.
  for (let stride = Math.LN2 / 2; above <= 0; stride *= 2) {
    if (a < Math.log(1e-3)) return 0;
    [b, below] = [a, above];
    a -= stride;
    above = off(a);
  }
  for (let stride = Math.LN2 / 2; below > 0; stride *= 2) {
    if (b > Math.log(longest)) return longest;
    [a, above] = [b, below];
    b += stride;
    below = off(b);
  }
  let stayed: 'above' | 'below' | undefined;
  for (let turn = 0; turn < 60 && b - a > 1e-7; turn += 1) {
    const next = turn % 6 === 5 ? (a + b) / 2 : a + ((b - a) * above) / (above - below);
    const here = off(next);
    if (Math.abs(here) < 1e-7) return Math.exp(next);
    if (here > 0) {
      [a, above] = [next, here];
      if (stayed === 'below') below /= 2;
      stayed = 'below';
    } else {
      [b, below] = [next, here];
      if (stayed === 'above') above /= 2;
      stayed = 'above';
    }
  }
  return Math.exp((a + b) / 2);
};
