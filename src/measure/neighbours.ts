/** @module What other cells and other places say of a size: that it lies near one of theirs. */

export interface Neighbours {
  readonly sizes: readonly number[];
  /** How far each is believed, 0 to 1. */
  readonly trust: readonly number[];
  /** How far neighbours honestly lie apart, mm. */
  readonly scale: number;
}

const ascending = (a: number, b: number): number => a - b;

export const median = (sizes: readonly number[]): number => {
  const sorted = [...sizes].sort(ascending);
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? Number.NaN) + upper) / 2;
};

/** More need not be heard: a dozen, from the least to the greatest, speak for all. */
const enough = 12;

const few = (sizes: readonly number[]): readonly number[] => {
  if (sizes.length <= enough) return sizes;
  const sorted = [...sizes].sort(ascending);
  const step = (sorted.length - 1) / (enough - 1);
  return Array.from({ length: enough }, (_, index) => sorted[Math.round(index * step)] ?? Number.NaN);
};

/** Sizes as neighbours of one that is not among them; undefined where there are none. */
export const neighboursOf = (
  others: readonly number[],
  scale: number,
  trustIn: (size: number) => number,
): Neighbours | undefined => {
  if (others.length === 0) return undefined;
  const heard = few(others);
  return { sizes: heard, trust: heard.map(trustIn), scale };
};

/** For each size all the others as its neighbours, never itself. */
export const othersOf = (
  sizes: readonly number[],
  scale: number,
  trustIn: (size: number) => number,
): readonly (Neighbours | undefined)[] =>
  sizes.map((_, index) => neighboursOf(sizes.toSpliced(index, 1), scale, trustIn));

/** Share of the neighbours that is believed, 0 to 1. */
export const believed = ({ trust }: Neighbours): number =>
  trust.reduce((sum, each) => sum + each, 0) / trust.length;

/**
 * Density of a size near its neighbours, per mm: about each one two-sided exponential, which forgives a stray,
 * weighed by how far it is believed. It integrates to the share that is believed.
 */
export const nearness = (size: number, { sizes, trust, scale }: Neighbours): number =>
  sizes.reduce(
    (sum, other, index) => sum + (trust[index] ?? 0) * Math.exp(-Math.abs(size - other) / scale),
    0,
  ) /
  (2 * scale * sizes.length);
