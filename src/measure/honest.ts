/** @module How likely a size is in a cell if it was read honestly: by the limits, the same place, the other places. */
import type { Expectation } from './expectation.ts';
import { believed, type Neighbours, nearness } from './neighbours.ts';

export interface Honest {
  /** Per mm. */
  readonly density: (size: number) => number;
  /** No greater density than this. */
  readonly peak: number;
}

/*
 * How often a size keeps to its neighbours: common practice, no source. Of these, the other cells of the same
 * place speak before the other places. What is left is its own: one seized bearing, one scored bore.
 */
const likeNeighbours = 0.8;
const placeFirst = 0.6;

/** Sizes five hundred times rarer than the usual ones are as likely wrong together as they are right together. */
const asLikelyWrong = 1 / 500;

/**
 * How far a neighbour is believed, 0 to 1: fully where sizes are expected, little where hardly any should lie,
 * since then all that lie there may be wrong in the same way.
 */
export const trustIn = (size: number, { density, usual }: Expectation): number => {
  const believable = density(size) / usual;
  return believable / (believable + asLikelyWrong);
};

/** Sizes of which nothing is known but that others lie here: wide, with tails that no unit or mark escapes. */
export const aroundOthers = (centre: number): Expectation => {
  const width = 0.5;
  return {
    density: (size) => 1 / (Math.PI * width * (1 + ((size - centre) / width) ** 2)),
    peak: 1 / (Math.PI * width),
    usual: 1 / (Math.PI * width),
    ordinary: width,
  };
};

/** Honest sizes in a cell: its own expectation, drawn towards the neighbours that are believed. */
export const honestOf = (
  own: Expectation,
  place: Neighbours | undefined,
  others: Neighbours | undefined,
): Honest => {
  const ofPlace = place ? (others ? placeFirst : 1) : 0;
  const byPlace = likeNeighbours * ofPlace;
  const byOthers = others ? likeNeighbours * (1 - ofPlace) : 0;
  const left = 1 - byPlace * (place ? believed(place) : 0) - byOthers * (others ? believed(others) : 0);
  const scale = place?.scale ?? others?.scale;
  return {
    density: (size) =>
      left * own.density(size) +
      (place ? byPlace * nearness(size, place) : 0) +
      (others ? byOthers * nearness(size, others) : 0),
    peak: Math.max(own.peak, scale === undefined ? 0 : 0.5 / scale),
  };
};
