/** @module How plans, offers and the owner's word follow one another: what comes later asks again. */
import type { Signed } from '../journal/event.ts';
import type { Fact } from './event.ts';
import type { OpenJob } from './job.ts';
import { type OfferMade, sameChoices, standingOffer } from './offer.ts';

type FactOf<Kind extends Fact['kind']> = Omit<Extract<Fact, { kind: Kind }>, 'kind'>;
type Ended = Signed & { readonly why: string };

/** The owner agreed to what was before: it no longer counts, and is kept. */
const asksAgain = ({ agreed, ...job }: OpenJob, ended: Ended): OpenJob =>
  agreed === undefined ? job : { ...job, agreedBefore: [...job.agreedBefore, { ...agreed, ended }] };

const superseded = (job: OpenJob, ended: Ended): OpenJob => {
  const offer = standingOffer(job);
  return offer === undefined
    ? job
    : { ...job, offers: [...job.offers.slice(0, -1), { ...offer, superseded: ended }] };
};

export const afterPlan = (job: OpenJob, told: FactOf<'plan chosen'>, signed: Signed): OpenJob => {
  const { choices, cents, days, hours } = told;
  const offer = standingOffer(job);
  // A plan of an offer that the owner has not answered yet is the shop's own wish, and takes nothing back.
  const kept =
    offer?.accepted === undefined && offer?.plans.some((plan) => sameChoices(plan.choices, choices));
  const ended = { ...signed, why: 'the shop has chosen a plan anew' };
  const open = kept ? job : superseded(job, ended);
  return {
    ...asksAgain(open, ended),
    plan: { choices, cents, days, hours, ...signed, ordersBefore: job.orders.size },
  };
};

export const afterOffer = (job: OpenJob, offer: OfferMade, signed: Signed): OpenJob => {
  const ended = { ...signed, why: `offer ${offer.number} has taken its place` };
  const open = asksAgain(superseded(job, ended), ended);
  return { ...open, offers: [...open.offers, { ...offer, ...signed }] };
};

export const afterAgreement = (job: OpenJob, told: FactOf<'owner agreed'>, signed: Signed): OpenJob => {
  const open = asksAgain(job, { ...signed, why: 'the owner has agreed anew' });
  const agreed = { ...told, ...signed };
  const to = told.offer;
  if (to === undefined) {
    const beside = { ...signed, why: 'the owner has agreed to the plan chosen, beside it' };
    return { ...(standingOffer(open)?.accepted ? open : superseded(open, beside)), agreed };
  }
  const plan = open.offers[to.number - 1]?.plans.find(({ name }) => name === to.plan);
  const offers = open.offers.map((offer) =>
    offer.number === to.number ? { ...offer, accepted: { ...signed, plan: to.plan } } : offer,
  );
  if (plan === undefined) return { ...open, offers, agreed };
  const { choices, cents, days, hours } = plan;
  return {
    ...open,
    offers,
    agreed,
    plan: { choices, cents, days, hours, ...signed, ordersBefore: job.orders.size },
  };
};
