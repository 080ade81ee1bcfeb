/** @module Readings that count, place by place, as doubts look at them. */
import type { Characteristic, Place } from '../engine/engine-type.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { countingReading, sizeOfReading } from './cell-size.ts';
import type { Instrument } from './instrument.ts';
import { cellKey, type Reading } from './reading.ts';
import { cellsOf, placesOf } from './scheme.ts';
import type { Sheet } from './sheet.ts';

export interface Taken {
  readonly place: Place;
  readonly reading: Reading;
  readonly instrument: Instrument;
  /** mm, as read or as it probably was. */
  readonly size: number;
  /** Standard uncertainty, mm. */
  readonly u: number;
}

const takenAt = (sheet: Sheet, characteristic: Characteristic, place: Place): readonly Taken[] =>
  cellsOf(sheet.engine, characteristic.name, place.id).flatMap((cell) => {
    const reading = countingReading(sheet, cell);
    const size = reading && sizeOfReading(sheet, reading);
    const instrument = reading && sheet.instruments.get(reading.instrument);
    return size && instrument
      ? [{ place, reading, instrument, size: size.value, u: standardUncertainty(size) }]
      : [];
  });

/** Readings that count, by place; places of which none has a size are left out. */
export const rowsOf = (sheet: Sheet, characteristic: Characteristic): readonly (readonly Taken[])[] =>
  placesOf(sheet.engine, characteristic)
    .map((place) => takenAt(sheet, characteristic, place))
    .filter((row) => row.length > 0);

/** Earlier readings of the same cell that say the same. */
export const confirmations = (sheet: Sheet, { reading, u }: Taken): number => {
  const size = sizeOfReading(sheet, reading)?.value ?? Number.NaN;
  return (sheet.readings.get(cellKey(reading.cell)) ?? []).filter((earlier) => {
    const other = earlier.id === reading.id ? undefined : sizeOfReading(sheet, earlier);
    return other !== undefined && Math.abs(other.value - size) <= 3 * u;
  }).length;
};

/** Where a reading was taken: `main bearing 2, journal diameter front vertical`. */
export const whereTaken = (characteristic: Characteristic, { place, reading }: Taken): string =>
  `${place.title}, ${[characteristic.title, reading.cell.plane, reading.cell.axis].filter((word) => word !== '').join(' ')}`;
