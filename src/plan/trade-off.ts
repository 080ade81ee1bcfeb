/** @module The trade-off: every plan that no other beats in cost, days and hours of life together. */
import type { Best } from './best.ts';
import type { Effort } from './effort.ts';
import type { Conflict, NotYet, Plan, Solve, Stopped } from './plan-model.ts';
import { type Posed, posed } from './posed.ts';
import type { PlanQuestion } from './question.ts';

export interface TradeOff {
  readonly kind: 'trade-off';
  /** Cheapest first; never empty. */
  readonly plans: readonly Plan[];
}

/** What one plan is held against another by. */
interface Worth {
  readonly cents: number;
  readonly days: number;
  readonly hours: number;
}

const isBeaten = (one: Worth, by: Worth): boolean =>
  by.cents <= one.cents &&
  by.days <= one.days &&
  by.hours >= one.hours &&
  (by.cents < one.cents || by.days < one.days || by.hours > one.hours);

/** The cheapest plan that lasts so long, then the cheapest that is sooner, and so on. */
const stairs = async ({ lasting, planOf }: Posed, hours: number): Promise<readonly Plan[] | 'stopped'> => {
  const plans: Plan[] = [];
  const find = lasting(hours);
  for (let days = Number.POSITIVE_INFINITY; ; ) {
    const limit = days;
    const best: Best | 'no plan' | 'stopped' = await find((option) => option.days < limit);
    if (best === 'stopped') return best;
    if (best === 'no plan') return plans;
    const plan = planOf(best);
    plans.push(plan);
    days = plan.days;
  }
};

/** Worths that none beats, each once, cheapest first, then soonest. */
const unbeaten = (found: readonly Worth[]): readonly Worth[] => {
  const kept = found.filter((one) => !found.some((other) => isBeaten(one, other)));
  const once = new Map(kept.map((one) => [`${one.cents} ${one.days} ${one.hours}`, one]));
  return [...once.values()].sort((a, b) => a.cents - b.cents || a.days - b.days || b.hours - a.hours);
};

/**
 * All plans that are not beaten: none costs no more, is ready no later and lasts no less, and is better in one of
 * these. Exact and complete: hours and days are those of some option or fit, so that every pair of them that can matter is
 * tried, the hours upwards, the days downwards. Of plans alike in all three it shows the one of fewest new parts,
 * then the first in order, as a plan alone would be.
 *
 * What the question demands holds for all of them.
 *
 * @param question  measured engine, findings, hours run, demands
 * @param solve     asked where the sweep is too wide
 * @param effort    told how far it is; may stop it
 */
export const tradeOffOf = async (
  question: PlanQuestion,
  solve: Solve,
  effort: Effort = {},
): Promise<TradeOff | Conflict | NotYet | Stopped> => {
  const asked = posed(question, solve, effort);
  if (asked.kind === 'not yet') return asked;
  const { lives } = asked;
  const found: Plan[] = [];
  // Where every plan of one step lasts longer still, the steps up to the shortest of them show the same plans.
  for (let life = lives[0]; life !== undefined; ) {
    const step = await stairs(asked, life);
    if (step === 'stopped') return asked.without(step);
    if (step.length === 0) break;
    found.push(...step);
    const shortest = Math.min(...step.map(({ hours }) => hours));
    life = lives.find((hours) => hours > shortest);
    effort.progress?.(life === undefined ? 1 : lives.indexOf(life) / lives.length);
  }
  if (found.length === 0) return asked.without('no plan');
  const plans: Plan[] = [];
  for (const { days, hours } of unbeaten(found)) {
    const best = await asked.lasting(hours)((option) => option.days <= days);
    if (best === 'stopped') return asked.without(best);
    if (best === 'no plan') throw new Error('a plan of the trade-off was lost');
    plans.push(asked.planOf(best));
  }
  effort.progress?.(1);
  return { kind: 'trade-off', plans };
};
