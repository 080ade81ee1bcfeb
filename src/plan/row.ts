/** @module Rows and columns of the plan's model, and what each row stands for in words. */
import type { Option } from './plan-model.ts';

export type Terms = readonly (readonly [factor: number, column: string])[];

/** A row with the demand or rule that it stands for, so that a conflict can be told in words. */
export interface Row {
  readonly stands: string;
  readonly terms: Terms;
  readonly relation: '=' | '<=' | '>=';
  readonly bound: number;
}

export const optionColumn = (index: number): string => `x${index}`;
export const setUpColumn = (index: number): string => `s${index}`;
/** Columns of what options use along with others, by name. */
export type SetUpColumns = ReadonlyMap<string, string>;
/** Of two columns one at most is taken. */
export const notBoth = (stands: string, one: string, other: string): Row => ({
  stands,
  terms: [
    [1, one],
    [1, other],
  ],
  relation: '<=',
  bound: 1,
});
/** Days until all is back. */
export const daysColumn = 't';
/** Options with their columns. */
export const columnsWhere = (
  options: readonly Option[],
  holds: (option: Option) => boolean,
  factor = 1,
): Terms =>
  options.flatMap((option, index) => (holds(option) ? [[factor, optionColumn(index)] as const] : []));

/** Where the options of each slot stand, kept as long as the options are. */
const kept = new WeakMap<readonly Option[], ReadonlyMap<string, readonly number[]>>();

/** Indices of the options of one slot. */
export const indicesIn = (options: readonly Option[], slot: string): readonly number[] => {
  const places = kept.get(options) ?? Map.groupBy(options.keys(), (index) => options[index]?.slot ?? '');
  kept.set(options, places);
  return places.get(slot) ?? [];
};

/** Options of one slot with their columns. */
export const columnsIn = (
  options: readonly Option[],
  slot: string,
  holds: (option: Option) => boolean,
  factor = 1,
): Terms =>
  indicesIn(options, slot).flatMap((index) => {
    const option = options[index];
    return option && holds(option) ? [[factor, optionColumn(index)] as const] : [];
  });
