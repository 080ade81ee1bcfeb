/** @module Deciding for the engine as a whole: verdicts by component, the plan with its reasons, the owner's word. */
import { useState } from 'react';
import type { OpenJob } from '../../job/job.ts';
import { orderSteps } from '../../job/order/order-steps.ts';
import { scopeNow } from '../../job/scope-words.ts';
import type { Plan } from '../../plan/plan-model.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { takes, useDraft, withPlan } from '../offer/draft.ts';
import { NewOffer } from '../offer/new-offer.tsx';
import { makeIt } from '../offer/offer-actions.ts';
import { Offers } from '../offer/offers.tsx';
import { isWithOwner } from '../offer/with-owner.ts';
import { announce } from '../shell/announce.ts';
import { ThreeAnswers } from '../shell/three-answers.tsx';
import { Findings } from '../strip/findings.tsx';
import { Agreement } from './agreement.tsx';
import { ComponentVerdicts } from './component-verdicts.tsx';
import { chooseIt } from './decide-actions.ts';
import { PlanPart } from './plan-part.tsx';
import { money } from './plan-words.ts';

const whatNow = (job: OpenJob): string => {
  if (job.agreed) return orderSteps(job).left[0] ?? 'go on to Build';
  if (isWithOwner(job)) return `have the owner answer offer ${job.offers.length}`;
  return job.plan === undefined ? 'choose a plan' : 'have the owner agree';
};

const howItStands = (job: OpenJob): string => {
  if (job.agreed) return `${job.agreed.name} agreed`;
  if (isWithOwner(job)) return `offer ${job.offers.length} holds until ${job.offers.at(-1)?.validUntil}`;
  return job.plan ? `chosen: ${money(job.plan.cents, job.booked.currency)}` : 'not decided yet';
};

export const DecideSheet = () => {
  const job = useJob();
  const act = useAct();
  const [refusal, setRefusal] = useState<Refusal>();
  const [draft, setDraft] = useDraft(job.head.event?.job ?? '');
  const choose = (plan: Plan) => {
    const refused = act(chooseIt, plan);
    setRefusal(refused);
    if (!refused) announce('Plan chosen.');
  };
  return (
    <>
      <ThreeAnswers where={`deciding for ${scopeNow(job)}`} now={whatNow(job)} right={howItStands(job)} />
      <Agreement />
      <PlanPart
        onChoose={chooseIt.enabled(job) ? choose : undefined}
        offering={(plan) =>
          makeIt.enabled(job) && takes(draft, plan) ? () => setDraft(withPlan(draft, plan)) : undefined
        }
        refusal={refusal}
      />
      <NewOffer draft={draft} onDraft={setDraft} />
      <Offers />
      <ComponentVerdicts />
      <Findings />
    </>
  );
};
