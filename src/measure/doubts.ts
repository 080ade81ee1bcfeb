/** @module Readings that look wrong: the odds of the usual slips against an honest reading. */
import type { Characteristic, Place } from '../engine/engine-type.ts';
import { typedText } from '../quantity/typed.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { expectationOf } from './expectation.ts';
import { aroundOthers, type Honest, honestOf, trustIn } from './honest.ts';
import type { Instrument } from './instrument.ts';
import { countingReading, sizeOfReading } from './judge.ts';
import { limitsOf } from './limits.ts';
import { median, othersOf } from './neighbours.ts';
import { greatestOdds, oddsText, raisedAt } from './odds.ts';
import { packDoubts } from './pack-doubts.ts';
import { cellKey, type Reading } from './reading.ts';
import { cellsOf, placesOf } from './scheme.ts';
import type { Sheet } from './sheet.ts';
import { slips } from './slips/list.ts';
import type { Candidate, Slip } from './slips/slip.ts';
import type { Doubt } from './verdict-model.ts';

/** A slip made twice over in the same cell, in the same way: one in twenty, common practice, no source. */
const twice = 0.05;

/** How far neighbours honestly lie apart, of an ordinary wear: common practice, no source. */
const apart = 0.25;

interface Taken {
  readonly reading: Reading;
  readonly instrument: Instrument;
  readonly size: number;
  readonly u: number;
}

const takenAt = (sheet: Sheet, characteristic: Characteristic, place: Place): readonly Taken[] =>
  cellsOf(sheet.engine, characteristic.name, place.id).flatMap((cell) => {
    const reading = countingReading(sheet, cell);
    const size = reading && sizeOfReading(sheet, reading);
    const instrument = reading && sheet.instruments.get(reading.instrument);
    return size && instrument
      ? [{ reading, instrument, size: size.value, u: standardUncertainty(size) }]
      : [];
  });

/** Earlier readings of the same cell that say the same. */
const confirmations = (sheet: Sheet, { reading, size, u }: Taken): number =>
  (sheet.readings.get(cellKey(reading.cell)) ?? []).filter((earlier) => {
    const other = earlier.id === reading.id ? undefined : sizeOfReading(sheet, earlier);
    return other !== undefined && Math.abs(other.value - size) <= 3 * u;
  }).length;

interface Suspicion {
  readonly slip: Slip;
  readonly candidate: Candidate;
  readonly odds: number;
}

const weighed = (sheet: Sheet, taken: Taken, honest: Honest): Suspicion | undefined => {
  const asItStands = honest.density(taken.size);
  let worst: Suspicion | undefined;
  for (const slip of slips) {
    if (slip.reach * honest.peak < raisedAt * asItStands) continue;
    for (const candidate of slip.candidates(taken.reading.typed, taken.instrument)) {
      const weight = (candidate.chance * candidate.stretch) / asItStands;
      if (weight * honest.peak < raisedAt) continue;
      const would = sizeOfReading(sheet, { ...taken.reading, typed: candidate.likely });
      const odds = would ? weight * honest.density(would.value) : 0;
      if (odds > (worst?.odds ?? 0)) worst = { slip, candidate, odds };
    }
  }
  return (
    worst && { ...worst, odds: Math.min(greatestOdds, worst.odds) * twice ** confirmations(sheet, taken) }
  );
};

const doubtOf = (taken: Taken, place: Place, title: string, found: Suspicion): Doubt => {
  const { reading } = taken;
  const { slip, candidate, odds } = found;
  const where = [title, reading.cell.plane, reading.cell.axis].filter((word) => word !== '').join(' ');
  return {
    id: `${slip.name}:${reading.id}`,
    slip: slip.name,
    says: `${place.title}, ${where}: ${typedText(reading.typed)} looks like ${slip.says}; ${typedText(candidate.likely)} would fit, ${oddsText(odds)}. Measure it again, or say why it stands.`,
    readings: [reading.id],
    places: [place.id],
    likely: [candidate.likely],
    odds,
  };
};

const doubtsAt = (sheet: Sheet, characteristic: Characteristic): readonly Doubt[] => {
  const places = placesOf(sheet.engine, characteristic)
    .map((place) => ({ place, taken: takenAt(sheet, characteristic, place) }))
    .filter(({ taken }) => taken.length > 0);
  const first = places[0]?.taken[0];
  if (!first) return [];
  const sizes = places.map(({ taken }) => taken.map(({ size }) => size));
  const centres = sizes.map(median);
  const limits = limitsOf(sheet, characteristic.name);
  const own = expectationOf(limits, characteristic.wears, first.u) ?? aroundOthers(median(centres));
  const scale = Math.max(own.ordinary * apart, first.u);
  const believe = (size: number): number => trustIn(size, own);
  const otherPlaces = othersOf(centres, scale, believe);
  return places.flatMap(({ place, taken }, index) => {
    const samePlace = othersOf(sizes[index] ?? [], scale, believe);
    return taken.flatMap((each, inPlace) => {
      const found = weighed(sheet, each, honestOf(own, samePlace[inPlace], otherPlaces[index]));
      return found && found.odds >= raisedAt ? [doubtOf(each, place, characteristic.title, found)] : [];
    });
  });
};

const doubted = new WeakMap<Sheet, readonly Doubt[]>();

/**
 * Doubts about the readings of a sheet, and about its shim packs.
 *
 * For each reading that counts, and each usual slip, odds = chance of the slip × density of the size that
 * would have been read without it, over the density of the size as it stands. What honest sizes look like is
 * taken from the limits (wear is common, much wear is rare, growth hardly happens), from the other cells of the
 * same place and from the other places of the kind. A reading taken again with the same outcome is doubted
 * twenty times less.
 *
 * @param sheet  measuring sheet
 * @returns doubts of ten to one and more, in the order of the engine type, shim packs last
 * @source  Bayes's rule; the chances and shapes are common practice, no source
 */
export const doubtsOf = (sheet: Sheet): readonly Doubt[] => {
  const kept = doubted.get(sheet);
  if (kept) return kept;
  const measured = [...sheet.engine.characteristics.values()].filter(({ derived }) => !derived);
  const found = [...measured.flatMap((each) => doubtsAt(sheet, each)), ...packDoubts(sheet)];
  doubted.set(sheet, found);
  return found;
};
