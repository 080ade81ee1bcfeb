/** @module The plan that was chosen, and the owner's word on it. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { isWithOwner } from '../offer/with-owner.ts';
import { announce } from '../shell/announce.ts';
import { Refused } from '../shell/refused.tsx';
import { noteAgreement } from './decide-actions.ts';
import { hoursText, money, slotWords } from './plan-words.ts';
import { WhoAndHow, type Word } from './who-and-how.tsx';

export const Agreement = () => {
  const job = useJob();
  const act = useAct();
  const [word, setWord] = useState<Word>({ name: job.booked.owner, how: '' });
  const [refusal, setRefusal] = useState<Refusal>();
  const { plan, agreed } = job;
  if (!plan) return null;
  const agree = (event: FormEvent) => {
    event.preventDefault();
    const refused = act(noteAgreement, word);
    setRefusal(refused);
    if (!refused) announce(`${word.name} agrees to the plan.`);
  };
  return (
    <section className="part" aria-label="Chosen plan">
      <h2>Chosen plan</h2>
      <p className="total">
        <span className="figure">{money(plan.cents, job.booked.currency)}</span>, {plan.days} days, about{' '}
        {hoursText(plan.hours)}
      </p>
      <details>
        <summary>Its {plan.choices.length} lines</summary>
        <ul>
          {plan.choices.map((choice) => (
            <li key={choice.slot}>
              {slotWords(job.sheet.engine, choice.slot)}: {choice.says},{' '}
              <span className="figure">{money(choice.cents, job.booked.currency)}</span>
            </li>
          ))}
        </ul>
      </details>
      <p className="faint">
        chosen by {plan.by}, {plan.at.slice(0, 10)}
      </p>
      {agreed ? (
        <p data-agreed="yes">
          <strong>
            ✓ {agreed.name} agreed{agreed.how === '' ? '' : `, ${agreed.how}`}
            {agreed.offer ? `, to plan ${agreed.offer.plan} of offer ${agreed.offer.number}` : ''}
          </strong>{' '}
          ({agreed.offer?.by === 'link' ? 'accepted at the link' : `noted by ${agreed.by}`},{' '}
          {agreed.at.slice(0, 10)})
        </p>
      ) : isWithOwner(job) ? (
        <p>
          Not agreed to. Offer {job.offers.length} is with the owner; the plan accepted of it becomes the plan
          chosen.
        </p>
      ) : (
        <form className="row" onSubmit={agree} aria-label="Owner's agreement">
          <WhoAndHow word={word} onWord={setWord} />
          <Button type="submit" className="first" isDisabled={!noteAgreement.enabled(job)}>
            {noteAgreement.label}
          </Button>
        </form>
      )}
      {job.agreedBefore.map((before) => (
        <p key={`${before.at} ${before.ended.at}`} className="note" data-agreed="before">
          {before.name} had agreed on {before.at.slice(0, 10)}
          {before.offer ? ` to plan ${before.offer.plan} of offer ${before.offer.number}` : ''}. That no
          longer counts since {before.ended.at.slice(0, 10)}: {before.ended.why}
          {agreed ? '.' : '. Ask again.'}
        </p>
      ))}
      <Refused refusal={refusal} />
    </section>
  );
};
