/** @module The value that a job has for a characteristic, as a sum takes it: which of its sizes, where, and read with what. */

import type { Characteristic, Place } from '../../engine/engine-type.ts';
import type { GivenInput, WhichSize } from '../../engine/operation-sum.ts';
import { bareFigure, bareSpread, figureText, shownIn } from '../../engine/shown-in.ts';
import { sizeInCell } from '../../measure/cell-size.ts';
import { evaluate, operandCells, operandPlace } from '../../measure/expression.ts';
import { greatest, least, withBias } from '../../measure/extreme.ts';
import { judge } from '../../measure/judge.ts';
import { type Cell, cellKey } from '../../measure/reading.ts';
import { cellsOf, placesOf } from '../../measure/scheme.ts';
import { combine, expanded, type Uncertain } from '../../quantity/uncertain.ts';
import { cellTitle } from '../cell-title.ts';
import type { OpenJob } from '../job.ts';
import { placesInQuestion } from '../scope.ts';

type FromReadings = Extract<GivenInput, { kind: 'characteristic' }>;

export type Measured =
  | { readonly kind: 'known'; readonly value: Uncertain; readonly from: string }
  /** What must be read first, in words. */
  | { readonly kind: 'missing'; readonly says: string; readonly remedy: string };

/** The most worn of several sizes, unless another is asked for. */
const whichOf = ({ wears }: Characteristic, of: WhichSize | undefined): WhichSize =>
  of ?? (wears === 'either' ? 'mean' : wears === 'smaller' ? 'least' : 'greatest');

const cellsBehind = (job: OpenJob, characteristic: Characteristic, place: Place): readonly Cell[] =>
  characteristic.derived
    ? operandCells(characteristic.derived, place, job.sheet.engine)
    : cellsOf(job.sheet.engine, characteristic.name, place.id);

/** The instruments of the readings that count in some cells, in words. */
export const readWith = (job: OpenJob, cells: readonly Cell[]): string => {
  const names = cells.flatMap((cell) => job.sheet.readings.get(cellKey(cell))?.at(-1)?.instrument ?? []);
  return [...new Set(names)].join(', ');
};

interface AtPlace {
  readonly value?: Uncertain;
  readonly missing: readonly Cell[];
}

const valueAt = (job: OpenJob, characteristic: Characteristic, of: WhichSize, place: Place): AtPlace => {
  const { engine } = job.sheet;
  if (characteristic.derived) {
    const { value, missing } = judge(job.sheet, characteristic.name, place.id);
    return { missing, ...(value && { value }) };
  }
  const sizeIn = (cell: Cell) => sizeInCell(job.sheet, cell);
  const found = evaluate({ kind: of, of: characteristic.name }, place, { engine, sizeIn });
  return found.kind === 'missing'
    ? { missing: found.cells }
    : { missing: [], value: withBias(found, `bias of ${place.id} ${characteristic.name}`) };
};

/** Where it is taken from: the place named, all of its kind, or the one that belongs to the place of the sum. */
const placesFor = (
  job: OpenJob,
  characteristic: Characteristic,
  { where }: FromReadings,
  place: Place | undefined,
): readonly Place[] => {
  const { engine } = job.sheet;
  const all = placesOf(engine, characteristic);
  if (all.length === 1) return all;
  if (where === 'all places') return placesInQuestion(job, characteristic);
  const id = where ? where.place : place && operandPlace(engine, place, characteristic.at);
  return all.filter((one) => one.id === id);
};

const overPlaces = (values: readonly Uncertain[], of: WhichSize, name: string): Uncertain | undefined => {
  const [only] = values;
  if (only === undefined || values.length === 1) return only;
  if (of === 'mean') return combine(values.map((value) => [1 / values.length, value] as const));
  return of === 'least' ? least(values, `least of all ${name}`) : greatest(values, `greatest of all ${name}`);
};

const fromWords = (
  job: OpenJob,
  characteristic: Characteristic,
  of: WhichSize,
  places: readonly Place[],
): string => {
  const cells = places.flatMap((place) => cellsBehind(job, characteristic, place));
  const [first] = places;
  const where = places.length === 1 ? first?.title : `${places.length} places`;
  const picked = characteristic.derived ? places.length : cells.length;
  return [
    where,
    characteristic.title,
    picked > 1 ? `${of} of ${picked}` : '',
    `${characteristic.derived ? 'worked out from readings' : 'read'} with ${readWith(job, cells)}`,
  ]
    .filter((part) => part !== '')
    .join(', ');
};

/** The value, or what must be read before there is one. */
export const measuredValue = (job: OpenJob, source: FromReadings, place: Place | undefined): Measured => {
  const { engine } = job.sheet;
  const characteristic = engine.characteristics.get(source.name);
  const places = characteristic ? placesFor(job, characteristic, source, place) : [];
  if (!characteristic || places.length === 0)
    return {
      kind: 'missing',
      says: `${characteristic?.title ?? source.name} is not found at this place`,
      remedy: 'correct the engine type',
    };
  const of = whichOf(characteristic, source.of);
  const found = places.map((at) => valueAt(job, characteristic, of, at));
  const values = found.flatMap(({ value, missing }) => (value && missing.length === 0 ? [value] : []));
  const value = values.length < places.length ? undefined : overPlaces(values, of, characteristic.name);
  if (value) return { kind: 'known', value, from: fromWords(job, characteristic, of, places) };
  const [cell] = found.flatMap(({ missing }) => missing);
  return {
    kind: 'missing',
    says: `${characteristic.title} is not yet measured`,
    remedy: cell ? `read ${cellTitle(engine, cell)}` : 'measure it',
  };
};

/** `54.972 ± 0.003 mm`: as a sum reads it, without ± where it is known exactly. */
export const valueWithSpread = (value: Uncertain, characteristic: Characteristic | undefined): string => {
  const shown = shownIn(characteristic);
  const half = expanded(value, 0.95);
  return half === 0
    ? figureText(value.value, shown)
    : `${bareFigure(value.value, shown)} ± ${bareSpread(half, shown)} ${shown.unit}`;
};
