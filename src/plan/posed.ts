/** @module A question posed: its options and model, what finds plans of it, and what is told where there is none. */
import type { Best, FindBest } from './best.ts';
import { conflictOf } from './conflict.ts';
import { besideOptions } from './cost.ts';
import { type Effort, stoppedAt } from './effort.ts';
import { finderOf } from './finder.ts';
import { fitRows, hoursTogether } from './fit-rows.ts';
import { modelOf } from './model.ts';
import { optionsOf } from './options.ts';
import type { Conflict, NotYet, Option, Plan, Solve, Stopped } from './plan-model.ts';
import type { PlanQuestion } from './question.ts';
import { slotsIn } from './unopened.ts';

export interface Posed {
  readonly kind: 'posed';
  readonly options: readonly Option[];
  /** All the hours that a plan may last, fewest first. */
  readonly lives: readonly number[];
  readonly find: FindBest;
  /** Finds plans that last so many hours. */
  readonly lasting: (hours: number) => FindBest;
  /** What a combination comes to. */
  readonly planOf: (best: Best) => Plan;
  /** Told instead of plans where there is none, or where the work was stopped. */
  readonly without: (found: 'no plan' | 'stopped') => Promise<Conflict | Stopped>;
}

export const posed = (question: PlanQuestion, solve: Solve, effort: Effort): Posed | NotYet => {
  const { engine } = question.sheet;
  const { options, barred, missing } = optionsOf(question);
  if (missing.length > 0) return { kind: 'not yet', missing };
  const slots = slotsIn(question);
  const model = modelOf(engine, slots, options, question.demands);
  const find = finderOf(slots, model, solve, effort);
  const fits = options.flatMap(({ fits: own = [] }) => own.map(({ hours }) => hours));
  const lives = [...new Set([...options.map(({ hours }) => hours), ...fits])].sort((a, b) => a - b);
  // Where there is nothing to decide, the one plan promises nothing.
  if (slots.length === 0) lives.push(0);
  /** Fits that wear out sooner are ruled out by rows; without any, options alone tell how long a plan lasts. */
  const known = new Map([[0, find]]);
  const findLasting = (hours: number): FindBest => {
    const sooner = fits.filter((each) => each > 0 && each < hours).length;
    const rows = [...model.rows, ...fitRows(options, hours)];
    const found = known.get(sooner) ?? finderOf(slots, { ...model, rows }, solve, effort);
    known.set(sooner, found);
    return found;
  };
  return {
    kind: 'posed',
    options,
    find,
    lives,
    lasting: (hours) => {
      const findSuch = findLasting(hours);
      return (open) => findSuch((option) => option.hours >= hours && open(option));
    },
    planOf: ({ chosen, cents, provedBy }) => ({
      kind: 'plan',
      choices: chosen,
      barred,
      setUps: besideOptions(chosen),
      cents,
      days: Math.max(0, ...chosen.map(({ days }) => days)),
      hours: hoursTogether(chosen),
      newParts: chosen.reduce((sum, { newParts }) => sum + newParts, 0),
      bound: cents,
      provedBy,
    }),
    without: async (found) => {
      const conflict =
        found === 'no plan' && (await conflictOf(engine.title, slots, model, barred, solve, effort));
      return conflict || stoppedAt(engine.title);
    },
  };
};
