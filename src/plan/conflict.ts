/** @module Why no plan exists: the fewest demands and rules that cannot be kept together, in words. */
import { conflictSet, type Together } from './conflict-set.ts';
import type { Effort } from './effort.ts';
import { anyPlan } from './finder.ts';
import type { Model } from './model.ts';
import type { Barred, Conflict, Option, Solve } from './plan-model.ts';
import type { Slot } from './slot.ts';

/** What is open for a slot, so that its part in a conflict can be understood. */
const openWords = (slot: Slot, options: readonly Option[], barred: readonly Barred[]): string => {
  const own = options.filter((option) => option.slot === slot.name);
  const shut = barred.filter((each) => each.slot === slot.name).map(({ says }) => says);
  const longest = Math.max(0, ...own.map(({ hours }) => hours));
  const soonest = Math.min(Number.POSITIVE_INFINITY, ...own.map(({ days }) => days));
  const open =
    own.length === 0
      ? 'nothing can be done with it'
      : `the longest lasting option gives ${Math.floor(longest)} h, the soonest takes ${soonest} days`;
  return shut.length === 0 ? open : `${open}; not open: ${shut.join('; ')}`;
};

/** @returns the conflict, the smallest where that is found in the time allowed; undefined where it was stopped */
export const conflictOf = async (
  title: string,
  slots: readonly Slot[],
  model: Model,
  barred: readonly Barred[],
  solve: Solve,
  effort: Effort = {},
): Promise<Conflict | undefined> => {
  const together: Together = async (rules) => {
    const kept = new Set(['', ...rules]);
    const rows = model.rows.filter(({ stands }) => kept.has(stands));
    const open = await anyPlan(slots, { ...model, rows }, solve, effort);
    return open === 'stopped' ? undefined : open;
  };
  // Rules of the engine stand before demands, so that what is named is demands wherever they take part.
  const rules = [...new Set(model.rows.map(({ stands }) => stands))].filter((stands) => stands !== '');
  const found = await conflictSet(rules, together);
  return (
    found && {
      kind: 'conflict',
      what: 'no plan satisfies all of this together',
      where: title,
      remedy: 'let go of one of them, or add an offer that helps',
      demands: found.map((stands) => {
        const slot = slots.find((each) => stands === `${each.title} must be settled`);
        return slot ? `${stands}: ${openWords(slot, model.options, barred)}` : stands;
      }),
    }
  );
};
