/** @module The plan for the engine as a whole: the cheapest sound one, proved, or what stands in its way. */
import { type Best, everything } from './best.ts';
import { conflictOf } from './conflict.ts';
import { besideOptions } from './cost.ts';
import { type Effort, stoppedAt } from './effort.ts';
import { finderOf } from './finder.ts';
import { modelOf } from './model.ts';
import { optionsOf } from './options.ts';
import type { Barred, Plan, Planned, Solve } from './plan-model.ts';
import type { PlanQuestion } from './question.ts';
import { slotsOf } from './slot.ts';

/** What a proved combination comes to. */
const planOf = ({ chosen, cents, provedBy }: Best, barred: readonly Barred[]): Plan => ({
  kind: 'plan',
  choices: chosen,
  barred,
  setUps: besideOptions(chosen),
  cents,
  days: Math.max(0, ...chosen.map(({ days }) => days)),
  hours: Math.min(Number.POSITIVE_INFINITY, ...chosen.map(({ hours }) => hours)),
  newParts: chosen.reduce((sum, { newParts }) => sum + newParts, 0),
  bound: cents,
  provedBy,
});

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
  const { engine } = question.sheet;
  const { options, barred, missing } = optionsOf(question);
  if (missing.length > 0) return { kind: 'not yet', missing };
  const slots = slotsOf(engine);
  const model = modelOf(engine, slots, options, question.demands);
  const best = await finderOf(slots, model, solve, effort)(everything);
  if (best === 'no plan')
    return (await conflictOf(engine.title, slots, model, barred, solve, effort)) ?? stoppedAt(engine.title);
  return best === 'stopped' ? stoppedAt(engine.title) : planOf(best, barred);
};
