/** @module Plans put into the offer that is being made, kept for as long as this page lives. */
import { useState } from 'react';
import { sameChoices } from '../../job/offer.ts';
import type { PlanToOffer } from '../../job/offering.ts';
import { choosePlan } from '../../job/planning.ts';
import { planNames } from '../../job/rules/offer.ts';
import type { Plan } from '../../plan/plan-model.ts';
import { type Answer, answer } from '../../quantity/refusal.ts';
import { readTyped } from '../../quantity/typed.ts';

export interface Drafted {
  readonly plan: Plan;
  readonly title: string;
  /** Hours of labour as typed; none where it is left empty. */
  readonly labour: string;
}

export type Draft = readonly Drafted[];

const drafts = new Map<string, Draft>();

export const useDraft = (job: string): readonly [Draft, (draft: Draft) => void] => {
  const [draft, setDraft] = useState<Draft>(() => drafts.get(job) ?? []);
  return [
    draft,
    (next) => {
      drafts.set(job, next);
      setDraft(next);
    },
  ];
};

/** Whether one more plan, and this one, may be put in. */
export const takes = (draft: Draft, plan: Plan): boolean =>
  draft.length < planNames.length &&
  draft.every((one) => !sameChoices(choosePlan(one.plan).choices, choosePlan(plan).choices));

export const withPlan = (draft: Draft, plan: Plan): Draft => [
  ...draft,
  {
    plan,
    title: draft.length === 0 ? 'as wanted' : `ready in ${plan.days} days`,
    labour: '',
  },
];

/** As it is offered; refuses hours of labour that cannot be read. */
export const toOffer = ({ plan, title, labour }: Drafted): Answer<PlanToOffer> => {
  if (labour.trim() === '') return answer({ plan, title });
  const hours = readTyped(/[a-z]/i.test(labour) ? labour : `${labour} h`, 'time');
  return hours.kind === 'refused'
    ? { ...hours, refusal: { ...hours.refusal, where: `hours of labour, ${title}` } }
    : answer({ plan, title, labourHours: hours.value });
};
