/** @module Makes an offer of plans as they were solved: in the owner's words, with what the workshop says of itself. */
import type { Does, EngineType } from '../engine/engine-type.ts';
import { alreadyOrdered, optionsOf } from '../plan/options.ts';
import type { Option, Plan } from '../plan/plan-model.ts';
import { dayAfter } from '../quantity/day.ts';
import { formatFigure } from '../quantity/figure.ts';
import { labourCost } from '../quantity/money.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { Typed } from '../quantity/typed.ts';
import type { WorkshopSays } from '../register/workshop.ts';
import type { RequestOf } from './command.ts';
import type { OpenJob } from './job.ts';
import type { LabourLine, OfferedPlan } from './offer.ts';
import { oneUseLines } from './order/one-use-lines.ts';
import { choosePlan, planQuestionOf } from './planning.ts';
import { planNames } from './rules/offer.ts';

export interface PlanToOffer {
  /** What sets it apart: `longest life`. */
  readonly title: string;
  readonly plan: Plan;
  /** Charged at the workshop's rate, beside its fixed lines. */
  readonly labourHours?: Typed;
}

/** What comes with the command, since nothing here knows the time or makes anything up. */
export interface OfferGiven {
  readonly at: string;
  readonly token: string;
  /** Else as the workshop says. */
  readonly validDays?: number;
}

const sized = (words: string, size: string): string =>
  size === 'standard' ? words : `${words}, size ${size}`;

const whatIsDone = (does: Does, size: string): string => {
  switch (does) {
    case 'put back':
      return 'goes back as it is';
    case 'machine':
      return sized('machined', size);
    case 'sleeve':
      return sized('sleeved', size);
    case 'build up':
      return sized('built up and machined', size);
    case 'replace':
      return sized('new', size);
    case 'exchange':
      return sized('exchanged for a reconditioned one', size);
    default:
      return does satisfies never;
  }
};

const putBack = 'put back: ';

/** Why it may go back; else why it may not; else how long it would last, or that it goes with another. */
const whyItIsDone = (plan: Plan, { slot, does, reason }: Option, open: readonly Option[]): string => {
  if (does === 'put back') return reason;
  const bars = plan.barred.filter((one) => one.slot === slot && one.says.startsWith(putBack));
  if (bars.length > 0) return bars.map(({ says }) => says.slice(putBack.length)).join('; ');
  const kept = open.find((one) => one.slot === slot && one.does === 'put back');
  return kept !== undefined && kept.hours < plan.hours
    ? `kept, it can be counted on for ${formatFigure(kept.hours, 0)} h`
    : 'goes with what is renewed beside it';
};

/** `big-end.2` as the owner reads it. */
const placesNamed = ({ places }: EngineType, says: string): string =>
  says.replace(/[a-z][a-z0-9-]*\.\d+/g, (id) => places.get(id)?.title ?? id);

const labourOf = (
  { labour, labourRate: rate }: WorkshopSays,
  { title, labourHours: hours }: PlanToOffer,
): Answer<readonly LabourLine[]> => {
  if (hours === undefined) return answer(labour);
  const where = `offer, ${title}`;
  if (rate === undefined)
    return refuse('the workshop has no labour rate', where, 'set one, or leave the hours out');
  const cents = labourCost(hours, rate);
  return cents.kind === 'refused'
    ? { ...cents, refusal: { ...cents.refusal, where } }
    : answer([...labour, { says: 'labour', cents: cents.value, hours, rate }]);
};

const offered = (
  job: OpenJob,
  open: readonly Option[],
  workshop: WorkshopSays,
  asked: PlanToOffer,
  name: string,
): Answer<OfferedPlan> => {
  const { choices, cents, days, hours } = choosePlan(asked.plan);
  const labour = labourOf(workshop, asked);
  if (labour.kind === 'refused') return labour;
  const told = asked.plan.choices.map((option) => ({
    what: whatIsDone(option.does, option.size),
    why: [
      ...(option.reason.startsWith(alreadyOrdered) ? [alreadyOrdered] : []),
      placesNamed(job.sheet.engine, whyItIsDone(asked.plan, option, open)),
    ].join('; '),
  }));
  return answer({
    name,
    title: asked.title.trim(),
    choices: choices.map((choice, at) => ({ ...choice, ...(told[at] ?? { what: choice.says, why: '' }) })),
    cents,
    days,
    hours,
    labour: labour.value,
    oneUse: oneUseLines(job, choices),
  });
};

/** The request that makes the next offer of a job; refuses hours that cannot be charged. */
export const makeOffer = (
  job: OpenJob,
  workshop: WorkshopSays,
  plans: readonly PlanToOffer[],
  { at, token, validDays }: OfferGiven,
): Answer<RequestOf<'make offer'>> => {
  const { options: open } = optionsOf(planQuestionOf(job));
  const all: OfferedPlan[] = [];
  for (const [index, asked] of plans.entries()) {
    const plan = offered(job, open, workshop, asked, planNames[index] ?? '');
    if (plan.kind === 'refused') return plan;
    all.push(plan.value);
  }
  return answer({
    kind: 'make offer',
    number: job.offers.length + 1,
    shop: { name: workshop.name, address: workshop.address },
    plans: all,
    taxes: workshop.taxes,
    currency: job.booked.currency,
    validUntil: dayAfter(at, validDays ?? workshop.validDays),
    terms: workshop.terms,
    token,
  });
};
