/** @module Doubt about shim packs as found: swapped between pumps, by the depths measured. */
import { packNeeded } from '../engine/pump-timing.ts';
import { typedText } from '../quantity/typed.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { countingReading, sizeOfReading } from './cell-size.ts';
import { oddsText, raisedAt } from './odds.ts';
import type { Reading } from './reading.ts';
import { cellsOf } from './scheme.ts';
import type { Sheet } from './sheet.ts';
import { swappedPacks } from './swapped-packs.ts';
import type { Doubt } from './verdict-model.ts';

interface Pump {
  readonly place: string;
  readonly title: string;
  readonly needed: number;
  readonly u: number;
  readonly found: number;
  readonly reading: Reading;
}

/** The pumps of which both the depth and the pack as found have been read. */
const pumpsOf = (sheet: Sheet): readonly Pump[] => {
  const timing = sheet.engine.pumpTiming;
  if (!timing?.found) return [];
  const { found, depth, at } = timing;
  const sized = (place: string, name: string) => {
    const [cell] = cellsOf(sheet.engine, name, place);
    const reading = cell && countingReading(sheet, cell);
    const size = reading && sizeOfReading(sheet, reading);
    return size && { reading, size };
  };
  return [...sheet.engine.places.values()]
    .filter(({ kind }) => kind === at)
    .flatMap(({ id, title }) => {
      const pack = sized(id, found);
      const deep = sized(id, depth);
      if (!pack || !deep) return [];
      const u = Math.hypot(standardUncertainty(deep.size), standardUncertainty(pack.size));
      return [
        {
          place: id,
          title,
          needed: packNeeded(timing, deep.size.value),
          u,
          found: pack.size.value,
          reading: pack.reading,
        },
      ];
    });
};

/**
 * Doubts that shim packs were swapped, from the packs as found and the packs that the depths ask for.
 *
 * @param sheet  measuring sheet; the engine type says which characteristics are depth and pack as found
 * @returns one doubt for each round of pumps whose packs look exchanged, with each pump's own pack as likely
 */
export const packDoubts = (sheet: Sheet): readonly Doubt[] => {
  const pumps = pumpsOf(sheet);
  const timing = sheet.engine.pumpTiming;
  if (!timing || pumps.length < 2) return [];
  const swaps = swappedPacks({
    places: pumps.map(({ place }) => place),
    needed: pumps.map(({ needed }) => needed),
    found: pumps.map(({ found }) => found),
    tolerance: Math.hypot(timing.tolerance, Math.max(...pumps.map(({ u }) => u))),
  });
  const byPlace = new Map(pumps.map((pump) => [pump.place, pump]));
  return swaps
    .filter(({ odds }) => odds >= raisedAt)
    .map(({ cycle, from, odds }) => {
      const at = cycle.flatMap((place) => byPlace.get(place) ?? []);
      const own = from.flatMap((place) => byPlace.get(place) ?? []);
      const readings = at.map(({ reading }) => reading.id);
      const figures = at.map(
        ({ title, reading, needed }) =>
          `${title} ${typedText(reading.typed)} (needs ${needed.toFixed(2)} mm)`,
      );
      return {
        id: `shim packs swapped:${readings.join(',')}`,
        slip: 'shim packs swapped',
        says: `Shim packs look swapped, ${oddsText(odds)}: ${figures.join(', ')}. Look at the labels, and measure packs and depths again, or say why they stand.`,
        readings,
        places: cycle,
        likely: own.map(({ reading }) => reading.typed),
        odds,
      };
    });
};
