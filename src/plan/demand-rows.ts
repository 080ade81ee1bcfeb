/** @module Demands as rows, each with its words: hours, days and cost wanted, and what a person has fixed. */
import { formatFigure } from '../quantity/figure.ts';
import type { Demands, Option } from './plan-model.ts';
import { columnsIn, columnsWhere, daysColumn, type Row, type Terms } from './row.ts';
import type { Slot } from './slot.ts';

export const hoursDemand = (wanted: number): string => `hours wanted: ${formatFigure(wanted, 0)} h`;
export const daysDemand = (most: number): string => `ready in: ${formatFigure(most, 0)} days`;
export const costDemand = (cents: number): string => `cost at most: ${formatFigure(cents / 100, 2)}`;
export const withoutDemand = (supplier: string): string => `without ${supplier}`;
export const fixedDemand = (id: string): string => `decided by a person: ${id}`;

/** No option that lasts less; one row a slot, all standing for the one demand. */
const hoursRows = (slots: readonly Slot[], options: readonly Option[], wanted: number): readonly Row[] =>
  slots.flatMap(({ name }) => {
    const short = columnsIn(options, name, (option) => option.hours < wanted);
    return short.length > 0
      ? [{ stands: hoursDemand(wanted), terms: short, relation: '=', bound: 0 } as const]
      : [];
  });

export const demandRows = (
  slots: readonly Slot[],
  options: readonly Option[],
  { hours, days, cents, fixed = {}, withoutSuppliers = [] }: Demands,
  cost: Terms,
): readonly Row[] => [
  ...(hours === undefined ? [] : hoursRows(slots, options, hours)),
  ...(days === undefined
    ? []
    : [
        {
          stands: daysDemand(days),
          terms: [[1, daysColumn]],
          relation: '<=',
          bound: days,
        } as const,
      ]),
  // Half a hundredth of room: costs are whole, and the solver's own tolerance must not shut out the exact bound.
  ...(cents === undefined
    ? []
    : [
        {
          stands: costDemand(cents),
          terms: cost,
          relation: '<=',
          bound: cents + 0.5,
        } as const,
      ]),
  ...withoutSuppliers.map(
    (supplier): Row => ({
      stands: withoutDemand(supplier),
      terms: columnsWhere(options, (option) => option.supplier === supplier),
      relation: '=',
      bound: 0,
    }),
  ),
  ...Object.entries(fixed).map(
    ([slot, id]): Row => ({
      stands: fixedDemand(id),
      terms: columnsIn(options, slot, (option) => option.id === id),
      relation: '=',
      bound: 1,
    }),
  ),
];
