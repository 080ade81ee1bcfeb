/** @module Honest sizes of worn engines, by wear patterns of the workshop and by no formula of the program. Invented. */
import type { Characteristic, EngineType } from '../../src/engine/engine-type.ts';
import type { Cell } from '../../src/measure/reading.ts';
import { cellsOf, placesOf } from '../../src/measure/scheme.ts';
import { smallEngine } from './small-engine.ts';

/** A generator with a fixed seed (mulberry32), so that every run sees the same engines. */
export const seeded = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

/** Normal, by G. E. P. Box and M. E. Muller (1958). */
export const normalBy = (random: () => number): number =>
  Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());

export const patterns = [
  'even',
  'barrel',
  'one-sided',
  'barrel and one-sided',
  'one seized place',
  'hardly worn',
] as const;
export type Pattern = (typeof patterns)[number];

/** Wear of a cell as a share of the engine's greatest, by plane (0 to 1 along) and axis (0 or 1). */
const shape = (pattern: Pattern, along: number, across: number): number => {
  switch (pattern) {
    case 'even':
    case 'one seized place':
      return 0.9;
    case 'barrel':
      return 1 - 0.8 * along;
    case 'one-sided':
      return across === 0 ? 1 : 0.35;
    case 'barrel and one-sided':
      return (1 - 0.8 * along) * (across === 0 ? 1 : 0.35);
    case 'hardly worn':
      return 0.05;
    default:
      return pattern satisfies never;
  }
};

export interface TrueSize {
  readonly cell: Cell;
  readonly size: number;
  /** At a former overhaul, before whatever seized was seized, mm. */
  readonly before: number;
  /** Where such an engine may have this size when nothing else of it is known, mm. */
  readonly anywhere: readonly [least: number, greatest: number];
  /** Where it may be when all else of it is known, mm. */
  readonly leeway: readonly [least: number, greatest: number];
}

/** A seizure takes up to four times what the manual allows to be worn, a fifth of it uneven. */
const ruinMost = 4;
const ragged = 0.2;
const rough = 0.0015;
/** Of the wear, the share that was there at a former overhaul. */
const wornBefore = 0.4;
const wearMost = 1.3;

/** True sizes of one characteristic at all its places, mm; worn up to 1.3 times what the manual allows. */
export const wornSizes = (
  characteristic: Characteristic,
  pattern: Pattern,
  random: () => number,
  engine: EngineType = smallEngine,
): readonly TrueSize[] => {
  const { new: made, goesBack } = characteristic.limits ?? { new: {}, goesBack: {} };
  const { least = 0, greatest = 0 } = made;
  const way = characteristic.wears === 'smaller' ? -1 : 1;
  const allowed = way < 0 ? least - (goesBack.least ?? 0) : (goesBack.greatest ?? 0) - greatest;
  const engineWear = allowed * (0.2 + 1.1 * random());
  const places = placesOf(engine, characteristic);
  const seized = Math.floor(random() * places.length);
  const between = (a: number, b: number): readonly [number, number] => [Math.min(a, b), Math.max(a, b)];
  const asUnworn = way < 0 ? greatest : least;
  const farthest = (way < 0 ? least : greatest) + way * allowed * (wearMost + ruinMost);
  return places.flatMap((place, index) => {
    const asMade = least + (greatest - least) * random();
    const placeWear = engineWear * (0.6 + 0.4 * random());
    const ruin = pattern === 'one seized place' && index === seized ? allowed * (1 + 3 * random()) : 0;
    const cells = cellsOf(engine, characteristic.name, place.id);
    return cells.map((cell) => {
      const plane = characteristic.planes.indexOf(cell.plane);
      const along = characteristic.planes.length > 1 ? plane / (characteristic.planes.length - 1) : 0;
      const share = shape(pattern, along, characteristic.axes.indexOf(cell.axis));
      const uneven = 1 - ragged + ragged * random();
      const size = asMade + way * (share * placeWear + ruin * uneven + rough * normalBy(random));
      const anywhere = between(asUnworn, farthest);
      const stray = 4 * rough;
      const leeway =
        cells.length === 1
          ? anywhere
          : ruin > 0
            ? between(size + way * ruin * (1 - uneven), size - way * ruin * (uneven - 1 + ragged))
            : between(size - stray, size + stray);
      const before = asMade + way * share * placeWear * wornBefore;
      return { cell, size, before, anywhere, leeway };
    });
  });
};

export const placesIn = (sizes: readonly TrueSize[]): readonly string[] => [
  ...new Set(sizes.map(({ cell }) => cell.place)),
];
