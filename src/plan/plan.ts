/** @module The plan for the engine as a whole: the cheapest sound one, proved, or what stands in its way. */
import { everything } from './best.ts';
import type { Effort } from './effort.ts';
import type { Planned, Solve } from './plan-model.ts';
import { posed } from './posed.ts';
import type { PlanQuestion } from './question.ts';

/**
 * Chooses one option for each component: least cost, then fewest days, then fewest new parts, then the first in
 * a stable order, so that the same job always gives the same plan.
 *
 * Every option is sound by itself (limits, clean-up, findings); couplings and demands hold for all together.
 * Suppliers work side by side: the days are those of the slowest. The engine lasts as long as its shortest part.
 *
 * @param question  measured engine, findings, hours run, demands
 * @param solve     a solver for mixed-integer programs that proves its optimum, asked where our own sweep is too wide
 * @param effort    who may stop it, and how wide the sweep may become
 * @returns the plan; or the conflict, none of whose members can be left out; or what must be measured first; or that
 *   the solver's time ran out, since a plan that is not proved is not shown
 */
export const planEngine = async (
  question: PlanQuestion,
  solve: Solve,
  effort: Effort = {},
): Promise<Planned> => {
  const asked = posed(question, solve, effort);
  if (asked.kind === 'not yet') return asked;
  const best = await asked.find(everything);
  return typeof best === 'string' ? asked.without(best) : asked.planOf(best);
};
