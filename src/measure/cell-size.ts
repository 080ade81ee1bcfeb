/** @module Sizes in the cells of a sheet: of one reading, and of a cell from all its readings that count. */
import type { EngineType, Material } from '../engine/engine-type.ts';
import type { Uncertain } from '../quantity/uncertain.ts';
import type { Instrument } from './instrument.ts';
import type { Register } from './instrument-figures.ts';
import { type Cell, cellKey, type Reading } from './reading.ts';
import { pooledSpread, sizeOfRepeats } from './repeats.ts';
import type { Sheet } from './sheet.ts';
import { type Beside, type Spread, sizeOf } from './size.ts';

/** The reading that speaks for a cell: the last one taken. Earlier ones count where they repeat it. */
export const countingReading = (sheet: Sheet, cell: Cell): Reading | undefined =>
  sheet.readings.get(cellKey(cell))?.at(-1);

/** The size in a cell, and all that it was worked out from. */
export interface CellSize {
  readonly readings: readonly Reading[];
  readonly instrument: Instrument;
  readonly register: Register;
  readonly spread: Spread;
  readonly material: Material | undefined;
  readonly size: Uncertain | undefined;
}

/**
 * The last size of each cell of an engine. A sheet that grows keeps the lists of readings that it had, so that
 * nothing is worked out twice; kept by cell and not by reading, so that there are never more of them than cells.
 */
const kept = new WeakMap<EngineType, Map<string, CellSize>>();

const isFresh = (before: CellSize, now: Omit<CellSize, 'size'>): boolean =>
  before.readings === now.readings &&
  before.instrument === now.instrument &&
  (before.register === now.register || now.instrument.setTo === undefined) &&
  before.material === now.material &&
  (before.spread === now.spread ||
    (before.spread.deviation === now.spread.deviation && before.spread.freedom === now.spread.freedom));

const sizeAlone = (reading: Reading, instrument: Instrument, beside: Beside): Uncertain | undefined => {
  const read = sizeOf(reading, instrument, beside);
  return read.kind === 'answer' ? read.value : undefined;
};

const materialOf = (sheet: Sheet, { cell }: Reading): Material | undefined =>
  sheet.engine.characteristics.get(cell.characteristic)?.material;

/**
 * The size from the readings of a cell, the same object as long as nothing that bears on it has changed.
 *
 * @param sheet     for the register and for how its instruments repeat
 * @param key       of the cell
 * @param readings  in it, oldest first, at least one
 * @returns undefined where the last instrument is not in the register
 */
export const cellSize = (sheet: Sheet, key: string, readings: readonly Reading[]): CellSize | undefined => {
  const last = readings.at(-1);
  const register = sheet.instruments;
  const instrument = last && register.get(last.instrument);
  if (!instrument) return undefined;
  let cells = kept.get(sheet.engine);
  if (!cells) {
    cells = new Map();
    kept.set(sheet.engine, cells);
  }
  const spread = pooledSpread(sheet, instrument);
  const material = materialOf(sheet, last);
  const now = { readings, instrument, register, spread, material };
  const before = cells.get(key);
  if (before && isFresh(before, now)) return before;
  const size =
    readings.length > 1 ? sizeOfRepeats(readings, instrument, now) : sizeAlone(last, instrument, now);
  const made = { readings, instrument, register, spread, material, size };
  cells.set(key, made);
  return made;
};

/** Size in a cell: of its one reading, or the mean of its repeats; undefined where it has none. */
export const sizeInCell = (sheet: Sheet, cell: Cell): Uncertain | undefined => {
  const key = cellKey(cell);
  const readings = sheet.readings.get(key);
  return readings && cellSize(sheet, key, readings)?.size;
};

/** Size of one reading by itself; undefined where the instrument is not in the register or the figure is no length. */
export const sizeOfReading = (sheet: Sheet, reading: Reading): Uncertain | undefined => {
  const key = cellKey(reading.cell);
  const readings = sheet.readings.get(key);
  if (readings?.length === 1 && readings[0] === reading) return cellSize(sheet, key, readings)?.size;
  const instrument = sheet.instruments.get(reading.instrument);
  if (!instrument) return undefined;
  return sizeAlone(reading, instrument, {
    register: sheet.instruments,
    spread: pooledSpread(sheet, instrument),
    material: materialOf(sheet, reading),
  });
};
