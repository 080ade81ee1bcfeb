/** @module Why no plan exists: a set of demands and rules of which none can be left out of the conflict. */
import { lpText, type Model } from './model.ts';
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

/**
 * Drops one rule or demand after the other and keeps only those without which a plan would exist.
 *
 * Rules of the engine are tried first, so that what is left names demands wherever they take part.
 */
const irreducible = async (model: Model, solve: Solve): Promise<readonly string[]> => {
  let rows = model.rows;
  for (const stands of new Set(model.rows.map((row) => row.stands))) {
    if (stands === '') continue;
    const without = rows.filter((row) => row.stands !== stands);
    const { status } = await solve(lpText({ ...model, rows: without }, []));
    if (status === 'infeasible') rows = without;
  }
  return [...new Set(rows.map(({ stands }) => stands))].filter((stands) => stands !== '');
};

export const conflictOf = async (
  title: string,
  slots: readonly Slot[],
  model: Model,
  barred: readonly Barred[],
  solve: Solve,
): Promise<Conflict> => {
  const demands = (await irreducible(model, solve)).map((stands) => {
    const slot = slots.find((each) => stands === `${each.title} must be settled`);
    return slot ? `${stands}: ${openWords(slot, model.options, barred)}` : stands;
  });
  return {
    kind: 'conflict',
    what: 'no plan satisfies all of this together',
    where: title,
    remedy: 'let go of one of them, or add an offer that helps',
    demands,
  };
};
