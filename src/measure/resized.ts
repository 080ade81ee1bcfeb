/** @module Sizes as they would be known had they been measured otherwise: oftener, with another instrument, cold. */

import { kindOf } from '../engine/instrument-kind.ts';
import { formatFigure } from '../quantity/figure.ts';
import type { Uncertain } from '../quantity/uncertain.ts';
import { unitsOf } from '../quantity/unit.ts';
import { countingReading, sizeInCell } from './cell-size.ts';
import type { Instrument } from './instrument.ts';
import { type Cell, cellKey, type Reading } from './reading.ts';
import { pooledSpread, repeatsIn } from './repeats.ts';
import type { Sheet } from './sheet.ts';
import { sizeOf } from './size.ts';

/** The instrument that a cell was read with last; undefined where it is not in the register. */
export const instrumentOf = (sheet: Sheet, cell: Cell): Instrument | undefined => {
  const reading = countingReading(sheet, cell);
  return reading && sheet.instruments.get(reading.instrument);
};

/** How often the size in a cell has been read, as far as the readings repeat one another. */
const readingsIn = (sheet: Sheet, cell: Cell, instrument: Instrument): number =>
  repeatsIn(sheet.readings.get(cellKey(cell)) ?? [], instrument).length;

/** A size as it would be known after more repeats, if their mean stayed where it is. */
const averaged = (size: Uncertain, before: number, after: number): Uncertain => ({
  value: size.value,
  terms: size.terms.map((term) =>
    term.name.startsWith('repeat ') ? { ...term, share: term.share * Math.sqrt(before / after) } : term,
  ),
});

/** More readings of a cell with the instrument that read it. */
export const readOftener = (sheet: Sheet, cell: Cell, more: number): Uncertain | undefined => {
  const size = sizeInCell(sheet, cell);
  const reading = countingReading(sheet, cell);
  const instrument = reading && sheet.instruments.get(reading.instrument);
  if (!size || !instrument) return undefined;
  const before = readingsIn(sheet, cell, instrument);
  return averaged(size, before, before + more);
};

interface Otherwise {
  readonly instrument: Instrument;
  readonly times?: number;
  readonly more?: number;
  readonly cold?: boolean;
}

/**
 * The same size had it been read otherwise: with another instrument, or the same in another state, so many times (as
 * often as it was, where nothing is said) and some more, the part as warm as it was or cold.
 *
 * @returns the size where it is, with the uncertainty that it would then have; undefined where it has not been read
 */
export const readOtherwise = (
  sheet: Sheet,
  cell: Cell,
  { instrument, times, more = 0, cold = false }: Otherwise,
): Uncertain | undefined => {
  const size = sizeInCell(sheet, cell);
  const reading = countingReading(sheet, cell);
  if (!size || !reading) return undefined;
  const { temperature: _part, instrumentTemperature: _tool, ...atReference } = reading;
  const register = new Map(sheet.instruments).set(instrument.name, instrument);
  const spread = pooledSpread(sheet, instrument);
  const material = sheet.engine.characteristics.get(cell.characteristic)?.material;
  const shown = (figure: number): Reading => ({
    ...(cold ? atReference : reading),
    instrument: instrument.name,
    typed: { text: formatFigure(figure, 6), unit: unitsOf(kindOf(instrument.kind).measures)[0] ?? '' },
  });
  // What it shows of nothing is what a comparing instrument adds.
  const nothing = sizeOf(shown(0), instrument, { register, material, spread });
  if (nothing.kind === 'refused') return undefined;
  const read = sizeOf(shown(size.value - nothing.value.value), instrument, { register, material, spread });
  if (read.kind === 'refused') return undefined;
  const asOften = reading.instrument === instrument.name ? readingsIn(sheet, cell, instrument) : 1;
  return averaged({ value: size.value, terms: read.value.terms }, 1, (times ?? asOften) + more);
};
