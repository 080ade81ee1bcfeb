/** @module Verdicts of every place, worked out again only where a reading changed: a key press touches few of them. */
import { markIn } from '../../drawing/job-marks.ts';
import type { Mark } from '../../drawing/mark.ts';
import type { Characteristic, EngineType, Place, PlaceId } from '../../engine/engine-type.ts';
import { counts } from '../../job/judged.ts';
import { operandCells } from '../../measure/expression.ts';
import { judge } from '../../measure/judge.ts';
import { cellKey } from '../../measure/reading.ts';
import { repeatAlike } from '../../measure/repeats.ts';
import { cellsOf, placesOf } from '../../measure/scheme.ts';
import type { Sheet } from '../../measure/sheet.ts';
import type { Judged } from '../../measure/verdict-model.ts';
import type { Extent } from '../../work/extent.ts';

export interface JudgedPlaces {
  /** What is asked of each place, or was read there all the same. */
  readonly judged: ReadonlyMap<PlaceId, readonly Judged[]>;
  readonly marks: ReadonlyMap<PlaceId, Mark>;
}

/** Keys of the cells that a characteristic at a place is read in or worked out from. */
const cellsBehind = (engine: EngineType, known: Characteristic, place: Place): readonly string[] =>
  (known.derived ? operandCells(known.derived, place, engine) : cellsOf(engine, known.name, place.id)).map(
    cellKey,
  );

const indexes = new WeakMap<EngineType, ReadonlyMap<string, ReadonlySet<PlaceId>>>();

/** Which places a cell bears on. */
const bearing = (engine: EngineType): ReadonlyMap<string, ReadonlySet<PlaceId>> => {
  const known = indexes.get(engine);
  if (known) return known;
  const index = new Map<string, Set<PlaceId>>();
  for (const characteristic of engine.characteristics.values())
    for (const place of placesOf(engine, characteristic))
      for (const key of cellsBehind(engine, characteristic, place)) {
        const places = index.get(key) ?? new Set();
        index.set(key, places.add(place.id));
      }
  indexes.set(engine, index);
  return index;
};

const judgedAt = (sheet: Sheet, place: Place): readonly Judged[] =>
  [...sheet.engine.characteristics.values()]
    .filter(({ at }) => at === place.kind)
    .map(({ name }) => judge(sheet, name, place.id));

/** Keys of cells whose readings are others than they were. */
const changedCells = (before: Sheet, now: Sheet): readonly string[] => {
  const changed: string[] = [];
  for (const [key, readings] of now.readings) if (before.readings.get(key) !== readings) changed.push(key);
  for (const key of before.readings.keys()) if (!now.readings.has(key)) changed.push(key);
  return changed;
};

const sameRules = (before: Sheet, now: Sheet): boolean =>
  before.engine === now.engine &&
  before.instruments === now.instruments &&
  before.sizesFound === now.sizesFound &&
  before.sizesReceived === now.sizesReceived &&
  before.former?.sizes === now.former?.sizes &&
  before.conformance === now.conformance &&
  before.rule === now.rule &&
  repeatAlike(before, now);

/** A judge that remembers: give it each sheet in turn, with how far the job goes. */
export const placesJudge = (): ((sheet: Sheet, extent: Extent) => JudgedPlaces) => {
  let last: { readonly sheet: Sheet; readonly extent: Extent; readonly places: JudgedPlaces } | undefined;
  return (sheet, extent) => {
    if (last?.sheet === sheet && last.extent === extent) return last.places;
    const before = last && last.extent === extent && sameRules(last.sheet, sheet) ? last : undefined;
    const index = bearing(sheet.engine);
    const touched = before
      ? new Set(changedCells(before.sheet, sheet).flatMap((key) => [...(index.get(key) ?? [])]))
      : new Set(sheet.engine.places.keys());
    const judged = new Map(before?.places.judged);
    let marks: ReadonlyMap<PlaceId, Mark> =
      last?.sheet.engine === sheet.engine ? last.places.marks : new Map<PlaceId, Mark>();
    for (const id of touched) {
      const place = sheet.engine.places.get(id);
      if (!place) continue;
      const here = judgedAt(sheet, place).filter(counts(extent));
      judged.set(id, here);
      const mark = markIn(extent, id, here);
      // The map of marks stays the same object while no mark changes, so that the drawing stays too.
      if (marks.get(id) !== mark) marks = new Map(marks).set(id, mark);
    }
    last = { sheet, extent, places: { judged, marks } };
    return last.places;
  };
};
