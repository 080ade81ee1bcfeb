/** @module Several readings of one cell: which of them repeat one size, their mean, and how an instrument repeats. */

import { kindOf } from '../engine/instrument-kind.ts';
import { amountOf, resolutionOf } from '../quantity/typed.ts';
import { combine, type Term, type Uncertain } from '../quantity/uncertain.ts';
import type { Instrument } from './instrument.ts';
import { meanAndDeviation, pooledDeviation } from './mean-and-deviation.ts';
import type { Reading } from './reading.ts';
import type { Sheet } from './sheet.ts';
import { type Beside, type Spread, sizeOf, startingFreedom } from './size.ts';

type Readings = readonly Reading[];

/** Honest repeats differ by more once in some fifteen thousand pairs. */
const farthest = 4 * Math.SQRT2;

const starts = new WeakMap<Instrument, Spread>();

/** The register's starting value, the same object each time. */
const startOf = (instrument: Instrument): Spread => {
  const before = starts.get(instrument);
  if (before) return before;
  const amount = amountOf(instrument.repeatability, kindOf(instrument.kind).measures);
  const deviation = amount.kind === 'answer' ? Math.abs(amount.value) : 0;
  const start = { deviation, freedom: startingFreedom };
  starts.set(instrument, start);
  return start;
};

const figureOf = (reading: Reading, { kind }: Instrument): number => {
  const amount = amountOf(reading.typed, kindOf(kind).measures);
  return amount.kind === 'answer' ? amount.value : Number.NaN;
};

const sameHeat = (a: Reading, b: Reading): boolean =>
  a.temperature?.text === b.temperature?.text &&
  a.temperature?.unit === b.temperature?.unit &&
  a.instrumentTemperature?.text === b.instrumentTemperature?.text &&
  a.instrumentTemperature?.unit === b.instrumentTemperature?.unit;

/**
 * The readings of a cell that count: the last one, and those before it that repeat it.
 *
 * A reading repeats the last one where it was taken with the same instrument at the same temperatures and lies no
 * further from it than repeats do (4 √2 standard deviations of the register and one step of the figures). One that
 * lies further off was no repeat of the same size, and is replaced by the last; so is one with another instrument.
 * A reading struck out is not among the readings at all.
 *
 * @param readings    of one cell, oldest first
 * @param instrument  with which the last one was taken
 * @returns those that count, oldest first
 * @source  JCGM 100:2008, B.2.15 (repeatability: the same instrument, person, place); the bound is ours
 */
export const repeatsIn = (readings: Readings, instrument: Instrument): Readings => {
  const last = readings.at(-1);
  if (!last || readings.length === 1) return readings;
  const at = figureOf(last, instrument);
  const { deviation } = startOf(instrument);
  return readings.filter((reading) => {
    if (reading === last) return true;
    if (reading.instrument !== last.instrument || !sameHeat(reading, last)) return false;
    const step = Math.max(resolutionOf(reading.typed), resolutionOf(last.typed));
    return Math.abs(figureOf(reading, instrument) - at) <= (farthest * deviation + step) * (1 + 1e-9);
  });
};

interface Group extends Spread {
  readonly instrument: Instrument;
}

/** What one cell's repeats say of their instrument; kept, since a cell's readings are the same until one is added. */
const groups = new WeakMap<Readings, Group>();

const groupOf = (readings: Readings, instrument: Instrument): Spread => {
  const before = groups.get(readings);
  if (before?.instrument === instrument) return before;
  const { deviation, freedom } = meanAndDeviation(
    repeatsIn(readings, instrument).map((reading) => figureOf(reading, instrument)),
  );
  const group = { instrument, deviation, freedom: Number.isNaN(deviation) ? 0 : freedom };
  groups.set(readings, group);
  return group;
};

/** Cells read more than once, by the instrument that read them last. */
const repeated = new WeakMap<Sheet['readings'], ReadonlyMap<string, readonly Readings[]>>();

const repeatedCells = (readings: Sheet['readings']): ReadonlyMap<string, readonly Readings[]> => {
  const before = repeated.get(readings);
  if (before) return before;
  const more: Readings[] = [];
  for (const each of readings.values()) if (each.length > 1) more.push(each);
  const found = Map.groupBy(more, (each) => each.at(-1)?.instrument ?? '');
  repeated.set(readings, found);
  return found;
};

