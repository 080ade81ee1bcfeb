/** @module How sizes cluster: the median of other cells and other places, and how far apart they lie. */

export interface Cluster {
  readonly centre: number;
  /** Scale of the spread about the centre, mm. */
  readonly scale: number;
}

const ascending = (a: number, b: number): number => a - b;

export const median = (sorted: readonly number[]): number => {
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? Number.NaN) + upper) / 2;
};

/** The mean deviation of Laplace's distribution is its median deviation over ln 2. */
const laplace = Math.LN2;

/** Cluster of sizes by median and median deviation, so that a wrong one among several hardly moves it. */
export const clusterOf = (sizes: readonly number[], leastScale: number): Cluster | undefined => {
  if (sizes.length === 0) return undefined;
  const centre = median([...sizes].sort(ascending));
  const deviation = median(sizes.map((size) => Math.abs(size - centre)).sort(ascending));
  return { centre, scale: Math.max(leastScale, deviation / laplace) };
};

/** Past this many the one size itself no longer moves the median, and leaving it out costs a sort each. */
const many = 12;

/** For each size the cluster of all the others. */
export const othersOf = (sizes: readonly number[], leastScale: number): readonly (Cluster | undefined)[] => {
  if (sizes.length > many) {
    const all = clusterOf(sizes, leastScale);
    return sizes.map(() => all);
  }
  return sizes.map((_, index) => clusterOf(sizes.toSpliced(index, 1), leastScale));
};

/** Density of a size about a cluster, per mm: two-sided exponential, which forgives a stray. */
export const closeness = (size: number, { centre, scale }: Cluster): number =>
  Math.exp(-Math.abs(size - centre) / scale) / (2 * scale);
