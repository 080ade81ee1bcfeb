/** @module The plan: what is asked of it, what if, the plan that is shown, the trade-off that it stands in, alternatives. */
import { useEffect, useMemo, useRef, useState } from 'react';
import { askedOfPlan } from '../../job/asked-of-plan.ts';
import { demandsOf, planQuestionOf } from '../../job/planning.ts';
import type { Demands, Option, Plan } from '../../plan/plan-model.ts';
import type { PlanQuestion } from '../../plan/question.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Refused } from '../shell/refused.tsx';
import { AlternativesShown } from './alternatives-shown.tsx';
import { AskedOtherwise } from './asked-otherwise.tsx';
import { DemandsForm } from './demands-form.tsx';
import { NoPlan } from './no-plan.tsx';
import { PlanShown } from './plan-shown.tsx';
import { hoursText, money } from './plan-words.ts';
import { TradeOffPart } from './trade-off-part.tsx';
import { usePlanning } from './use-planning.ts';
import { WhatIf } from './what-if.tsx';
import { Working } from './working.tsx';

/** A plan that was pointed at, of one question. */
interface Pointed {
  readonly question: PlanQuestion;
  readonly plan: Plan;
  readonly heading: string;
}

const none: readonly Option[] = [];

const figuresWords = ({ cents, days, hours }: Plan, currency: string): string =>
  `${money(cents, currency)}, ${days} days, ${hoursText(hours)}.`;

export const PlanPart = ({
  onChoose,
  offering,
  refusal,
}: {
  /** Missing where none can be chosen any more. */
  readonly onChoose: ((plan: Plan) => void) | undefined;
  /** What puts a plan into the offer; missing where that one cannot be put in. */
  readonly offering: (plan: Plan) => ((plan: Plan) => void) | undefined;
  /** Why the plan was not chosen. */
  readonly refusal: Refusal | undefined;
}) => {
  const job = useJob();
  const { sheet, findings, booked, orders, done, scopes } = job;
  const { engine } = sheet;
  const { currency } = booked;
  const [demands, setDemands] = useState<Demands>(() => demandsOf(job));
  const [pointed, setPointed] = useState<Pointed>();
  const figures = useRef<HTMLParagraphElement>(null);
  const [options, setOptions] = useState(none);

  const question = useMemo(
    () => planQuestionOf({ sheet, findings, booked, orders, done, scopes }, demands),
    [sheet, findings, booked, orders, done, scopes, demands],
  );
  const { planning, again } = usePlanning(useMemo(() => ({ kind: 'plan', question }), [question]));
  const answer = planning.kind === 'answered' && planning.answer.kind === 'one' ? planning.answer : undefined;
  // They stay while the next plan is sought, so that hands that change one thing after another are not held up.
  useEffect(() => {
    if (!answer) return;
    setOptions(answer.options);
    const { planned } = answer;
    announce(
      planned.kind === 'plan'
        ? figuresWords(planned, currency)
        : 'No plan: why not stands under what is asked.',
    );
  }, [answer, currency]);

  const looked = pointed?.question === question ? pointed : undefined;
  const cheapest = answer?.planned.kind === 'plan' ? answer.planned : undefined;
  const plan = looked?.plan ?? cheapest;
  const point = (next: Plan, heading: string) => {
    setPointed({ question, plan: next, heading });
    announce(`${heading} is shown: ${figuresWords(next, currency)}`);
    requestAnimationFrame(() => {
      figures.current?.focus({ preventScroll: true });
      figures.current?.scrollIntoView({ block: 'nearest' });
    });
  };
  const priced = demands.prices !== undefined;
  const tradeOff =
    answer && answer.planned.kind !== 'not yet' ? (
      <TradeOffPart engine={engine} question={question} currency={currency} shown={plan} onShow={point} />
    ) : null;
  return (
    <>
      <section className="part" aria-label="Plan">
        <h2>Plan</h2>
        <DemandsForm demands={demands} currency={currency} onDemands={setDemands} />
        {options.length === 0 ? null : (
          <WhatIf
            engine={engine}
            options={options}
            demands={demands}
            currency={currency}
            onDemands={setDemands}
          />
        )}
        <AskedOtherwise options={options} demands={demands} onDemands={setDemands} />
        {planning.kind === 'answered' ? null : <Working planning={planning} what="Planning" again={again} />}
        {answer && answer.planned.kind !== 'plan' ? (
          <NoPlan
            found={answer.planned}
            asked={askedOfPlan(engine, options, demands)}
            onDemands={setDemands}
          />
        ) : null}
        {plan ? (
          <PlanShown
            engine={engine}
            plan={plan}
            heading={looked && `Shown: ${looked.heading}`}
            caption={looked ? `The lines of ${looked.heading}` : 'Cheapest sound plan: no cheaper one exists'}
            currency={currency}
            onChoose={priced ? undefined : onChoose}
            onOffer={priced ? undefined : offering(plan)}
            onBack={looked && cheapest ? () => setPointed(undefined) : undefined}
            hoursWanted={demands.hours}
            figures={figures}
          >
            {tradeOff}
          </PlanShown>
        ) : (
          tradeOff
        )}
        {planning.kind === 'answered' && answer?.planned.kind === 'plan' ? (
          <p className="faint">Solved in this browser in {planning.seconds.toFixed(1)} s.</p>
        ) : null}
        <Refused refusal={refusal} />
      </section>
      {cheapest ? (
        <AlternativesShown
          engine={engine}
          question={question}
          currency={currency}
          shown={plan}
          onShow={point}
        />
      ) : null}
    </>
  );
};
