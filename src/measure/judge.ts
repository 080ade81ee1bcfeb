/** @module Verdicts: of one cell as it is typed, of a characteristic at a place, of the whole sheet. */
import type { EngineType, Limits } from '../engine/engine-type.ts';
import { type CellSize, cellSize, countingReading, sizeInCell } from './cell-size.ts';
import type { DecisionRule } from './decision-rule.ts';
import { judgementOfCells, judgementOfSum } from './judgement.ts';
import { limitsOf } from './limits.ts';
import { type Cell, cellKey, type Reading } from './reading.ts';
import { repeatsIn } from './repeats.ts';
import { cellsOf, placesOf } from './scheme.ts';
import { ruleOf, type Sheet } from './sheet.ts';
import type { Judged, JudgedCell } from './verdict-model.ts';
import { weigh } from './weigh.ts';

export { countingReading };

interface CellKept {
  readonly from: CellSize;
  readonly limits: Limits | undefined;
  readonly rule: DecisionRule;
  readonly judged: JudgedCell;
}

/** The last verdict on each cell of an engine, as long as size, limits and rule are the same. */
const cellsJudged = new WeakMap<EngineType, Map<string, CellKept>>();

const sameRule = (a: DecisionRule, b: DecisionRule): boolean =>
  a === b || (a.kind === 'guarded' && b.kind === 'guarded' && a.conformance === b.conformance);

/** Which of several readings the size is the mean of. */
const countedOf = (
  readings: readonly Reading[],
  { instrument }: CellSize,
): Pick<JudgedCell, 'repeats' | 'replaced'> => {
  const counted = new Set(repeatsIn(readings, instrument));
  const replaced = readings.filter((reading) => !counted.has(reading)).map(({ id }) => id);
  return { ...(counted.size > 1 && { repeats: counted.size }), ...(replaced.length > 0 && { replaced }) };
};

/**
 * Verdict of one cell from the readings that count in it: the last one, and those before it that it repeats.
 *
 * Looks at nothing but this cell, and at how its instrument repeats, so that it can be asked at every key press.
 *
 * @param sheet  measuring sheet
 * @param cell   of the scheme
 * @returns size in mm with its verdict; `not yet known` where there is no reading, or none that gives a size;
 *   `within` where the manual gives no limits, since there is nothing for it to lie beyond
 * @source  ISO 14253-1:2017, JCGM 106:2012
 */
export const judgeCell = (sheet: Sheet, cell: Cell): JudgedCell => {
  const key = cellKey(cell);
  const readings = sheet.readings.get(key);
  const reading = readings?.at(-1);
  if (!readings || !reading) return { cell, verdict: 'not yet known' };
  const from = cellSize(sheet, key, readings);
  if (!from?.size) return { cell, reading: reading.id, verdict: 'not yet known' };
  const limits = limitsOf(sheet, cell.characteristic, cell.place);
  const rule = ruleOf(sheet);
  let cells = cellsJudged.get(sheet.engine);
  if (!cells) {
    cells = new Map();
    cellsJudged.set(sheet.engine, cells);
  }
  const kept = cells.get(key);
  if (kept?.from === from && kept.limits === limits && sameRule(kept.rule, rule)) return kept.judged;
  const { expanded, conformance, verdict } = weigh(from.size, limits, rule);
  const judged: JudgedCell = {
    cell,
    reading: reading.id,
    ...(readings.length > 1 && countedOf(readings, from)),
    size: from.size,
    expanded,
    conformance,
    verdict,
  };
  cells.set(key, { from, limits, rule, judged });
  return judged;
};

/** A sheet never changes: what was judged on it stays so. */
const judgements = new WeakMap<Sheet, Map<string, Judged>>();

const judgeOnce = (sheet: Sheet, characteristic: string, place: string): Judged => {
  const known = sheet.engine.characteristics.get(characteristic);
  const at = sheet.engine.places.get(place);
  if (!known || at?.kind !== known.at) {
    return { place, characteristic, verdict: 'not yet known', cells: [], missing: [] };
  }
  if (known.derived) return judgementOfSum(sheet, known, at, (cell) => sizeInCell(sheet, cell));
  const cells = cellsOf(sheet.engine, characteristic, place).map((cell) => judgeCell(sheet, cell));
  return judgementOfCells(sheet, known, at, cells);
};

/**
 * Verdict of a characteristic at a place.
 *
 * Measured: every two-point size must conform, and all of them together with the probability asked for; the worst one
 * is the value, known as well as a greatest or least of several is. As long as cells are missing it is `not yet known`,
 * unless one is already outside. Derived: worked out from its operands, and `not yet known` until all of them are read.
 *
 * @param sheet           measuring sheet
 * @param characteristic  name in the engine type
 * @param place           id of a place of its kind
 * @returns value in mm with verdict, limits and what is missing; `not yet known` with nothing missing where
 *   the names do not go together
 * @source  ISO 14405-1 (local sizes), ISO 14253-1:2017, JCGM 106:2012
 */
export const judge = (sheet: Sheet, characteristic: string, place: string): Judged => {
  const kept = judgements.get(sheet) ?? new Map<string, Judged>();
  judgements.set(sheet, kept);
  const key = `${place}|${characteristic}`;
  const before = kept.get(key);
  if (before) return before;
  const judged = judgeOnce(sheet, characteristic, place);
  kept.set(key, judged);
  return judged;
};

/** Every characteristic at each of its places, in the order of the engine type. */
export const judgeAll = (sheet: Sheet): readonly Judged[] =>
  [...sheet.engine.characteristics.values()].flatMap((characteristic) =>
    placesOf(sheet.engine, characteristic).map((place) => judge(sheet, characteristic.name, place.id)),
  );
