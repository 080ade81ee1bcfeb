/** @module Deciding for the engine as a whole: verdicts by component, the plan with its reasons, the owner's word. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { OpenJob } from '../../job/job.ts';
import { orderSteps } from '../../job/order/order-steps.ts';
import { demandsOf } from '../../job/planning.ts';
import type { Plan } from '../../plan/plan-model.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { type Draft, takes, useDraft, withPlan } from '../offer/draft.ts';
import { NewOffer } from '../offer/new-offer.tsx';
import { makeIt } from '../offer/offer-actions.ts';
import { Offers } from '../offer/offers.tsx';
import { isWithOwner } from '../offer/with-owner.ts';
import { announce } from '../shell/announce.ts';
import { Refused } from '../shell/refused.tsx';
import { ThreeAnswers } from '../shell/three-answers.tsx';
import { Findings } from '../strip/findings.tsx';
import { Agreement } from './agreement.tsx';
import { ComponentVerdicts } from './component-verdicts.tsx';
import { chooseIt } from './decide-actions.ts';
import { DemandsForm } from './demands-form.tsx';
import { PlanShown } from './plan-shown.tsx';
import { money } from './plan-words.ts';
import { type Planning, usePlan } from './use-plan.ts';

const PlanPart = ({
  planning,
  job,
  hoursWanted,
  onChoose,
  draft,
  onDraft,
}: {
  readonly planning: Planning;
  readonly job: OpenJob;
  readonly hoursWanted: number | undefined;
  readonly onChoose: (plan: Plan) => void;
  readonly draft: Draft;
  readonly onDraft: (draft: Draft) => void;
}) => {
  switch (planning.kind) {
    case 'planning':
      return (
        <p role="status">
          Planning … <Button onPress={planning.stop}>Stop</Button>
        </p>
      );
    case 'stopped':
      return <p>Stopped. “Plan anew” begins again.</p>;
    case 'failed':
      return (
        <p className="refused" role="alert">
          The plan could not be computed: {planning.says}. Load this page again; the journal is not touched.
        </p>
      );
    case 'planned':
      return (
        <PlanShown
          engine={job.sheet.engine}
          planned={planning.planned}
          currency={job.booked.currency}
          seconds={planning.seconds}
          hoursWanted={hoursWanted}
          onChoose={chooseIt.enabled(job) ? onChoose : undefined}
          onOffer={
            makeIt.enabled(job) && planning.planned.kind === 'plan' && takes(draft, planning.planned)
              ? (plan) => onDraft(withPlan(draft, plan))
              : undefined
          }
        />
      );
    default:
      return planning satisfies never;
  }
};

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
  const [demands, setDemands] = useState(() => demandsOf(job));
  const [refusal, setRefusal] = useState<Refusal>();
  const [draft, setDraft] = useDraft(job.head.event?.job ?? '');
  const planning = usePlan(job, demands);
  const choose = (plan: Plan) => {
    const refused = act(chooseIt, plan);
    setRefusal(refused);
    if (!refused) announce('Plan chosen.');
  };
  return (
    <>
      <ThreeAnswers where="deciding for the whole engine" now={whatNow(job)} right={howItStands(job)} />
      <Agreement />
      <section className="part" aria-label="Plan">
        <h2>Plan</h2>
        <DemandsForm demands={demands} currency={job.booked.currency} onDemands={setDemands} />
        <PlanPart
          planning={planning}
          job={job}
          hoursWanted={demands.hours}
          onChoose={choose}
          draft={draft}
          onDraft={setDraft}
        />
        <Refused refusal={refusal} />
      </section>
      <NewOffer draft={draft} onDraft={setDraft} />
      <Offers />
      <ComponentVerdicts />
      <Findings />
    </>
  );
};
