/** @module The greatest or least of several sizes, with an uncertainty that fits a greatest and not one size. */
import { normalCumulative } from '../quantity/normal.ts';
import {
  combine,
  covariance,
  standardUncertainty,
  type Term,
  type Uncertain,
} from '../quantity/uncertain.ts';

/** Beyond so many standard deviations a rival cannot be the greatest. */
const hopeless = 4.5;
const rootTwoPi = Math.sqrt(2 * Math.PI);
const density = (z: number): number => Math.exp((-z * z) / 2) / rootTwoPi;

/** A size that may be the greatest: its named influences, and what no influence names. */
interface Rival {
  readonly size: Uncertain;
  readonly variance: number;
}

const rivalOf = (size: Uncertain): Rival => ({ size, variance: standardUncertainty(size) ** 2 });

/** The greater of two as a normal value with the right mean and variance, its influences weighed by who is greater. */
const greaterOf = (a: Rival, b: Rival): Rival => {
  const apart = a.size.value - b.size.value;
  const spread = Math.sqrt(Math.max(0, a.variance + b.variance - 2 * covariance(a.size, b.size)));
  if (Math.abs(apart) >= hopeless * spread) return apart >= 0 ? a : b;
  const z = apart / spread;
  const isFirst = normalCumulative(z);
  const isSecond = 1 - isFirst;
  const bulge = spread * density(z);
  // From the greater of the values, so that no digits are lost to the size of the part.
  const from = Math.max(a.size.value, b.size.value);
  const first = a.size.value - from;
  const second = b.size.value - from;
  const mean = first * isFirst + second * isSecond + bulge;
  const square =
    (first * first + a.variance) * isFirst +
    (second * second + b.variance) * isSecond +
    (first + second) * bulge;
  const linear = combine([
    [isFirst, a.size],
    [isSecond, b.size],
  ]);
  return {
    size: { value: from + mean, terms: linear.terms },
    variance: Math.max(square - mean * mean, 0),
  };
};

/** The greatest true value, as near as a normal value can stand for it. */
interface Greatest {
  /** Its expectation: above the greatest value wherever others run it close. */
  readonly mean: number;
  readonly variance: number;
  /** Influences by their names, each by how likely it is to be the one that counts. */
  readonly linear: Uncertain;
}

/** The least likely first, so that the close race is run last and loses least. */
const greatestTrue = (sizes: readonly Uncertain[]): Greatest => {
  const [first, ...rest] = sizes.toSorted((a, b) => a.value - b.value).map(rivalOf);
  if (!first) throw new RangeError('the greatest of nothing is asked for');
  const all = rest.reduce(greaterOf, first);
  return { mean: all.size.value, variance: all.variance, linear: all.size };
};

const byName = (a: Term, b: Term): number => (a.name < b.name ? -1 : 1);

const withTerm = (terms: readonly Term[], name: string, share: number): readonly Term[] =>
  share === 0 ? terms : [...terms, { name, share, freedom: Number.POSITIVE_INFINITY }].sort(byName);

/** An extreme as measured, and how far the true one may be expected from it. */
export interface Extreme {
  /** The extreme as measured, with what is not known of the true one about its expectation. */
  readonly value: Uncertain;
  /** Expectation of the true one less that value: above 0 for a greatest, below 0 for a least. */
  readonly bias: number;
}

/**
 * The greatest of several values that are not exactly known.
 *
 * The value is the greatest as measured. Where others run it close it is not known which is truly the greatest: each
 * influence then counts by the chance that its size is the one, and one more influence, named as asked, holds what is
 * left of the variance of the greatest true value. Its expectation lies above every one of the values that run each
 * other close, by the bias. Where one stands clear of the others it is simply that one.
 *
 * The greatest of two normal values has exactly the mean and variance that are used; of more they are found two at a
 * time, as if each greater were normal, which is good to some 2 % in the standard deviation and never far off.
 *
 * @param sizes  at least one, any unit that they share, correlated by the names that they share
 * @param name   of the influence that is added, for example `greatest of bore.1 bore-diameter`
 * @returns the greatest value with its influences, degrees of freedom as those of the sizes, and the bias
 * @source  C. E. Clark, The greatest of a finite set of random variables, Operations Research 9 (1961) 145; the named
 *   influences by their first-order weights (Stein's identity)
 */
export const greatestOf = (sizes: readonly Uncertain[], name: string): Extreme => {
  const top = sizes.reduce((a, b) => (b.value > a.value ? b : a));
  if (sizes.length === 1) return { value: top, bias: 0 };
  const { mean, variance, linear } = greatestTrue(sizes);
  const bias = mean - top.value;
  if (bias === 0) return { value: top, bias };
  const share = Math.sqrt(Math.max(0, variance - standardUncertainty(linear) ** 2));
  return { value: { value: top.value, terms: withTerm(linear.terms, name, share) }, bias };
};

const turned = (size: Uncertain): Uncertain => combine([[-1, size]]);

/** The least of several values; as `greatestOf`, the other way up. */
export const leastOf = (sizes: readonly Uncertain[], name: string): Extreme => {
  const { value, bias } = greatestOf(sizes.map(turned), name);
  return { value: turned(value), bias: -bias };
};

/**
 * An extreme by itself: its bias is included in its uncertainty and not taken off.
 *
 * @param extreme  as measured
 * @param name     of the influence that stands for the bias
 * @returns the value as measured, known as well as that is
 * @source  JCGM 100:2008, F.2.4.5
 */
export const withBias = ({ value, bias }: Extreme, name: string): Uncertain =>
  bias === 0 ? value : { value: value.value, terms: withTerm(value.terms, name, bias) };

/** The greatest with its bias included. */
export const greatest = (sizes: readonly Uncertain[], name: string): Uncertain =>
  withBias(greatestOf(sizes, name), `bias of ${name}`);

/** The least with its bias included. */
export const least = (sizes: readonly Uncertain[], name: string): Uncertain =>
  withBias(leastOf(sizes, name), `bias of ${name}`);
