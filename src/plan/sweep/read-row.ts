/** @module What a row of the plan's model says: over options alone, the use of a set-up, the days, or the cost. */
import type { Model } from '../model.ts';
import { daysColumn, type Row } from '../row.ts';

export type Bounded = Pick<Row, 'relation' | 'bound'>;

/** Factor of each option in each slot that takes part. */
export type BySlot = ReadonlyMap<number, ReadonlyMap<number, number>>;

export type RowRead =
  | (Bounded & { readonly kind: 'options'; readonly bySlot: BySlot })
  | { readonly kind: 'uses'; readonly setUp: number; readonly options: readonly number[] }
  | { readonly kind: 'rivals'; readonly setUps: readonly [number, number] }
  | { readonly kind: 'days'; readonly bound: number }
  | { readonly kind: 'cost'; readonly bound: number }
  | { readonly kind: 'tie' };

/** Sums of factors as written: far below any step of them, above what binary fractions lose. */
const tolerance = 1e-6;

export const holds = (sum: number, { relation, bound }: Bounded): boolean => {
  switch (relation) {
    case '=':
      return Math.abs(sum - bound) <= tolerance;
    case '<=':
      return sum <= bound + tolerance;
    case '>=':
      return sum >= bound - tolerance;
    default:
      return relation satisfies never;
  }
};

interface Factors {
  readonly options: Map<number, number>;
  readonly setUps: Map<number, number>;
  /** Of what is bought by the piece: `bulk_count`. */
  readonly counts: Map<string, number>;
  days: number;
}

/** Factors by column; undefined where a column is none that the sweep knows. */
const factorsIn = ({ terms }: Row): Factors | undefined => {
  const factors: Factors = { options: new Map(), setUps: new Map(), counts: new Map(), days: 0 };
  for (const [factor, column] of terms) {
    const name = column.slice(1);
    const index = Number(name);
    if (column === daysColumn) factors.days += factor;
    else if (column.startsWith('q')) factors.counts.set(name, factor);
    else if (column.startsWith('x')) factors.options.set(index, (factors.options.get(index) ?? 0) + factor);
    else if (column.startsWith('s')) factors.setUps.set(index, (factors.setUps.get(index) ?? 0) + factor);
    else return undefined;
  }
  for (const own of [factors.options, factors.setUps])
    for (const [index, factor] of own) if (factor === 0) own.delete(index);
  return factors;
};

const ofOneSlot = (options: Iterable<number>, at: readonly number[]): boolean =>
  new Set([...options].map((option) => at[option])).size === 1;

const daysRow = (
  { options, setUps, counts, days }: Factors,
  row: Row,
  model: Model,
  at: readonly number[],
) => {
  if (setUps.size + counts.size > 0 || row.relation !== '<=') return undefined;
  if (options.size === 0 && days === 1) return { kind: 'days', bound: row.bound } as const;
  const tied =
    days === -1 &&
    row.bound === 0 &&
    ofOneSlot(options.keys(), at) &&
    [...options].every(([option, factor]) => model.options[option]?.days === factor);
  return tied ? ({ kind: 'tie' } as const) : undefined;
};

const isCost = ({ options, setUps, counts }: Factors, { relation }: Row, model: Model): boolean =>
  relation === '<=' &&
  model.bulk.every(({ columns, cents }, at) =>
    columns.every((_, index) => (counts.get(`${at}_${index + 1}`) ?? 0) === (cents[index + 1] ?? 0)),
  ) &&
  model.options.every(({ cents }, index) => (options.get(index) ?? 0) === cents) &&
  model.setUps.every(({ cents }, index) => (setUps.get(index) ?? 0) === cents);

const usesRow = ({ options, setUps }: Factors, row: Row, at: readonly number[]): RowRead | undefined => {
  const [setUp] = setUps;
  return setUp?.[1] === -1 &&
    setUps.size === 1 &&
    row.relation === '<=' &&
    row.bound === 0 &&
    [...options.values()].every((factor) => factor === 1) &&
    ofOneSlot(options.keys(), at)
    ? { kind: 'uses', setUp: setUp[0], options: [...options.keys()] }
    : undefined;
};

/** Two that are not used both. */
const rivalsRow = ({ options, setUps }: Factors, { relation, bound }: Row): RowRead | undefined => {
  const [one, other, ...more] = setUps;
  return one?.[1] === 1 &&
    other?.[1] === 1 &&
    more.length + options.size === 0 &&
    relation === '<=' &&
    bound === 1
    ? { kind: 'rivals', setUps: [one[0], other[0]] }
    : undefined;
};

/**
 * @param at  slot of each option
 * @returns undefined where the row has another form
 */
export const readRow = (row: Row, model: Model, at: readonly number[]): RowRead | undefined => {
  const factors = factorsIn(row);
  if (!factors) return undefined;
  if (factors.days !== 0) return daysRow(factors, row, model, at);
  if (isCost(factors, row, model)) return { kind: 'cost', bound: row.bound };
  if (factors.counts.size > 0) return undefined;
  if (factors.setUps.size > 0) return rivalsRow(factors, row) ?? usesRow(factors, row, at);
  const bySlot = new Map<number, Map<number, number>>();
  for (const [option, factor] of factors.options) {
    const slot = at[option] ?? -1;
    const own = bySlot.get(slot) ?? new Map<number, number>();
    bySlot.set(slot, own.set(option, factor));
  }
  return { kind: 'options', relation: row.relation, bound: row.bound, bySlot };
};
