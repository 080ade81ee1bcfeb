/** @module A characteristic at a place judged from the sizes in its cells, wherever those come from. */
import type { Bounds, Characteristic, Limits, Place } from '../engine/engine-type.ts';
import { effectiveFreedom, standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import { evaluate } from './expression.ts';
import { greatest, least, withBias } from './extreme.ts';
import { conformanceProbability } from './guard-band.ts';
import { jointConformance } from './joint-conformance.ts';
import { limitsOf } from './limits.ts';
import { type Cell, cellKey } from './reading.ts';
import { ruleOf, type Sheet } from './sheet.ts';
import type { Judged, JudgedCell, Verdict } from './verdict-model.ts';
import { liesIn, weigh } from './weigh.ts';

type SizedCell = JudgedCell & { readonly size: Uncertain };

const none: Bounds = {};

/** Room left to the nearer limit, mm; negative beyond it. Without limits, the more worn has less room. */
const room = (value: number, limits: Limits | undefined, wears: Characteristic['wears']): number => {
  const { least: low, greatest: high } = limits?.goesBack ?? none;
  if (low === undefined && high === undefined) return wears === 'smaller' ? value : -value;
  return Math.min(
    low === undefined ? Number.POSITIVE_INFINITY : value - low,
    high === undefined ? Number.POSITIVE_INFINITY : high - value,
  );
};

/** One cell outside settles it; else every cell must have been read, and the worst speaks for all. */
const verdictOfAll = (cells: readonly JudgedCell[]): Verdict => {
  const verdicts = new Set(cells.map(({ verdict }) => verdict));
  const order: readonly Verdict[] = ['outside', 'not yet known', 'unsure'];
  return order.find((verdict) => verdicts.has(verdict)) ?? (cells.length > 0 ? 'within' : 'not yet known');
};

/** The worst size as the extreme that it is: others that run it close may truly be worse. */
const asExtreme = (worst: SizedCell, sized: readonly SizedCell[]): Uncertain => {
  const sizes = sized.map(({ size }) => size);
  const whose = `${worst.cell.place} ${worst.cell.characteristic}`;
  const value = worst.size.value;
  if (sizes.every((size) => size.value >= value)) return least(sizes, `least of ${whose}`);
  if (sizes.every((size) => size.value <= value)) return greatest(sizes, `greatest of ${whose}`);
  return worst.size;
};

/**
 * A measured characteristic from its judged cells, in the order of the scheme.
 *
 * Within takes that all sizes conform together with the probability asked for, not each of them alone.
 */
export const judgementOfCells = (
  sheet: Sheet,
  characteristic: Characteristic,
  place: Place,
  cells: readonly JudgedCell[],
): Judged => {
  const limits = limitsOf(sheet, characteristic.name, place.id);
  const sized = cells.flatMap((cell): readonly SizedCell[] =>
    cell.size ? [{ ...cell, size: cell.size }] : [],
  );
  const byCells = verdictOfAll(cells);
  const roomOf = ({ size }: SizedCell) => room(size.value, limits, characteristic.wears);
  const deciding = sized.filter((cell) => byCells === 'not yet known' || cell.verdict === byCells);
  const worst = deciding.reduce<SizedCell | undefined>(
    (a, b) => (a && roomOf(a) <= roomOf(b) ? a : b),
    undefined,
  );
  const base = { place: place.id, characteristic: characteristic.name, ...(limits && { limits }), cells };
  const missing = cells.filter(({ size }) => !size).map(({ cell }) => cell);
  if (!worst) return { ...base, verdict: byCells, missing };
  const value = asExtreme(worst, sized);
  const joint = jointConformance(
    sized.map(({ size }) => size),
    limits?.goesBack ?? none,
  );
  const weighed = weigh(value, limits, ruleOf(sheet), joint);
  const settled = byCells !== 'not yet known';
  return {
    ...base,
    value,
    expanded: weighed.expanded,
    ...(settled && { conformance: joint }),
    verdict: byCells === 'within' ? weighed.verdict : byCells,
    ...(limits && settled && { asNew: sized.every(({ size }) => liesIn(size.value, limits.new)) }),
    missing,
  };
};

const onceEach = (cells: readonly Cell[]): readonly Cell[] => [
  ...new Map(cells.map((cell) => [cellKey(cell), cell])).values(),
];

/** Of a form over its own distribution; of other sums about what is expected of them, where extremes are among them. */
const conformanceOf = (
  { value, bias, atMost }: Extract<ReturnType<typeof evaluate>, { kind: 'known' }>,
  bounds: Bounds,
): number | undefined => {
  const { least: low, greatest: high } = bounds;
  if (atMost) {
    return Math.max(0, (high === undefined ? 1 : atMost(high)) - (low === undefined ? 0 : atMost(low)));
  }
  return bias === 0
    ? undefined
    : conformanceProbability(value.value + bias, standardUncertainty(value), effectiveFreedom(value), bounds);
};

/** A derived characteristic from the sizes in the cells of its operands. */
export const judgementOfSum = (
  sheet: Sheet,
  characteristic: Characteristic,
  place: Place,
  sizeIn: (cell: Cell) => Uncertain | undefined,
): Judged => {
  const limits = limitsOf(sheet, characteristic.name, place.id);
  const base = { place: place.id, characteristic: characteristic.name, ...(limits && { limits }), cells: [] };
  const found = characteristic.derived
    ? evaluate(characteristic.derived, place, { engine: sheet.engine, sizeIn })
    : undefined;
  if (found?.kind !== 'known') {
    return { ...base, verdict: 'not yet known', missing: onceEach(found?.cells ?? []) };
  }
  const value = withBias(found, `bias of ${place.id} ${characteristic.name}`);
  const joint = limits && conformanceOf(found, limits.goesBack);
  return {
    ...base,
    value,
    ...weigh(value, limits, ruleOf(sheet), joint),
    ...(limits && { asNew: liesIn(value.value, limits.new) }),
    missing: [],
  };
};
