/** @module A value with what is not known of it, as a linear form over named influences (JCGM 100, 5.1 and 5.2). */
import { coverageFactor } from './coverage.ts';
import { type Answer, answer, refuse } from './refusal.ts';

/** One influence's share: its standard uncertainty times the sensitivity to it, sign kept, in the value's unit. */
export interface Term {
  /** The influence's name. Values that share a name share the error: that is how correlation comes about. */
  readonly name: string;
  /** Sensitivity times standard uncertainty, in the unit of the value; signed. */
  readonly share: number;
  /** Degrees of freedom behind the standard uncertainty; Infinity when it is taken as known. */
  readonly freedom: number;
  /** Which estimate of spread its standard uncertainty rests on, where several influences rest on one. */
  readonly pool?: string | undefined;
}

export interface Uncertain {
  readonly value: number;
  /** Sorted by name, each name once. */
  readonly terms: readonly Term[];
}

const noTerms: readonly Term[] = [];

/** A value that is known exactly. */
export const certain = (value: number): Uncertain => ({ value, terms: noTerms });

/** A value with one influence: standard uncertainty `u` in the value's unit, with the degrees of freedom behind it. */
export const uncertain = (value: number, name: string, u: number, freedom = Infinity): Uncertain => ({
  value,
  terms: u === 0 ? noTerms : [{ name, share: u, freedom }],
});

const scaled = ({ name, share, freedom, pool }: Term, factor: number): Term => ({
  name,
  share: share * factor,
  freedom,
  pool,
});

/** a + factor × b, both sorted by name; what cancels wholly is left out. */
const merged = (a: readonly Term[], factor: number, b: readonly Term[]): readonly Term[] => {
  if (factor === 0 || b.length === 0) return a;
  const sum: Term[] = [];
  let i = 0;
  let j = 0;
  let left = a[i];
  let right = b[j];
  while (left !== undefined || right !== undefined) {
    if (right === undefined || (left !== undefined && left.name < right.name)) {
      if (left !== undefined) sum.push(left);
      i += 1;
      left = a[i];
    } else if (left === undefined || right.name < left.name) {
      sum.push(factor === 1 ? right : scaled(right, factor));
      j += 1;
      right = b[j];
    } else {
      const share = left.share + factor * right.share;
      const freedom = Math.min(left.freedom, right.freedom);
      if (share !== 0) sum.push({ name: left.name, share, freedom, pool: left.pool });
      i += 1;
      j += 1;
      left = a[i];
      right = b[j];
    }
  }
  return sum;
};

/** constant + Σ factor × value: influences that share a name add or cancel. */
export const combine = (
  parts: readonly (readonly [factor: number, value: Uncertain])[],
  constant = 0,
): Uncertain => {
  let value = constant;
  let terms = noTerms;
  for (const [factor, part] of parts) {
    value += factor * part.value;
    terms = merged(terms, factor, part.terms);
  }
  return { value, terms };
};

export const plus = (a: Uncertain, b: Uncertain): Uncertain => ({
  value: a.value + b.value,
  terms: merged(a.terms, 1, b.terms),
});

export const minus = (a: Uncertain, b: Uncertain): Uncertain => ({
  value: a.value - b.value,
  terms: merged(a.terms, -1, b.terms),
});

export const times = (a: Uncertain, factor: number): Uncertain => ({
  value: a.value * factor,
  terms: merged(noTerms, factor, a.terms),
});

/** In the value's unit. */
export const standardUncertainty = ({ terms }: Uncertain): number => {
  let squares = 0;
  for (const { share } of terms) squares += share * share;
  return Math.sqrt(squares);
};

/** From the influences that both share. */
export const covariance = (a: Uncertain, b: Uncertain): number => {
  let sum = 0;
  let j = 0;
  for (const left of a.terms) {
    let right = b.terms[j];
    while (right !== undefined && right.name < left.name) {
      j += 1;
      right = b.terms[j];
    }
    if (right?.name === left.name) sum += left.share * right.share;
  }
  return sum;
};

/** -1 to 1; 0 where either is known exactly. */
export const correlation = (a: Uncertain, b: Uncertain): number => {
  const product = standardUncertainty(a) * standardUncertainty(b);
  return product === 0 ? 0 : Math.max(-1, Math.min(1, covariance(a, b) / product));
};

/** A standard uncertainty, and how well it is known. */
type Part = Pick<Term, 'share' | 'freedom'>;

