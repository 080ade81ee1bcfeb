/** @module Student's t distribution, for what was found from few repeats. */
import { normalCumulative, normalQuantile } from './normal.ts';

/** From here up a normal value is found that lies as far out; the fraction below would lose digits. */
const nearlyNormal = 10_000;

/** Γ(a + ½) / Γ(a): by its asymptotic series from 30 up, brought down by the recurrence. */
const series = [1, -1 / 8, 1 / 128, 5 / 1024, -21 / 32768, -399 / 262144, 869 / 4194304, 39325 / 33554432];
const gammaRatio = (a: number): number => {
  let factor = 1;
  let x = a;
  while (x < 30) {
    factor *= x / (x + 0.5);
    x += 1;
  }
  const sum = series.reduceRight((rest, coefficient) => rest / x + coefficient, 0);
  return factor * Math.sqrt(x) * sum;
};

/** Logarithm of the density at t. */
const logDensity = (t: number, freedom: number): number =>
  Math.log(gammaRatio(freedom / 2) / Math.sqrt(freedom * Math.PI)) -
  ((freedom + 1) / 2) * Math.log1p((t * t) / freedom);

/** A normal value beyond which lies what lies beyond t (G. W. Hill, Algorithm 395, 1970; from memory). */
const asNormal = (t: number, freedom: number): number => {
  if (freedom === Infinity || t === Infinity) return t;
  const a = freedom - 0.5;
  const b = 48 * a * a;
  const y = a * Math.log1p((t * t) / freedom);
  const second = (((4 * y + 33) * y + 240) * y + 855) / (10 * b * (b + 0.8 * y * y + 100));
  return Math.sqrt(y) * (1 + (y + 3) / b - second);
};

/** Continued fraction of the incomplete beta function (DLMF 8.17.22) by Lentz's method. */
const betaFraction = (a: number, b: number, x: number): number => {
  const tiny = 1e-300;
  let c = 1;
  let d = 1 - ((a + b) * x) / (a + 1);
  d = 1 / (Math.abs(d) < tiny ? tiny : d);
  let fraction = d;
  for (let m = 1; m < 100_000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 + even * d;
    c = 1 + even / c;
    d = 1 / (Math.abs(d) < tiny ? tiny : d);
    c = Math.abs(c) < tiny ? tiny : c;
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 + odd * d;
    c = 1 + odd / c;
    d = 1 / (Math.abs(d) < tiny ? tiny : d);
    c = Math.abs(c) < tiny ? tiny : c;
    fraction *= d * c;
    if (Math.abs(d * c - 1) < 1e-16) break;
  }
  return fraction;
};

/** Probability beyond t ≥ 0, accurate far out. */
const upperTail = (t: number, freedom: number): number => {
  if (freedom >= nearlyNormal) return normalCumulative(-asNormal(t, freedom));
  if (t === Infinity) return 0;
  const a = freedom / 2;
  const square = t * t;
  // x^a (1-x)^½ / B(a, ½), with x = freedom / (freedom + t²) and 1/B(a, ½) = Γ(a + ½) / (Γ(a) √π)
  const front =
    (gammaRatio(a) / Math.sqrt(Math.PI)) *
    Math.exp(-a * Math.log1p(square / freedom)) *
    (t / Math.sqrt(freedom + square));
  const x = freedom / (freedom + square);
  // the fraction settles quickly below (a + 1) / (a + 2.5); beyond, the mirrored one does
  return x < (a + 1) / (a + 2.5)
    ? (front * betaFraction(a, 0.5, x)) / (2 * a)
    : 0.5 - front * betaFraction(0.5, a, square / (freedom + square));
};

/**
 * Probability that a t value lies below t.
 *
 * @param t        any number
 * @param freedom  degrees of freedom, above 0, fractions and Infinity allowed
 * @returns 0 to 1
 * @source  incomplete beta function, DLMF 8.17
 * @example studentCumulative(2.12, 16) // 0.975
 */
export const studentCumulative = (t: number, freedom: number): number => {
  const tail = upperTail(Math.abs(t), freedom);
  return t > 0 ? 1 - tail : tail;
};

/** Newton's method; each curve below is convex or concave, so that it cannot run away. */
const settle = (start: number, step: (x: number) => number): number => {
  let x = start;
  for (let turn = 0; turn < 100; turn += 1) {
    const change = step(x);
    x += change;
    if (Math.abs(change) <= 1e-15 * Math.abs(x)) break;
  }
  return x;
};

/** t ≥ 0 beyond which a probability of at most a half lies. */
const beyond = (tail: number, freedom: number): number => {
  if (freedom === 1) return 1 / Math.tan(Math.PI * tail);
  if (freedom === 2) return (1 - 2 * tail) / Math.sqrt(2 * tail * (1 - tail));
  // near the middle the tail is convex in t and approached from below
  if (tail > 0.25) return settle(0, (t) => (upperTail(t, freedom) - tail) / Math.exp(logDensity(t, freedom)));
  // further out its logarithm is concave in the logarithm of t, and nearly straight
  const start = Math.log(-normalQuantile(tail));
  const logarithm = settle(start, (s) => {
    const t = Math.exp(s);
    const here = upperTail(t, freedom);
    return Math.log(here / tail) * Math.exp(Math.log(here) - s - logDensity(t, freedom));
  });
  return Math.exp(logarithm);
};

/**
 * The value below which a t value lies with a given probability.
 *
 * @param probability  0 to 1; the ends give minus and plus infinity
 * @param freedom      degrees of freedom, above 0, fractions and Infinity allowed
 * @returns the quantile; for a 95 % interval on both sides ask for 0.975
 * @source  inverse of studentCumulative; Table G.2 of JCGM 100:2008 is among its tests
 * @example studentQuantile(0.975, 16) // 2.120
 */
export const studentQuantile = (probability: number, freedom: number): number => {
  if (!(probability >= 0 && probability <= 1)) throw new RangeError(`${probability} is no probability`);
  if (!(freedom > 0)) throw new RangeError(`${freedom} degrees of freedom`);
  if (freedom === Infinity) return normalQuantile(probability);
  const tail = Math.min(probability, 1 - probability);
  if (tail === 0) return probability === 0 ? -Infinity : Infinity;
  const size = tail === 0.5 ? 0 : beyond(tail, freedom);
  return probability < 0.5 ? -size : size;
};
