/** @module Doubts that rows of places were swapped: by an earlier taking, or by the bores that ring gaps go with. */
import { typedText } from '../quantity/typed.ts';
import { sizeOfReading } from './cell-size.ts';
import { exchanges } from './exchange.ts';
import type { Known } from './known.ts';
import { oddsText, raisedAt } from './odds.ts';
import { cellKey } from './reading.ts';
import { rowSurprise, swappedRows } from './slips/swapped-rows.ts';
import type { Taken } from './taken.ts';
import type { Doubt } from './verdict-model.ts';

/** A row as read, and what is expected in each of its cells, mm. */
export interface RowExpected {
  readonly row: readonly Taken[];
  readonly expected: readonly number[];
}

/**
 * Doubts that rows stand at one another's places.
 *
 * @param known   characteristic
 * @param rows    places of which it is known what to expect, with as many cells each
 * @param spread  how far a figure may honestly be off what is expected, mm
 * @param by      what it is told by, to follow `by`
 */
export const swappedRowDoubts = (
  known: Known,
  rows: readonly RowExpected[],
  spread: number,
  by: string,
): readonly Doubt[] => {
  const chance = known.priors[swappedRows.name] ?? 0;
  const cells = rows[0]?.row.length ?? 0;
  if (
    rows.length < 2 ||
    !(chance > 0) ||
    rows.some(({ row, expected }) => row.length !== cells || expected.length !== cells)
  )
    return [];
  const byPlace = new Map(rows.map((each) => [each.row[0]?.place.id ?? '', each.row]));
  const found = exchanges({
    places: [...byPlace.keys()],
    chance: Math.min(chance, 0.5),
    surprise: (owner, at) =>
      rowSurprise(
        (rows[owner]?.expected ?? []).map(
          (expected, cell) => (rows[at]?.row[cell]?.size ?? Number.NaN) - expected,
        ),
        spread,
      ),
  });
  return found
    .filter(({ odds }) => odds >= raisedAt)
    .map(({ cycle, from, odds }) => {
      const here = cycle.flatMap((place) => byPlace.get(place) ?? []);
      const own = from.flatMap((place) => byPlace.get(place) ?? []);
      const titles = cycle.map((place) => byPlace.get(place)?.[0]?.place.title ?? place);
      const readings = here.map(({ reading }) => reading.id);
      return {
        id: `${swappedRows.name}:${readings.join(',')}`,
        slip: swappedRows.name,
        says: `${known.characteristic.title}: the rows of ${titles.join(' and ')} look swapped by ${by}, ${oddsText(odds)}: ${here.map(({ place, reading }) => `${place.title} ${typedText(reading.typed)}`).join(', ')}. Look at the marks on the parts, measure them again, or say why they stand.`,
        readings,
        places: cycle,
        likely: own.map(({ reading }) => reading.typed),
        odds,
      };
    });
};

/** Rows that were taken twice: the last taking is held against the one before. */
export const retakenRowDoubts = (known: Known, rows: readonly (readonly Taken[])[]): readonly Doubt[] => {
  const { sheet } = known;
  const before = ({ reading, scale }: Taken): number | undefined => {
    const earlier = sheet.readings.get(cellKey(reading.cell))?.at(-2);
    const size = earlier && sizeOfReading(sheet, earlier);
    return size && size.value * scale;
  };
  const again = rows.flatMap((row) => {
    const expected = row.flatMap((taken) => before(taken) ?? []);
    return expected.length === row.length ? [{ row, expected }] : [];
  });
  const u = Math.max(0, ...again.flatMap(({ row }) => row.map((taken) => taken.u)));
  return swappedRowDoubts(known, again, Math.SQRT2 * u, 'what was read there before');
};