/** Terms with those of one pool as one, of the least degrees of freedom among them. */
const pooled = (terms: readonly Term[]): readonly Part[] => {
  const alone: Part[] = [];
  const sums = new Map<string, Part>();
  for (const term of terms) {
    const { pool, share, freedom } = term;
    if (pool === undefined) {
      alone.push(term);
      continue;
    }
    const before = sums.get(pool);
    const sum = before
      ? { share: Math.hypot(before.share, share), freedom: Math.min(freedom, before.freedom) }
      : term;
    sums.set(pool, sum);
  }
  return [...alone, ...sums.values()];
};

/**
 * Effective degrees of freedom by Welch and Satterthwaite, over independent influences.
 *
 * Influences whose standard uncertainties rest on one estimate of spread (repeats of one instrument at several cells)
 * are summed before they are weighed: however many there are, no more is known of the spread.
 *
 * @returns the number, not rounded; Infinity where every influence is taken as known
 * @source  JCGM 100:2008, G.4.1, equation (G.2b), whose estimates of variance must be independent
 */
export const effectiveFreedom = ({ terms }: Uncertain): number => {
  let squares = 0;
  let estimated = 0;
  for (const { share, freedom } of terms) {
    squares += share * share;
    if (freedom !== Infinity) estimated += 1;
  }
  if (squares === 0 || estimated === 0) return Infinity;
  const parts = estimated === 1 ? terms : pooled(terms);
  let weighed = 0;
  for (const { share, freedom } of parts) {
    const part = (share * share) / squares;
    weighed += (part * part) / freedom;
  }
  return weighed === 0 ? Infinity : 1 / weighed;
};

/**
 * Half the width of the interval that holds the value with a probability.
 *
 * Nothing is rounded before the end, so that where a printed example rounds half-way (18.9987 degrees of
 * freedom to 19, 31.66 nm to 32 nm) the last digit may differ.
 *
 * @param x            what is known of the value
 * @param probability  0 to 1, for example 0.95
 * @returns in the value's unit
 * @source  JCGM 100:2008, G.4.1 and G.6.4; see coverageFactor
 * @example expanded(uncertain(50, 'repeat', 0.002, 16), 0.95) // 0.00424
 */
export const expanded = (x: Uncertain, probability: number): number => {
  const u = standardUncertainty(x);
  return u === 0 ? 0 : u * coverageFactor(probability, effectiveFreedom(x));
};

/** How often the step of a derivative is halved; the table of extrapolations has as many columns. */
const halvings = 10;

/** Slope of f at x by central differences extrapolated to no step (Ridders 1982); undefined where f is not finite. */
const slope = (f: (x: number) => number, x: number, firstStep: number): number | undefined => {
  let step = firstStep;
  const central = (): number => (f(x + step) - f(x - step)) / (2 * step);
  for (let turn = 0; turn < 60 && !Number.isFinite(central()); turn += 1) step /= 2;
  let row = [central()];
  let best = row[0] ?? Number.NaN;
  let error = Infinity;
  for (let turn = 1; turn < halvings; turn += 1) {
    step /= 2;
    const next = [central()];
    for (let order = 1; order <= turn; order += 1) {
      const weight = 4 ** order;
      const finer = next[order - 1] ?? Number.NaN;
      const coarser = row[order - 1] ?? Number.NaN;
      const value = (weight * finer - coarser) / (weight - 1);
      next.push(value);
      const doubt = Math.max(Math.abs(value - finer), Math.abs(value - coarser));
      if (doubt <= error) {
        error = doubt;
        best = value;
      }
    }
    row = next;
  }
  return Number.isFinite(best) ? best : undefined;
};

/**
 * Carries uncertainty through a function, to first order, by its slopes at the values.
 *
 * First order says nothing of a slope that is zero at the values but not beside them.
 *
 * @param f       finite and smooth around the values
 * @param inputs  in the order in which f takes them
 * @returns the value of f with the inputs' influences; refuses where f has no value or no slope
 * @source  JCGM 100:2008, 5.1 and 5.2; slopes by C. J. F. Ridders (1982)
 */
export const propagate = (
  f: (values: readonly number[]) => number,
  inputs: readonly Uncertain[],
): Answer<Uncertain> => {
  const values = inputs.map((input) => input.value);
  const value = f(values);
  const nowhere = refuse(
    'the sum has no value here',
    values.join(', '),
    'check the figures: they lie at or beyond the edge of what can be',
  );
  if (!Number.isFinite(value)) return nowhere;
  let terms = noTerms;
  for (const [index, input] of inputs.entries()) {
    const u = standardUncertainty(input);
    if (u === 0) continue;
    const firstStep = input.value === 0 ? u : Math.max(Math.abs(input.value) / 16, u / 4);
    const sensitivity = slope((x) => f(values.with(index, x)), input.value, firstStep);
    if (sensitivity === undefined) return nowhere;
    terms = merged(terms, sensitivity, input.terms);
  }
  return answer({ value, terms });
};
