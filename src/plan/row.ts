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
/** Days until all is back. */
export const daysColumn = 't';
/** Options of a slot with their columns. */
export const columnsWhere = (
  options: readonly Option[],
  holds: (option: Option) => boolean,
  factor = 1,
): Terms =>
  options.flatMap((option, index) => (holds(option) ? [[factor, optionColumn(index)] as const] : []));
