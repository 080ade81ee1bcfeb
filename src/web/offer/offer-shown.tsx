/** @module One offer: its plans side by side, how it stands, its page to print, its link, and the owner's word on it. */
import { type FormEvent, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import type { OpenJob } from '../../job/job.ts';
import { type Offer, offerStanding } from '../../job/offer.ts';
import { offerSum } from '../../job/offer-sum.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { offerPage } from '../../record/offer-page.ts';
import { outcomeText } from '../../record/sections/offers.ts';
import { amount, hoursText } from '../decide/plan-words.ts';
import { WhoAndHow, type Word } from '../decide/who-and-how.tsx';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Aside } from '../shell/aside.tsx';
import { Choice } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { noteAnswer } from './offer-actions.ts';

const now = (): string => new Date().toISOString();

const PlansTable = ({ offer }: { readonly offer: Offer }) => (
  <div className="scroll">
    <table>
      <caption>Plans of offer {offer.number}</caption>
      <thead>
        <tr>
          <th scope="col">plan</th>
          {['before tax', 'tax', `to pay, ${offer.currency}`, 'days', 'lasts'].map((head) => (
            <th key={head} scope="col" className="number">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {offer.plans.map((plan) => {
          const sum = offerSum(offer, plan);
          return (
            <tr key={plan.name} data-offered={plan.name}>
              <th scope="row">
                {plan.name}: {plan.title}
                {offer.accepted?.plan === plan.name ? ' ✓ accepted' : ''}
              </th>
              <td className="number figure">{amount(sum.net)}</td>
              <td className="number figure">{amount(sum.gross - sum.net)}</td>
              <td className="number figure">{amount(sum.gross)}</td>
              <td className="number figure">{plan.days}</td>
              <td className="number figure">{hoursText(plan.hours)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  </div>
);

const Paper = ({ job, offer }: { readonly job: OpenJob; readonly offer: Offer }) => {
  const frame = useRef<HTMLIFrameElement>(null);
  return (
    <div className="column">
      <div>
        <Button onPress={() => frame.current?.contentWindow?.print()}>Print offer {offer.number}</Button>
      </div>
      <iframe
        ref={frame}
        className="record"
        title={`Offer ${offer.number} of job ${job.booked.number}`}
        srcDoc={offerPage(job, offer, now())}
      />
    </div>
  );
};

const OwnersLink = ({ job, offer }: { readonly job: OpenJob; readonly offer: Offer }) => {
  const [said, setSaid] = useState('');
  const link = `${location.origin}/offer/${encodeURIComponent(job.head.event?.job ?? '')}/${offer.token}`;
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link);
      setSaid('✓ The link is copied.');
    } catch {
      setSaid('This browser does not let it be copied: mark it and copy it by hand.');
    }
  };
  return (
    <div className="column">
      <div className="row">
        <Button onPress={copy}>Copy the link</Button>
        <a className="button" href={link} target="_blank" rel="noreferrer">
          Open it here
        </a>
      </div>
      <p data-link="yes" style={{ overflowWrap: 'anywhere' }}>
        The owner’s link: {link}
      </p>
      <p role="status">{said}</p>
      <p className="faint">
        Whoever has the link may accept. It answers on this machine alone: let the owner read and accept at
        this screen, or print the offer and note their word below. To be reached from elsewhere, the shop's
        own network must bring the owner to this address on this machine; Endfloat opens none by itself.
      </p>
    </div>
  );
};

const OwnersWord = ({ offer }: { readonly offer: Offer }) => {
  const job = useJob();
  const act = useAct();
  const [plan, setPlan] = useState(offer.plans.length === 1 ? (offer.plans[0]?.name ?? '') : '');
  const [word, setWord] = useState<Word>({ name: job.booked.owner, how: '' });
  const [refusal, setRefusal] = useState<Refusal>();
  const agree = (event: FormEvent) => {
    event.preventDefault();
    const refused = act(noteAnswer, { number: offer.number, plan, ...word });
    setRefusal(refused);
    if (!refused) announce(`${word.name} accepts plan ${plan}.`);
  };
  return (
    <form className="row" onSubmit={agree} aria-label={`Owner's word on offer ${offer.number}`}>
      <Choice
        label="Plan accepted"
        value={plan}
        onChange={setPlan}
        of={[
          { value: '', words: 'choose one …' },
          ...offer.plans.map((one) => ({ value: one.name, words: `${one.name}: ${one.title}` })),
        ]}
      />
      <WhoAndHow word={word} onWord={setWord} />
      <Button type="submit" className="first" isDisabled={!noteAnswer.enabled(job)}>
        {noteAnswer.label}
      </Button>
      <Refused refusal={refusal} />
    </form>
  );
};

export const OfferShown = ({ offer }: { readonly offer: Offer }) => {
  const job = useJob();
  const standing = offerStanding(offer, now());
  return (
    <section className="part" aria-label={`Offer ${offer.number}`} data-offer={standing}>
      <h2>
        Offer {offer.number}: {standing === 'open' ? 'with the owner' : standing}
      </h2>
      <p>
        made by {offer.by}, {offer.at.slice(0, 10)};{' '}
        {standing === 'expired'
          ? `it was valid until ${offer.validUntil}: make a new one`
          : outcomeText(offer)}
      </p>
      <PlansTable offer={offer} />
      {standing === 'open' ? (
        <>
          <OwnersLink job={job} offer={offer} />
          <OwnersWord offer={offer} />
        </>
      ) : null}
      <Aside words={`Read or print offer ${offer.number}`}>
        <Paper job={job} offer={offer} />
      </Aside>
    </section>
  );
};
