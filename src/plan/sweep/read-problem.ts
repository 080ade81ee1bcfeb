/** @module Reads the plan's model for the sweep, or says that a row is of a form that the sweep does not know. */
import type { Model } from '../model.ts';
import type { Slot } from '../slot.ts';
import type { Choice, Problem, Summed } from './problem.ts';
import { holds, readRow } from './read-row.ts';
import { rivalsAmong } from './rivals.ts';
import { type WideRow, wideRows, withinRow } from './wide-row.ts';

const nothing: Choice = { option: -1, cents: 0, newParts: 0, days: 0 };

const choicesOf = (slots: readonly Slot[], { options }: Model): Choice[][] => {
  const at = new Map(slots.map(({ name }, index) => [name, index]));
  const choices: Choice[][] = slots.map(() => [nothing]);
  for (const [option, { slot, cents, newParts, days }] of options.entries())
    choices[at.get(slot) ?? -1]?.push({ option, cents, newParts, days });
  return choices;
};

/** What is shared among options: each of them puts one in. */
const among = (
  columns: Iterable<number>,
  at: readonly number[],
  slots: Problem['slots'],
  terms: Pick<Summed, 'kind' | 'cents'>,
): Summed => {
  const taken = new Set(columns);
  const from = new Set([...taken].map((option) => at[option] ?? -1));
  return {
    ...terms,
    from: new Map(
      [...from].map((slot) => [slot, (slots[slot] ?? []).map(({ option }) => (taken.has(option) ? 1 : 0))]),
    ),
    relation: '>=',
    bound: 0,
  };
};

interface Gathered {
  cap: number;
  days: number;
  readonly one: WideRow[];
  readonly wide: WideRow[];
  readonly users: readonly Set<number>[];
  readonly rivals: (readonly [number, number])[];
}

/** Rows by what they mean to the sweep; undefined where one has a form that it does not know. */
const gathered = (model: Model, at: readonly number[]): Gathered | 'impossible' | undefined => {
  const found: Gathered = {
    cap: Number.POSITIVE_INFINITY,
    days: Number.POSITIVE_INFINITY,
    one: [],
    wide: [],
    users: model.setUps.map(() => new Set<number>()),
    rivals: [],
  };
  let possible = true;
  for (const row of model.rows) {
    const read = readRow(row, model, at);
    switch (read?.kind) {
      case undefined:
        return undefined;
      case 'cost':
        found.cap = Math.min(found.cap, read.bound);
        break;
      case 'days':
        found.days = Math.min(found.days, read.bound);
        break;
      case 'uses':
        for (const option of read.options) found.users[read.setUp]?.add(option);
        break;
      case 'rivals':
        found.rivals.push(read.setUps);
        break;
      case 'options':
        if (read.bySlot.size === 0) possible &&= holds(0, read);
        else (read.bySlot.size === 1 ? found.one : found.wide).push(read);
        break;
      case 'tie':
        break;
      default:
        return read satisfies never;
    }
  }
  return possible ? found : 'impossible';
};

/**
 * Reads the model for the sweep.
 *
 * @returns undefined where a row has a form that the sweep does not know; 'impossible' where some slot has nothing
 *   that it may choose, or a rule that touches no slot cannot be kept
 */
export const problemOf = (slots: readonly Slot[], model: Model): Problem | 'impossible' | undefined => {
  const slotOf = new Map(slots.map(({ name }, index) => [name, index]));
  const at = model.options.map(({ slot }) => slotOf.get(slot) ?? -1);
  if (at.includes(-1)) return undefined;
  const rows = gathered(model, at);
  if (rows === undefined || rows === 'impossible') return rows;
  const { cap, days, one, wide, users, rivals } = rows;
  let choices: readonly (readonly Choice[])[] = choicesOf(slots, model).map((own) =>
    own.filter((choice) => choice.days <= days),
  );
  for (const row of [...one, ...wide]) choices = withinRow(choices, row);
  if (choices.some(({ length }) => length === 0)) return 'impossible';
  const left = wideRows(choices, wide);
  if (left === 'impossible') return left;
  const { pairs, sums } = left;
  const bought = model.bulk.map(({ columns }) => columns.map((column) => Number(column.slice(1))));
  return {
    slots: choices,
    pairs,
    shared: [
      ...sums,
      ...rivalsAmong(rivals, users, at, choices),
      ...model.setUps.flatMap(({ cents }, index) =>
        cents === 0 ? [] : [among(users[index] ?? [], at, choices, { kind: 'set-up', cents: [cents] })],
      ),
      ...model.bulk.map(({ cents }, index) =>
        among(bought[index] ?? [], at, choices, { kind: 'count', cents }),
      ),
    ],
    cap,
  };
};
