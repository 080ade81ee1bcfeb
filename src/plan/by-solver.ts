/** @module Best plans by a general solver of mixed-integer programs: one model a stage, each keeping what is reached. */
import type { FindBest, Open } from './best.ts';
import { costTerms, lpText, type Model, newPartTerms } from './model.ts';
import type { LinearAnswer, Option, Solve } from './plan-model.ts';
import { columnsWhere, daysColumn, optionColumn, type Row, type Terms } from './row.ts';
import type { Slot } from './slot.ts';

/** Ranks are joined into one number up to this, so that a solver's tolerance cannot blur them. */
const greatestRank = 1e6;

/** Undefined where the solver was stopped by its limit of time; a model known to have a plan must not lose it. */
const optimal = (answer: LinearAnswer, model: Model): LinearAnswer | undefined => {
  if (answer.status === 'stopped') return undefined;
  if (answer.status === 'infeasible') throw new Error('the solver lost a plan that it had found');
  const lacking = model.options.findIndex((_, index) => answer.columns[optionColumn(index)] === undefined);
  if (lacking >= 0) throw new Error(`the solver left out ${optionColumn(lacking)}`);
  return answer;
};

const atMost = (terms: Terms, bound: number): Row => ({ stands: '', terms, relation: '<=', bound });

const chosenBy = ({ columns }: LinearAnswer, { options }: Model): readonly Option[] =>
  options.filter((_, index) => (columns[optionColumn(index)] ?? 0) > 0.5);

/** Slots in turn, as many at once as their ranks can be joined into one exact number. */
const rankTerms = (slots: readonly Slot[], { options }: Model): readonly Terms[] => {
  const groups: Terms[] = [];
  let terms: (readonly [number, string])[] = [];
  let weight = 1;
  // Back to front: the first slot of a group weighs most.
  for (const slot of slots.toReversed()) {
    const own = options.flatMap((option, index) => (option.slot === slot.name ? [optionColumn(index)] : []));
    if (weight * own.length > greatestRank) {
      groups.push(terms);
      terms = [];
      weight = 1;
    }
    const factor = weight;
    terms.push(...own.map((column, rank) => [rank * factor, column] as const));
    weight *= Math.max(1, own.length);
  }
  return [...groups, terms].toReversed();
};

/** No option that is not open. */
const openRow = ({ options }: Model, open: Open): Row => ({
  stands: '',
  terms: columnsWhere(options, (option) => !open(option)),
  relation: '=',
  bound: 0,
});

/**
 * Best plans by a general solver, proved at each stage.
 *
 * Each stage keeps what the ones before have reached. Costs, days to a quarter and counts of parts are held with a
 * margin far below their smallest step and above the solver's tolerance.
 */
export const bySolver = (slots: readonly Slot[], model: Model, solve: Solve): FindBest => {
  const cost = costTerms(model);
  const daysTerms: Terms = [[1, daysColumn]];
  return async (open) => {
    let held: readonly Row[] = [...model.rows, openRow(model, open)];
    const first = await solve(lpText({ ...model, rows: held }, cost));
    if (first.status === 'infeasible') return 'no plan';
    let last = optimal(first, model);
    if (!last) return 'stopped';
    const cents = Math.round(last.objective);
    held = [...held, atMost(cost, cents + 0.5)];
    for (const terms of [daysTerms, newPartTerms(model), ...rankTerms(slots, model)]) {
      last = optimal(await solve(lpText({ ...model, rows: held }, terms)), model);
      if (!last) return 'stopped';
      const reached =
        terms === daysTerms ? Math.max(0, last.objective) + 1e-4 : Math.round(last.objective) + 0.5;
      held = [...held, atMost(terms, reached)];
    }
    return { kind: 'best', chosen: chosenBy(last, model), cents, provedBy: 'solver' };
  };
};

/** Whether the rules leave any plan at all. */
export const anyBySolver = async (model: Model, solve: Solve): Promise<boolean | 'stopped'> => {
  const { status } = await solve(lpText(model, []));
  return status === 'stopped' ? status : status === 'optimal';
};
