/** @module Sizes in the cells of a sheet: of one reading, and of a cell from all its readings that count. */
import type { Material } from '../engine/engine-type.ts';
import type { Uncertain } from '../quantity/uncertain.ts';
import type { Instrument } from './instrument.ts';
import type { Register } from './instrument-figures.ts';
import { type Cell, cellKey, type Reading } from './reading.ts';
import { pooledSpread, sizeOfRepeats } from './repeats.ts';
import type { Sheet } from './sheet.ts';
import { type Spread, sizeOf } from './size.ts';

/** The reading that speaks for a cell: the last one taken. Earlier ones count where they repeat it. */
export const countingReading = (sheet: Sheet, cell: Cell): Reading | undefined =>
  sheet.readings.get(cellKey(cell))?.at(-1);

/** A size, and all that it was worked out from beside the readings themselves. */
interface Kept {
  readonly instrument: Instrument;
  readonly register: Register;
  readonly spread: Spread;
  readonly material: Material | undefined;
  readonly size: Uncertain | undefined;
}

const sameBeside = (a: Kept, b: Omit<Kept, 'size'>): boolean =>
  a.instrument === b.instrument &&
  (a.register === b.register || b.instrument.setTo === undefined) &&
  a.material === b.material &&
  (a.spread === b.spread ||
    (a.spread.deviation === b.spread.deviation && a.spread.freedom === b.spread.freedom));

const besideOf = (sheet: Sheet, reading: Reading): Omit<Kept, 'size'> | undefined => {
  const instrument = sheet.instruments.get(reading.instrument);
  return (
    instrument && {
      instrument,
      register: sheet.instruments,
      spread: pooledSpread(sheet, instrument),
      material: sheet.engine.characteristics.get(reading.cell.characteristic)?.material,
    }
  );
};

/** A reading never changes, and a sheet that grows keeps the readings it had. */
const ofReadings = new WeakMap<Reading, Kept>();
const ofCells = new WeakMap<readonly Reading[], Kept>();

/** Size of one reading by itself; undefined where the instrument is not in the register or the figure is no length. */
export const sizeOfReading = (sheet: Sheet, reading: Reading): Uncertain | undefined => {
  const beside = besideOf(sheet, reading);
  if (!beside) return undefined;
  const kept = ofReadings.get(reading);
  if (kept && sameBeside(kept, beside)) return kept.size;
  const read = sizeOf(reading, beside.instrument, beside);
  const size = read.kind === 'answer' ? read.value : undefined;
  ofReadings.set(reading, { ...beside, size });
  return size;
};

/** Size in a cell: of its one reading, or the mean of its repeats. */
export const sizeInCell = (sheet: Sheet, cell: Cell): Uncertain | undefined => {
  const readings = sheet.readings.get(cellKey(cell));
  const last = readings?.at(-1);
  if (!readings || !last) return undefined;
  if (readings.length === 1) return sizeOfReading(sheet, last);
  const beside = besideOf(sheet, last);
  if (!beside) return undefined;
  const kept = ofCells.get(readings);
  if (kept && sameBeside(kept, beside)) return kept.size;
  const size = sizeOfRepeats(readings, beside.instrument, beside);
  ofCells.set(readings, { ...beside, size });
  return size;
};
