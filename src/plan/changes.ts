/** @module Plans side by side: each told against the earlier one that it is most like. */
import type { EngineType } from '../engine/engine-type.ts';
import { type Difference, differenceOf } from './difference.ts';
import type { Plan } from './plan-model.ts';

export interface Step extends Difference {
  /** Index of the plan that it is told against. */
  readonly against: number;
}

const changed = (one: Plan, other: Plan): number => {
  const ids = new Set(one.choices.map(({ id }) => id));
  return other.choices.filter(({ id }) => !ids.has(id)).length;
};

/**
 * What changes to each plan but the first, from the one before it that differs in fewest choices, so that the words
 * are few; of several such from the last.
 */
export const changesAlong = (engine: EngineType, plans: readonly Plan[]): readonly Step[] =>
  plans.slice(1).flatMap((plan, index) => {
    const before = plans.slice(0, index + 1).map((other) => changed(other, plan));
    const against = before.lastIndexOf(Math.min(...before));
    const from = plans[against];
    return from ? [{ against, ...differenceOf(engine, from, plan) }] : [];
  });
