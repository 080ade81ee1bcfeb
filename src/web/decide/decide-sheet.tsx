/** @module Deciding for the engine as a whole: verdicts by component, the plan with its reasons, the owner's word. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { OpenJob } from '../../job/job.ts';
import { demandsOf } from '../../job/planning.ts';
import type { Plan } from '../../plan/plan-model.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
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
}: {
  readonly planning: Planning;
  readonly job: OpenJob;
  readonly hoursWanted: number | undefined;
  readonly onChoose: (plan: Plan) => void;
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
        />
      );
    default:
      return planning satisfies never;
  }
};

export const DecideSheet = () => {
  const job = useJob();
  const act = useAct();
  const [demands, setDemands] = useState(() => demandsOf(job));
  const [refusal, setRefusal] = useState<Refusal>();
  const planning = usePlan(job, demands);
  const choose = (plan: Plan) => {
    const refused = act(chooseIt, plan);
    setRefusal(refused);
    if (!refused) announce('Plan chosen.');
  };
  return (
    <>
      <ThreeAnswers
        where="deciding for the whole engine"
        now={
          job.plan === undefined
            ? 'choose a plan'
            : job.agreed === undefined
              ? 'have the owner agree'
              : 'go on to Build'
        }
        right={
          job.agreed
            ? `${job.agreed.name} agreed`
            : job.plan
              ? `chosen: ${money(job.plan.cents, job.booked.currency)}`
              : 'not decided yet'
        }
      />
      <Agreement />
      <section className="part" aria-label="Plan">
        <h2>Plan</h2>
        <DemandsForm demands={demands} currency={job.booked.currency} onDemands={setDemands} />
        <PlanPart planning={planning} job={job} hoursWanted={demands.hours} onChoose={choose} />
        <Refused refusal={refusal} />
      </section>
      <ComponentVerdicts />
      <Findings />
    </>
  );
};
