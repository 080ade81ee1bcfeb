/** @module Readings that look wrong: the odds of the usual slips against an honest reading. */
import type { Characteristic, Limits, Place } from '../engine/engine-type.ts';
import { copiedRowDoubts } from './copied-row-doubts.ts';
import { expectationOf, runShare } from './expectation.ts';
import { aroundOthers } from './honest.ts';
import { instrumentDoubts } from './instrument-doubts.ts';
import { type Known, knownOf } from './known.ts';
import { limitsOf } from './limits.ts';
import { median } from './neighbours.ts';
import { packDoubts } from './pack-doubts.ts';
import { cellKey, type Reading } from './reading.ts';
import { readingDoubts } from './reading-doubts.ts';
import { boreOfGap, ringGapDoubts } from './ring-gap-doubts.ts';
import { rowDoubts } from './row-doubts.ts';
import { cellsOf, placesOf } from './scheme.ts';
import type { Sheet } from './sheet.ts';
import { type Priors, usualPriors } from './slips/priors.ts';
import { retakenRowDoubts } from './swapped-row-doubts.ts';
import { rowsOf, scaledLimits, scaleOf, type Taken } from './taken.ts';
import type { Doubt } from './verdict-model.ts';

interface Looked {
  readonly known: Known;
  /** With what each doubted reading probably was in its stead. */
  readonly rows: readonly (readonly Taken[])[];
  readonly doubts: readonly Doubt[];
}

/** What was looked at before, as long as it was just this: a sheet that grows keeps the readings it had. */
interface Kept {
  readonly readings: readonly (readonly Reading[] | undefined)[];
  readonly instruments: Sheet['instruments'];
  readonly limits: readonly (Limits | undefined)[];
  readonly priors: Priors;
  readonly former: Sheet['former'];
  readonly looked: readonly Looked[];
}

const kept = new WeakMap<Characteristic, Kept>();

const alike = <Item>(before: readonly Item[], now: readonly Item[]): boolean =>
  before.every((each, at) => each === now[at]);

/** What is said of all readings with an instrument is said of each size by itself. */
const toldApart = (looked: readonly Looked[]): readonly Looked[] => {
  const told = new Set<string>();
  return looked.map((one) => {
    const doubts = one.doubts.map((doubt) =>
      told.has(doubt.id) ? { ...doubt, id: `${doubt.id} at ${doubt.places[0]}` } : doubt,
    );
    for (const { id } of doubts) told.add(id);
    return { ...one, doubts };
  });
};

/** Places whose parts are of one size are looked at together; those of another are no neighbours of theirs. */
const lookedAt = (sheet: Sheet, characteristic: Characteristic, priors: Priors): readonly Looked[] => {
  const { instruments } = sheet;
  const places = placesOf(sheet.engine, characteristic);
  const limits = places.map(({ id }) => limitsOf(sheet, characteristic.name, id));
  const readings = places.flatMap(({ id }) =>
    cellsOf(sheet.engine, characteristic.name, id).map((cell) => sheet.readings.get(cellKey(cell))),
  );
  const before = kept.get(characteristic);
  const same =
    before?.instruments === instruments &&
    before.priors === priors &&
    before.former === sheet.former &&
    alike(before.limits, limits) &&
    alike(before.readings, readings);
  if (same) return before.looked;
  const bySize = Map.groupBy(places, (_, at) => limits[at]);
  const looked = toldApart(
    [...bySize].flatMap(([own, ofSize]) => look(sheet, characteristic, priors, own, ofSize) ?? []),
  );
  kept.set(characteristic, { readings, instruments, limits, priors, former: sheet.former, looked });
  return looked;
};

/** Hours in which the manual counts on the wear that it allows. */
const lifeOf = ({ engine }: Sheet, name: string): number | undefined =>
  [...engine.components.values()].find(({ judgedBy }) => judgedBy.includes(name))?.life;

const look = (
  sheet: Sheet,
  characteristic: Characteristic,
  priors: Priors,
  limits: Limits | undefined,
  places: readonly Place[],
): Looked | undefined => {
  const scale = scaleOf(characteristic, limits);
  const read = rowsOf(sheet, characteristic, places, scale);
  const first = read[0]?.[0];
  if (!first) return undefined;
  const life = lifeOf(sheet, characteristic.name);
  const run = runShare(sheet.hoursRun, life);
  const centres = read.map((row) => median(row.map(({ size }) => size)));
  const own =
    expectationOf(limits && scaledLimits(limits, scale), characteristic.wears, first.u, run) ??
    aroundOthers(median(centres));
  const known = knownOf({ sheet, characteristic, own, priors }, life, read);
  const swapped = retakenRowDoubts(known, read);
  const together = rowDoubts(known, read);
  const single = readingDoubts(known, together.rows, together.doubted);
  return {
    known,
    rows: single.rows,
    doubts: [...swapped, ...together.doubts, ...single.doubts, ...copiedRowDoubts(known, read)],
  };
};

const ofSheet = (sheet: Sheet, priors: Priors): readonly Doubt[] => {
  const looked = [...sheet.engine.characteristics.values()]
    .filter(({ derived }) => !derived)
    .flatMap((characteristic) => lookedAt(sheet, characteristic, priors));
  const rowsOfBore = new Map(
    [...Map.groupBy(looked, ({ known }) => known.characteristic.name)].map(([name, ofSizes]) => [
      name,
      ofSizes.flatMap(({ rows }) => rows),
    ]),
  );
  return [
    ...looked.flatMap(({ known, rows, doubts }) => {
      const bores = rowsOfBore.get(boreOfGap(known.characteristic) ?? '');
      return bores ? [...doubts, ...ringGapDoubts(known, rows, bores)] : doubts;
    }),
    ...packDoubts(sheet),
    ...instrumentDoubts(sheet, priors),
  ];
};

const doubted = new WeakMap<Sheet, WeakMap<Priors, readonly Doubt[]>>();

/**
 * Doubts about the readings of a sheet, its shim packs and its instruments.
 *
 * For each reading that counts, and each usual slip, odds = chance of the slip × density of the size that
 * would have been read without it, over the density of the size as it stands. What honest sizes look like is
 * taken from the limits (wear is common, much wear is rare, growth hardly happens), from the other cells of the
 * same place (its level, its run along the planes, its lean over the axes) and from the other places of the kind.
 * Sets of readings that are off together are looked at first, then single readings, the surest first, each
 * doubted one being taken for what it probably was when the next is looked at. A reading taken again with the
 * same outcome is doubted twenty times less.
 *
 * @param sheet   measuring sheet
 * @param priors  how often each slip happens, by its name; those of the sheet, else the usual ones, if left out
 * @returns doubts of ten to one and more, in the order of the engine type; shim packs and instruments last
 * @source  Bayes's rule; the chances and shapes are common practice, no source
 */
export const doubtsOf = (sheet: Sheet, priors: Priors = sheet.priors ?? usualPriors): readonly Doubt[] => {
  const told = doubted.get(sheet) ?? new WeakMap<Priors, readonly Doubt[]>();
  doubted.set(sheet, told);
  const before = told.get(priors);
  if (before) return before;
  const found = ofSheet(sheet, priors);
  told.set(priors, found);
  return found;
};