interface Pool {
  readonly instrument: Instrument;
  readonly spread: Spread;
}

const pools = new WeakMap<Sheet['readings'], Map<string, Pool>>();

/**
 * How an instrument repeats in this session: the register's starting value and the repeats of every cell, pooled.
 *
 * s² = (9 s₀² + Σ ν s²) / (9 + Σ ν), with as many degrees of freedom as stand below the line. The starting value
 * counts as ten repeats, so that two or three lucky repeats do not make an instrument better than it is.
 *
 * @param sheet       all readings of the session
 * @param instrument  of its register
 * @returns mm, with degrees of freedom; the register's own where nothing was repeated
 * @source  JCGM 100:2008, 4.2.4 and H.5.2.3 (pooling); ten repeats behind a starting value are common practice
 */
export const pooledSpread = (sheet: Sheet, instrument: Instrument): Spread => {
  const cells = repeatedCells(sheet.readings).get(instrument.name);
  const start = startOf(instrument);
  if (!cells) return start;
  const kept = pools.get(sheet.readings) ?? new Map<string, Pool>();
  pools.set(sheet.readings, kept);
  const before = kept.get(instrument.name);
  if (before?.instrument === instrument) return before.spread;
  const spread = pooledDeviation([start, ...cells.map((each) => groupOf(each, instrument))]);
  kept.set(instrument.name, { instrument, spread });
  return spread;
};

/** Whether every instrument repeats on both sheets alike, so that a cell read on both has the same size on both. */
export const repeatAlike = (before: Sheet, now: Sheet): boolean => {
  if (before.readings === now.readings && before.instruments === now.instruments) return true;
  const names = new Set([...repeatedCells(before.readings).keys(), ...repeatedCells(now.readings).keys()]);
  for (const name of names) {
    const [a, b] = [before, now].map((sheet) => {
      const instrument = sheet.instruments.get(name);
      return instrument && pooledSpread(sheet, instrument);
    });
    if (a?.deviation !== b?.deviation || a?.freedom !== b?.freedom) return false;
  }
  return true;
};

/**
 * Terms of a mean. Repeats average out, as one influence whose deviation is the pooled one; the rounding of the
 * figures does not, since readings of one size are rounded alike.
 */
const asOne = (
  terms: readonly Term[],
  last: Reading,
  { deviation, freedom }: Spread,
  count: number,
): readonly Term[] => {
  const halfSteps = Math.max(
    ...terms.filter(({ name }) => name.startsWith('resolution ')).map(({ share }) => share),
  );
  return terms.flatMap((term) => {
    if (term.name === `repeat ${last.id}`) {
      return [{ ...term, share: deviation / Math.sqrt(count), freedom }];
    }
    if (term.name === `resolution ${last.id}`) return [{ ...term, share: halfSteps * count }];
    return term.name.startsWith('repeat ') || term.name.startsWith('resolution ') ? [] : [term];
  });
};

/**
 * Size of a cell from all its readings that count: the mean of the repeats.
 *
 * Influences are those of one reading, with `repeat R` the pooled deviation over the root of how many there are and
 * `resolution R` that of one reading, R the last of them.
 *
 * @param readings    of the cell, oldest first
 * @param instrument  with which the last was taken
 * @param beside      masters, how the instrument repeats in this session, material of the part
 * @returns size in mm; undefined where there is no reading or a figure is no length
 * @source  JCGM 100:2008, 4.2.3 and H.5.2.5; F.2.2.1 for the rounding
 */
export const sizeOfRepeats = (
  readings: Readings,
  instrument: Instrument,
  beside: Beside & { readonly spread: Spread },
): Uncertain | undefined => {
  const repeats = repeatsIn(readings, instrument);
  const last = repeats.at(-1);
  const sizes = repeats.flatMap((reading) => {
    const size = sizeOf(reading, instrument, beside);
    return size.kind === 'answer' ? [size.value] : [];
  });
  const [only] = sizes;
  if (!last || sizes.length < repeats.length) return undefined;
  if (sizes.length === 1) return only;
  const mean = combine(sizes.map((size) => [1 / sizes.length, size] as const));
  return { value: mean.value, terms: asOne(mean.terms, last, beside.spread, sizes.length) };
};
