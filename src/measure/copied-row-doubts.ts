/** @module Doubts about rows that are equal to the last digit. */
import { resolutionOf, type Typed, typedText } from '../quantity/typed.ts';
import type { Known } from './known.ts';
import { greatestOdds, oddsText, raisedAt } from './odds.ts';
import { cellsApart, placesApart } from './reading-doubts.ts';
import { copiedOdds, copiedRow } from './slips/copied-row.ts';
import type { Taken } from './taken.ts';
import type { Doubt } from './verdict-model.ts';

const same = (a: Typed, b: Typed): boolean => a.text === b.text && a.unit === b.unit;

const alike = (row: readonly Taken[], other: readonly Taken[]): boolean =>
  row.length === other.length &&
  row.every(({ reading }, at) => {
    const there = other[at]?.reading;
    return (
      there !== undefined &&
      same(reading.typed, there.typed) &&
      reading.cell.plane === there.cell.plane &&
      reading.cell.axis === there.cell.axis
    );
  });

/** Each row is held against those before it, whose figures it would have been copied from. */
export const copiedRowDoubts = (known: Known, rows: readonly (readonly Taken[])[]): readonly Doubt[] =>
  rows.flatMap((row, at) => {
    const from = rows.slice(0, at).find((other) => alike(row, other));
    const [first] = row;
    if (!first || !from) return [];
    const step = Math.max(...row.map(({ reading, scale }) => resolutionOf(reading.typed) * scale));
    const odds = Math.min(
      greatestOdds,
      copiedOdds(
        {
          cells: row.length,
          step,
          apart: 2 * placesApart(known.own, first.u),
          noise: cellsApart(first.u),
          rows: rows.length - 1,
        },
        known.priors[copiedRow.name] ?? 0,
      ),
    );
    if (odds < raisedAt) return [];
    const figures = row.map(({ reading }) => typedText(reading.typed)).join(', ');
    return [
      {
        id: `${copiedRow.name}:${first.place.id}|${known.characteristic.name}`,
        slip: copiedRow.name,
        says: `${first.place.title}, ${known.characteristic.title}: ${figures} is the row of ${from[0]?.place.title} to the last digit, and looks copied, ${oddsText(odds)}. Measure it again, or say why it stands.`,
        readings: row.map(({ reading }) => reading.id),
        places: [first.place.id],
        likely: row.map(({ reading }) => reading.typed),
        odds,
      },
    ];
  });
