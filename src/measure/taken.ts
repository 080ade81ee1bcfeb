/** @module Readings that count, place by place, as doubts look at them. */
import type { Bounds, Characteristic, Limits, Place } from '../engine/engine-type.ts';
import { quantityOf } from '../engine/shown-in.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { countingReading, sizeOfReading } from './cell-size.ts';
import type { Instrument } from './instrument.ts';
import { cellKey, type Reading } from './reading.ts';
import { cellsOf } from './scheme.ts';
import type { Sheet } from './sheet.ts';

export interface Taken {
  readonly place: Place;
  readonly reading: Reading;
  readonly instrument: Instrument;
  /** As read or as it probably was: mm, or what takes their place for a figure that is no length. */
  readonly size: number;
  /** Standard uncertainty, likewise. */
  readonly u: number;
  /** What the core's figure was multiplied by; 1 for a length. */
  readonly scale: number;
}

/** A figure that is no length is taken for a length of about this size, mm, so that the same sums serve it. */
const asLong = 50;

/** What figures of a characteristic are multiplied by: 1 for lengths. */
export const scaleOf = (characteristic: Characteristic, limits: Limits | undefined): number => {
  if (quantityOf(characteristic) === 'length') return 1;
  const { new: made, goesBack } = limits ?? { new: {}, goesBack: {} };
  const bounds = [made.least, made.greatest, goesBack.least, goesBack.greatest].map((each) =>
    Math.abs(each ?? 0),
  );
  return asLong / (Math.max(...bounds) || 1);
};

const scaledBounds = ({ least, greatest }: Bounds, scale: number): Bounds => ({
  ...(least !== undefined && { least: least * scale }),
  ...(greatest !== undefined && { greatest: greatest * scale }),
});

export const scaledLimits = (limits: Limits, scale: number): Limits => ({
  ...limits,
  new: scaledBounds(limits.new, scale),
  goesBack: scaledBounds(limits.goesBack, scale),
});

const takenAt = (
  sheet: Sheet,
  characteristic: Characteristic,
  place: Place,
  scale: number,
): readonly Taken[] =>
  cellsOf(sheet.engine, characteristic.name, place.id).flatMap((cell) => {
    const reading = countingReading(sheet, cell);
    const size = reading && sizeOfReading(sheet, reading);
    const instrument = reading && sheet.instruments.get(reading.instrument);
    return size && instrument
      ? [
          {
            place,
            reading,
            instrument,
            size: size.value * scale,
            u: standardUncertainty(size) * scale,
            scale,
          },
        ]
      : [];
  });

/** Readings that count, by place; places of which none has a size are left out. */
export const rowsOf = (
  sheet: Sheet,
  characteristic: Characteristic,
  places: readonly Place[],
  scale: number,
): readonly (readonly Taken[])[] =>
  places.map((place) => takenAt(sheet, characteristic, place, scale)).filter((row) => row.length > 0);

/** Earlier readings of the same cell that say the same. */
export const confirmations = (sheet: Sheet, { reading, u, scale }: Taken): number => {
  const size = sizeOfReading(sheet, reading)?.value ?? Number.NaN;
  return (sheet.readings.get(cellKey(reading.cell)) ?? []).filter((earlier) => {
    const other = earlier.id === reading.id ? undefined : sizeOfReading(sheet, earlier);
    return other !== undefined && Math.abs(other.value - size) * scale <= 3 * u;
  }).length;
};

/** Where a reading was taken: `main bearing 2, journal diameter front vertical`. */
export const whereTaken = (characteristic: Characteristic, { place, reading }: Taken): string =>
  `${place.title}, ${[characteristic.title, reading.cell.plane, reading.cell.axis].filter((word) => word !== '').join(' ')}`;

/** How far a size lies past what its part was made to, in words; only that it does, for what is no length. */
export const pastWords = (grown: number, { scale }: Taken, more = ''): string =>
  scale === 1 ? `${grown.toFixed(3)} mm${more} past` : 'past';
