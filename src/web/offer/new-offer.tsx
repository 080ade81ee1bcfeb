/** @module The offer that is being made: up to three plans, each with its title and labour, and what each comes to. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import { offerSum } from '../../job/offer-sum.ts';
import { makeOffer } from '../../job/offering.ts';
import { oneUseTitle } from '../../job/order/one-use-lines.ts';
import { planNames } from '../../job/rules/offer.ts';
import { centsText } from '../../quantity/money.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import type { WorkshopSays } from '../../register/workshop.ts';
import { hoursText, money } from '../decide/plan-words.ts';
import { useRegister } from '../instruments/register-shelf.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Fetched } from '../shell/fetched.tsx';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { type Draft, type Drafted, toOffer } from './draft.ts';
import { newToken } from './new-token.ts';
import { makeIt } from './offer-actions.ts';

/** What the offer would be, made now; the same that is then asked for but for its link and its moment. */
const asked = (job: ReturnType<typeof useJob>, workshop: WorkshopSays, draft: Draft, validDays: string) => {
  const plans = [];
  for (const drafted of draft) {
    const plan = toOffer(drafted);
    if (plan.kind === 'refused') return plan;
    plans.push(plan.value);
  }
  const days = /^\d{1,3}$/.test(validDays.trim()) ? Number(validDays) : undefined;
  return makeOffer(job, workshop, plans, {
    at: new Date().toISOString(),
    token: newToken(),
    ...(days !== undefined && { validDays: days }),
  });
};

const DraftedPlan = ({
  drafted,
  name,
  workshop,
  pay,
  oneUse,
  currency,
  onChange,
  onTakeOut,
}: {
  readonly drafted: Drafted;
  readonly name: string;
  readonly workshop: WorkshopSays;
  /** What the owner would pay; missing while it cannot be reckoned. */
  readonly pay: number | undefined;
  /** What gaskets, seals and other one-use items add to it. */
  readonly oneUse: number | undefined;
  readonly currency: string;
  readonly onChange: (drafted: Drafted) => void;
  readonly onTakeOut: () => void;
}) => (
  <fieldset className="part" data-drafted={name}>
    <legend>
      <strong>Plan {name}</strong>
    </legend>
    <p>
      Parts and machining <span className="figure">{money(drafted.plan.cents, currency)}</span>,{' '}
      {drafted.plan.days} days, {hoursText(drafted.plan.hours)};{' '}
      {oneUse ? (
        <>
          {oneUseTitle} <span className="figure">{money(oneUse, currency)}</span>;{' '}
        </>
      ) : null}
      <strong>
        to pay <span className="figure">{pay === undefined ? 'not known yet' : money(pay, currency)}</span>
      </strong>
    </p>
    <div className="row">
      <Field
        className="grow"
        label={`Plan ${name} is called`}
        value={drafted.title}
        onChange={(title) => onChange({ ...drafted, title })}
      />
      {workshop.labourRate === undefined ? null : (
        <Field
          numeric
          label={`Hours of labour, plan ${name}`}
          value={drafted.labour}
          onChange={(labour) => onChange({ ...drafted, labour })}
          hint={`at ${centsText(workshop.labourRate)} an hour, beside the fixed lines`}
        />
      )}
      <Button onPress={onTakeOut}>Take plan {name} out</Button>
    </div>
  </fieldset>
);

const Making = ({
  workshop,
  draft,
  onDraft,
}: {
  readonly workshop: WorkshopSays;
  readonly draft: Draft;
  readonly onDraft: (draft: Draft) => void;
}) => {
  const job = useJob();
  const act = useAct();
  const [days, setDays] = useState(String(workshop.validDays));
  const [refusal, setRefusal] = useState<Refusal>();
  const offer = asked(job, workshop, draft, days);
  const sums = offer.kind === 'answer' ? offer.value.plans.map((plan) => offerSum(offer.value, plan)) : [];
  const make = (event: FormEvent) => {
    event.preventDefault();
    const request = asked(job, workshop, draft, days);
    const refused = request.kind === 'refused' ? request.refusal : act(makeIt, request.value);
    setRefusal(refused);
    if (refused) return;
    announce('Offer made.');
    onDraft([]);
  };
  return (
    <form className="column" aria-label="New offer" onSubmit={make}>
      {draft.map((drafted, at) => (
        <DraftedPlan
          key={planNames[at]}
          drafted={drafted}
          name={planNames[at] ?? ''}
          workshop={workshop}
          pay={sums[at]?.gross}
          oneUse={sums[at]?.oneUse}
          currency={job.booked.currency}
          onChange={(changed) => onDraft(draft.map((one, index) => (index === at ? changed : one)))}
          onTakeOut={() => onDraft(draft.filter((_, index) => index !== at))}
        />
      ))}
      <div className="row">
        <Field numeric label="Days the offer holds" value={days} onChange={setDays} />
        <Button type="submit" className="first" isDisabled={!makeIt.enabled(job)}>
          {makeIt.label}
        </Button>
      </div>
      <Refused refusal={refusal ?? (offer.kind === 'refused' ? offer.refusal : undefined)} />
    </form>
  );
};

export const NewOffer = ({
  draft,
  onDraft,
}: {
  readonly draft: Draft;
  readonly onDraft: (draft: Draft) => void;
}) => {
  const register = useRegister();
  const { workshop } = register.data ?? {};
  if (draft.length === 0) return null;
  return (
    <section className="part no-print" aria-label="Offer being made">
      <h2>Offer being made</h2>
      <Fetched query={register} what="what the workshop says of itself" />
      {register.data && workshop === undefined ? (
        <p className="note">
          Nothing is said of the workshop yet: its name, taxes and terms stand on every offer.{' '}
          <Link href="/workshop">Say it first</Link>; the plans stay here.
        </p>
      ) : null}
      {workshop ? <Making workshop={workshop} draft={draft} onDraft={onDraft} /> : null}
    </section>
  );
};
