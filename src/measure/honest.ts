/** @module How likely a size is in a cell if it was read honestly: by the limits, the same place, the other places. */
import type { Expectation } from './expectation.ts';
import { type Cluster, closeness } from './neighbours.ts';

export interface Honest {
  /** Per mm. */
  readonly density: (size: number) => number;
  /** No greater density than this. */
  readonly peak: number;
}

/*
 * How often a size keeps to the other cells of its place, and to the other places: common practice, no source.
 * What is left is its own: one seized bearing, one scored bore.
 */
const likeItsPlace = 0.5;
const likeOtherPlaces = 0.3;

/**
 * How far neighbours are believed: fully where they lie where sizes are expected, little where all of them lie
 * where none should, since then they may all be wrong in the same way.
 */
const trust = (centre: number, { density, peak }: Expectation): number => {
  const believable = density(centre) / peak;
  return believable / (believable + 0.1);
};

/** Sizes about which nothing is known but that others lie here: wide, with tails that no unit or mark escapes. */
const widely = (centre: number): Expectation => {
  const width = 0.5;
  return {
    density: (size) => 1 / (Math.PI * width * (1 + ((size - centre) / width) ** 2)),
    peak: 1 / (Math.PI * width),
    ordinary: width / 2,
  };
};

/** Undefined where there are neither limits nor neighbours to go by. */
export const honestOf = (
  expected: Expectation | undefined,
  place: Cluster | undefined,
  others: Cluster | undefined,
): Honest | undefined => {
  const known = others ?? place;
  const own = expected ?? (known && widely(known.centre));
  if (!own) return undefined;
  const byPlace = place ? likeItsPlace * trust(place.centre, own) : 0;
  const byOthers = others ? likeOtherPlaces * trust(others.centre, own) : 0;
  return {
    density: (size) =>
      (1 - byPlace - byOthers) * own.density(size) +
      (place ? byPlace * closeness(size, place) : 0) +
      (others ? byOthers * closeness(size, others) : 0),
    peak: Math.max(own.peak, place ? 0.5 / place.scale : 0, others ? 0.5 / others.scale : 0),
  };
};
