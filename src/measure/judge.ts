/** @module Verdicts: of one cell as it is typed, of a characteristic at a place, of the whole sheet. */
import type { Characteristic, Limits, Place } from '../engine/engine-type.ts';
import { effectiveFreedom, expanded, standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import { evaluate } from './expression.ts';
import { conformanceProbability, verdictOf } from './guard-band.ts';
import type { Instrument } from './instrument.ts';
import { limitsOf } from './limits.ts';
import { type Cell, cellKey, type Reading } from './reading.ts';
import { cellsOf, placesOf } from './scheme.ts';
import type { Sheet } from './sheet.ts';
import { sizeOf } from './size.ts';
import type { Judged, JudgedCell, Verdict } from './verdict-model.ts';

/** Half the width of an interval is told for this coverage, whatever conformance is asked for. */
const coverage = 0.95;

interface SizeKept {
  readonly instrument: Instrument;
  readonly size: Uncertain | undefined;
}

/** A reading never changes, and a sheet that grows keeps the readings it had. */
const sizes = new WeakMap<Reading, SizeKept>();

/** The reading that counts in a cell: the last one taken. */
export const countingReading = (sheet: Sheet, cell: Cell): Reading | undefined =>
  sheet.readings.get(cellKey(cell))?.at(-1);

/** Its size; undefined where the instrument is not in the register or the figure is no length. */
export const sizeOfReading = (sheet: Sheet, reading: Reading): Uncertain | undefined => {
  const instrument = sheet.instruments.get(reading.instrument);
  if (!instrument) return undefined;
  const kept = sizes.get(reading);
  if (kept?.instrument === instrument) return kept.size;
  const read = sizeOf(reading, instrument);
  const size = read.kind === 'answer' ? read.value : undefined;
  sizes.set(reading, { instrument, size });
  return size;
};

const sizeIn = (sheet: Sheet, cell: Cell): Uncertain | undefined => {
  const reading = countingReading(sheet, cell);
  return reading && sizeOfReading(sheet, reading);
};

type Weighed = Required<Pick<JudgedCell, 'expanded' | 'conformance' | 'verdict'>>;

const weigh = (size: Uncertain, limits: Limits | undefined, asked: number): Weighed => {
  const u = standardUncertainty(size);
  const freedom = effectiveFreedom(size);
  const bounds = limits?.goesBack ?? {};
  return {
    expanded: expanded(size, coverage),
    conformance: conformanceProbability(size.value, u, freedom, bounds),
    verdict: verdictOf(size.value, u, freedom, bounds, asked),
  };
};

interface CellKept {
  readonly size: Uncertain;
  readonly limits: Limits | undefined;
  readonly asked: number;
  readonly judged: JudgedCell;
}

/** By reading, as long as size, limits and what is asked are the same. */
const cellsJudged = new WeakMap<Reading, CellKept>();

/**
 * Verdict of one cell from the reading that counts in it, the last one; earlier ones stay in the journal.
 *
 * Looks at nothing but this cell, so that it can be asked at every key press.
 *
 * @param sheet  measuring sheet
 * @param cell   of the scheme
 * @returns size in mm with its verdict; `not yet known` where there is no reading, or none that gives a size;
 *   `within` where the manual gives no limits, since there is nothing for it to lie beyond
 * @source  ISO 14253-1:2017, JCGM 106:2012
 */
export const judgeCell = (sheet: Sheet, cell: Cell): JudgedCell => {
  const reading = countingReading(sheet, cell);
  if (!reading) return { cell, verdict: 'not yet known' };
  const size = sizeOfReading(sheet, reading);
  if (!size) return { cell, reading: reading.id, verdict: 'not yet known' };
  const limits = limitsOf(sheet, cell.characteristic);
  const asked = sheet.conformance;
  const kept = cellsJudged.get(reading);
  if (kept?.size === size && kept.limits === limits && kept.asked === asked) return kept.judged;
  const judged: JudgedCell = { cell, reading: reading.id, size, ...weigh(size, limits, asked) };
  cellsJudged.set(reading, { size, limits, asked, judged });
  return judged;
};

/** Room left to the nearer limit, mm; negative beyond it. Without limits, the more worn has less room. */
const room = (value: number, limits: Limits | undefined, wears: Characteristic['wears']): number => {
  const { least, greatest } = limits?.goesBack ?? {};
  if (least === undefined && greatest === undefined) return wears === 'smaller' ? value : -value;
  return Math.min(
    least === undefined ? Number.POSITIVE_INFINITY : value - least,
    greatest === undefined ? Number.POSITIVE_INFINITY : greatest - value,
  );
};

const liesIn = (value: number, { least, greatest }: Limits['new']): boolean =>
  (least === undefined || value >= least) && (greatest === undefined || value <= greatest);

/** One cell outside settles it; else every cell must have been read, and the worst speaks for all. */
const verdictOfAll = (cells: readonly JudgedCell[]): Verdict => {
  const verdicts = new Set(cells.map(({ verdict }) => verdict));
  const order: readonly Verdict[] = ['outside', 'not yet known', 'unsure'];
  return order.find((verdict) => verdicts.has(verdict)) ?? (cells.length > 0 ? 'within' : 'not yet known');
};

const judgeMeasured = (sheet: Sheet, characteristic: Characteristic, place: Place): Judged => {
  const limits = limitsOf(sheet, characteristic.name);
  const cells = cellsOf(sheet.engine, characteristic.name, place.id).map((cell) => judgeCell(sheet, cell));
  const verdict = verdictOfAll(cells);
  const sized = cells.flatMap((cell) => (cell.size ? [{ ...cell, size: cell.size }] : []));
  const roomOf = (cell: { readonly size: Uncertain }) => room(cell.size.value, limits, characteristic.wears);
  const deciding = sized.filter((cell) => verdict === 'not yet known' || cell.verdict === verdict);
  const worst = deciding.reduce<(typeof sized)[number] | undefined>(
    (a, b) => (a && roomOf(a) <= roomOf(b) ? a : b),
    undefined,
  );
  return {
    place: place.id,
    characteristic: characteristic.name,
    ...(worst && { value: worst.size, expanded: worst.expanded ?? 0 }),
    ...(worst && verdict !== 'not yet known' && { conformance: worst.conformance ?? 0 }),
    ...(limits && { limits }),
    verdict,
    ...(limits &&
      verdict !== 'not yet known' && { asNew: sized.every(({ size }) => liesIn(size.value, limits.new)) }),
    cells,
    missing: cells.filter(({ size }) => !size).map(({ cell }) => cell),
  };
};

const judgeDerived = (sheet: Sheet, characteristic: Characteristic, place: Place): Judged => {
  const limits = limitsOf(sheet, characteristic.name);
  const base = { place: place.id, characteristic: characteristic.name, ...(limits && { limits }), cells: [] };
  const found = characteristic.derived
    ? evaluate(characteristic.derived, place, { engine: sheet.engine, sizeIn: (cell) => sizeIn(sheet, cell) })
    : undefined;
  if (found?.kind !== 'known') {
    return { ...base, verdict: 'not yet known', missing: onceEach(found?.cells ?? []) };
  }
  return {
    ...base,
    value: found.value,
    ...weigh(found.value, limits, sheet.conformance),
    ...(limits && { asNew: liesIn(found.value.value, limits.new) }),
    missing: [],
  };
};

const onceEach = (cells: readonly Cell[]): readonly Cell[] => [
  ...new Map(cells.map((cell) => [cellKey(cell), cell])).values(),
];

/** A sheet never changes: what was judged on it stays so. */
const judgements = new WeakMap<Sheet, Map<string, Judged>>();

/**
 * Verdict of a characteristic at a place.
 *
 * Measured: every two-point size must conform, so the worst one decides; as long as cells are missing it is
 * `not yet known`, unless one is already outside. Derived: worked out from its operands, and `not yet known`
 * until all of them are read.
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
  const known = sheet.engine.characteristics.get(characteristic);
  const at = sheet.engine.places.get(place);
  const judged: Judged =
    known && at?.kind === known.at
      ? (known.derived ? judgeDerived : judgeMeasured)(sheet, known, at)
      : { place, characteristic, verdict: 'not yet known', cells: [], missing: [] };
  kept.set(key, judged);
  return judged;
};

/** Every characteristic at each of its places, in the order of the engine type. */
export const judgeAll = (sheet: Sheet): readonly Judged[] =>
  [...sheet.engine.characteristics.values()].flatMap((characteristic) =>
    placesOf(sheet.engine, characteristic).map((place) => judge(sheet, characteristic.name, place.id)),
  );
