/** @module Doubts about ring gaps by the bores that the rings run in. */
import type { Characteristic } from '../engine/engine-type.ts';
import { typedText } from '../quantity/typed.ts';
import { operandPlace } from './expression.ts';
import type { Known } from './known.ts';
import { limitsOf } from './limits.ts';
import { median } from './neighbours.ts';
import { greatestOdds, oddsText, raisedAt } from './odds.ts';
import { gapOdds, leastGap, ringGapApart } from './slips/ring-gap-apart.ts';
import { swappedRowDoubts } from './swapped-row-doubts.ts';
import { type Taken, whereTaken } from './taken.ts';
import type { Doubt } from './verdict-model.ts';

/** Engine types of before had no word for it: these went by their names. */
const gapName = 'ring-gap';
const boreName = 'bore-diameter';

/** The bore that a ring gap is read in; undefined for what is no ring gap. */
export const boreOfGap = ({ name, inBore }: Characteristic): string | undefined =>
  inBore ?? (name === gapName ? boreName : undefined);

interface InBore {
  readonly row: readonly Taken[];
  readonly bore: readonly Taken[];
}

const least = (row: readonly Taken[]): number => Math.min(...row.map(({ size }) => size));

const inBores = (
  known: Known,
  gaps: readonly (readonly Taken[])[],
  bores: readonly (readonly Taken[])[],
): readonly InBore[] =>
  gaps.flatMap((row) => {
    const [first] = row;
    const [anyBore] = bores[0] ?? [];
    if (!first || !anyBore) return [];
    const at = operandPlace(known.sheet.engine, first.place, anyBore.place.kind);
    const bore = bores.find(([taken]) => taken?.place.id === at);
    return bore ? [{ row, bore }] : [];
  });

const tooClose = (known: Known, { row, bore }: InBore): readonly Doubt[] => {
  const { sheet, priors } = known;
  const [[ring], [cylinder]] = [row, bore];
  if (!ring || !cylinder) return [];
  const made = limitsOf(sheet, known.characteristic.name, ring.place.id)?.new.least;
  const madeBore = limitsOf(sheet, cylinder.reading.cell.characteristic, cylinder.place.id)?.new.greatest;
  if (made === undefined || madeBore === undefined) return [];
  return row.flatMap((taken) => {
    const { reading, place, size, u } = taken;
    const needs = leastGap(made, madeBore, least(bore));
    const spread = Math.hypot(u, Math.PI * Math.max(...bore.map((each) => each.u)));
    const odds = Math.min(greatestOdds, gapOdds(needs - size, spread, priors[ringGapApart.name] ?? 0));
    // A gap below the least as made is doubted for itself.
    if (odds < raisedAt || size < made) return [];
    return [
      {
        id: `${ringGapApart.name}:${reading.id}`,
        slip: ringGapApart.name,
        says: `${whereTaken(known.characteristic, taken)}: ${typedText(reading.typed)} does not go with its bore. ${bore[0]?.place.title} measures at least ${least(bore).toFixed(3)} mm, in which a ring that was new shows ${needs.toFixed(2)} mm and more, since the gap opens by π times what the bore has grown, ${oddsText(odds)}. See that the ring was in its own bore, square and free of carbon, and measure again, or say why it stands.`,
        readings: [reading.id],
        places: [place.id],
        likely: [reading.typed],
        odds,
      },
    ];
  });
};

/** How far ring gaps of one bore honestly differ from those of the next, besides the bores, mm: common practice, no source. */
const ringsApart = 0.05;

/** Gaps of each bore as the gaps of all would have them, moved by π times what its bore differs from the others. */
const swapped = (known: Known, pairs: readonly InBore[]): readonly Doubt[] => {
  const cells = Math.max(0, ...pairs.map(({ row }) => row.length));
  const full = pairs.filter(({ row }) => row.length === cells);
  const middle = median(full.map(({ bore }) => least(bore)));
  const usual = Array.from({ length: cells }, (_, cell) =>
    median(full.flatMap(({ row }) => row[cell]?.size ?? [])),
  );
  return swappedRowDoubts(
    known,
    full.map(({ row, bore }) => ({
      row,
      expected: usual.map((gap) => gap + Math.PI * (least(bore) - middle)),
    })),
    ringsApart,
    'the bores that they go with',
  );
};

export const ringGapDoubts = (
  known: Known,
  gaps: readonly (readonly Taken[])[],
  bores: readonly (readonly Taken[])[],
): readonly Doubt[] => {
  const pairs = inBores(known, gaps, bores);
  const exchanged = swapped(known, pairs);
  const explained = new Set(exchanged.flatMap(({ readings }) => readings));
  return [
    ...exchanged,
    ...pairs
      .flatMap((pair) => tooClose(known, pair))
      .filter(({ readings }) => readings.every((id) => !explained.has(id))),
  ];
};
