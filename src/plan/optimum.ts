/** @module The one best plan: least cost, then fewest days, then fewest new parts, then a stable order. */
import { besideOptions } from './cost.ts';
import { costTerms, lpText, type Model, newPartTerms } from './model.ts';
import type { LinearAnswer, Option, SetUp, Solve } from './plan-model.ts';
import { daysColumn, optionColumn, type Row, type Terms } from './row.ts';
import type { Slot } from './slot.ts';

export interface Optimum {
  readonly chosen: readonly Option[];
  readonly setUps: readonly SetUp[];
  readonly cents: number;
}

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

/**
 * The optimum, proved at each stage, or why there is none.
 *
 * Each stage keeps what the ones before have reached. Costs, days to a quarter and counts of parts are held with a
 * margin far below their smallest step and above the solver's tolerance.
 */
export const optimumOf = async (
  slots: readonly Slot[],
  model: Model,
  solve: Solve,
): Promise<Optimum | 'no plan' | 'stopped'> => {
  const cost = costTerms(model);
  const first = await solve(lpText(model, cost));
  if (first.status === 'infeasible') return 'no plan';
  let last = optimal(first, model);
  if (!last) return 'stopped';
  const cents = Math.round(last.objective);
  let days = 0;
  let held = [...model.rows, atMost(cost, cents + 0.5)];
  const daysTerms: Terms = [[1, daysColumn]];
  for (const terms of [daysTerms, newPartTerms(model), ...rankTerms(slots, model)]) {
    last = optimal(await solve(lpText({ ...model, rows: held }, terms)), model);
    if (!last) return 'stopped';
    if (terms === daysTerms) days = Math.max(0, last.objective);
    held = [
      ...held,
      terms === daysTerms ? atMost(terms, days + 1e-4) : atMost(terms, Math.round(last.objective) + 0.5),
    ];
  }
  const chosen = chosenBy(last, model);
  return { chosen, setUps: besideOptions(chosen), cents };
};
