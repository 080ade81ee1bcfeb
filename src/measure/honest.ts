/** @module How likely a size is in a cell if it was read honestly: by the limits, the same place, the other places. */
import type { Expectation } from './expectation.ts';
import { believed, type Neighbours, nearness } from './neighbours.ts';
import type { Bells } from './place-shape.ts';

export interface Honest {
  /** Per mm. */
  readonly density: (size: number) => number;
  /** No greater density than this. */
  readonly peak: number;
}

/** How often a place keeps to the other places: common practice, no source. What is left is its own: one seized bearing. */
const likeOthers = 0.8;

/**
 * How often a cell keeps to what the other cells of its place say, by how many they are: common practice, no
 * source. What is left is a cell on its own: one scored patch, one burr.
 */
const likePlace = [0, 0.99, 0.997] as const;
const likeMany = 0.999;

/** Sizes five hundred times rarer than the usual ones are as likely wrong together as they are right together. */
const asLikelyWrong = 1 / 500;

/** A part that nobody knew was machined to another size, once in twenty: common practice, no source. */
const unnoted = 0.05;

/**
 * How far a neighbour is believed, 0 to 1: fully where sizes are expected, little where hardly any should lie,
 * since then all that lie there may be wrong in the same way.
 */
export const trustIn = (size: number, { density, usual, machinedTo }: Expectation): number => {
  const believable = density(size) / usual;
  return Math.max(believable / (believable + asLikelyWrong), machinedTo(size) ? unnoted : 0);
};

/** Sizes of which nothing is known but that others lie here: wide, with tails that no unit or mark escapes. */
export const aroundOthers = (centre: number): Expectation => {
  const width = 0.5;
  return {
    density: (size) => 1 / (Math.PI * width * (1 + ((size - centre) / width) ** 2)),
    peak: 1 / (Math.PI * width),
    usual: 1 / (Math.PI * width),
    ordinary: width,
    middle: centre,
    grownBy: () => 0,
    room: () => 1,
    roomByOthers: () => 1,
    machinedTo: () => false,
  };
};

/** What the other cells of the place say of this one. */
export interface PlaceSays {
  readonly bells: Bells;
  /** How many they are. */
  readonly cells: number;
  /** How far they are believed, 0 to 1. */
  readonly trust: number;
}

/** Honest sizes in a cell: its own expectation, drawn towards what is believed of its place and of the other places. */
export const honestOf = (
  own: Expectation,
  place: PlaceSays | undefined,
  others: Neighbours | undefined,
): Honest => {
  const byPlace = place ? (likePlace[place.cells] ?? likeMany) * place.trust : 0;
  const byOthers = others ? (1 - byPlace) * likeOthers : 0;
  const left = 1 - byPlace - byOthers * (others ? believed(others) : 0);
  return {
    density: (size) =>
      left * own.density(size) +
      (place ? own.room(size) * byPlace * place.bells.density(size) : 0) +
      (others ? own.roomByOthers(size) * byOthers * nearness(size, others) : 0),
    peak:
      left * own.peak + byPlace * (place?.bells.peak ?? 0) + (others ? (byOthers * 0.5) / others.scale : 0),
  };
};
