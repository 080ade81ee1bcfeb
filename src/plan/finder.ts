/** @module Best plans of a model: by the sweep where it is narrow enough, by the general solver otherwise. */
import { everything, type FindBest } from './best.ts';
import { anyBySolver, bySolver } from './by-solver.ts';
import type { Effort } from './effort.ts';
import type { Model } from './model.ts';
import type { Solve } from './plan-model.ts';
import type { Slot } from './slot.ts';
import { sweepModel } from './sweep/sweep-model.ts';

/** A model too wide once is too wide for good: the solver then answers everything asked of it. */
export const finderOf = (
  slots: readonly Slot[],
  model: Model,
  solve: Solve,
  { stop, widest }: Effort = {},
): FindBest => {
  let swept = sweepModel(slots, model, widest);
  const solved = bySolver(slots, model, solve);
  return async (open) => {
    if (stop?.()) return 'stopped';
    const found = swept?.(open) ?? 'too wide';
    if (found !== 'too wide') return found;
    swept = undefined;
    return solved(open);
  };
};

/** Whether the model leaves any plan at all. */
export const anyPlan = async (
  slots: readonly Slot[],
  model: Model,
  solve: Solve,
  { stop, widest }: Effort = {},
): Promise<boolean | 'stopped'> => {
  if (stop?.()) return 'stopped';
  const found = sweepModel(slots, model, widest)?.(everything) ?? 'too wide';
  return found === 'too wide' ? anyBySolver(model, solve) : found !== 'no plan';
};
