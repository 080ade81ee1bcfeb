/** @module Alternatives: the other things that could be done for little more than the best plan costs. */
import { type Best, everything, type Open } from './best.ts';
import type { Effort } from './effort.ts';
import type { Conflict, NotYet, Option, Plan, Solve, Stopped } from './plan-model.ts';
import { posed } from './posed.ts';
import type { PlanQuestion } from './question.ts';

export interface Alternatives {
  readonly kind: 'alternatives';
  /** The best plan first, then the others in the order in which they would be chosen. */
  readonly plans: readonly Plan[];
  /** There are more within the margin than were asked for. */
  readonly more: boolean;
}

/** What is done, whoever supplies it: two plans that differ in suppliers alone are no alternatives to a fitter. */
const deedOf = ({ slot, does, size }: Option): string => `${slot}:${does}:${size}`;

/** What is already settled, and what is ruled out, in one share of all combinations. */
interface Share {
  readonly settled: ReadonlyMap<string, string>;
  readonly out: ReadonlySet<string>;
  readonly best: Best;
}

const openIn =
  ({ settled, out }: Pick<Share, 'settled' | 'out'>): Open =>
  (option) => {
    const deed = deedOf(option);
    return !out.has(deed) && (settled.get(option.slot) ?? deed) === deed;
  };

/** As plans are chosen: cost, days, new parts, then the order of the options. */
const rankOf = ({ cents, chosen }: Best, order: ReadonlyMap<string, number>): readonly number[] => [
  cents,
  Math.max(0, ...chosen.map(({ days }) => days)),
  chosen.reduce((sum, { newParts }) => sum + newParts, 0),
  ...chosen.map(({ id }) => order.get(id) ?? 0),
];

const compare = (one: readonly number[], other: readonly number[]): number => {
  const at = one.findIndex((value, place) => value !== other[place]);
  return at < 0 ? 0 : (one[at] ?? 0) - (other[at] ?? 0);
};

/**
 * The rest of a share without its best, in shares that do not overlap: the first slots do as the best does, the next
 * one does not.
 */
const rests = ({ settled, out, best }: Share): readonly Pick<Share, 'settled' | 'out'>[] => {
  const free = best.chosen.filter(({ slot }) => !settled.has(slot));
  return free.map((option, index) => ({
    settled: new Map([...settled, ...free.slice(0, index).map((each) => [each.slot, deedOf(each)] as const)]),
    out: new Set([...out, deedOf(option)]),
  }));
};

/**
 * Plans within a margin of the best that differ from one another in what is done somewhere: put back, machined or
 * renewed, and to which size. Of those that do the same the best stands for all.
 *
 * @param question     measured engine, findings, hours run, demands
 * @param marginCents  what one may cost more than the best
 * @param solve        asked where the sweep is too wide
 * @param most         plans at most, since places decided one by one can be varied in very many ways
 * @source E. L. Lawler, A procedure for computing the K best solutions (1972)
 */
export const alternativesOf = async (
  question: PlanQuestion,
  marginCents: number,
  solve: Solve,
  { most = 20, ...effort }: Effort & { readonly most?: number } = {},
): Promise<Alternatives | Conflict | NotYet | Stopped> => {
  const asked = posed(question, solve, effort);
  if (asked.kind === 'not yet') return asked;
  const first = await asked.find(everything);
  if (typeof first === 'string') return asked.without(first);
  const order = new Map(asked.options.map(({ id }, index) => [id, index]));
  let shares: readonly Share[] = [{ settled: new Map(), out: new Set(), best: first }];
  const plans: Plan[] = [];
  while (plans.length < most) {
    const [next, ...others] = shares;
    if (!next) break;
    plans.push(asked.planOf(next.best));
    const found: Share[] = [];
    for (const rest of rests(next)) {
      const best = await asked.find(openIn(rest));
      if (best === 'stopped') return asked.without(best);
      if (best !== 'no plan' && best.cents <= first.cents + marginCents) found.push({ ...rest, best });
    }
    shares = [...others, ...found].sort((a, b) => compare(rankOf(a.best, order), rankOf(b.best, order)));
    effort.progress?.(plans.length / most);
  }
  return { kind: 'alternatives', plans, more: shares.length > 0 };
};
