/** @module May this offer be made, and may the owner's agreement be noted? */
import { blank, orList, type Trouble, trouble } from '../../journal/trouble.ts';
import { labourCost, mostCents } from '../../quantity/money.ts';
import { taxesTrouble } from '../../register/workshop.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';
import { type LabourLine, type Offer, type OfferedPlan, offerStanding, sameChoices } from '../offer.ts';
import { offerSum } from '../offer-sum.ts';
import { oneUseLines, oneUseTitle } from '../order/one-use-lines.ts';
import { choosePlanTrouble, planOpenTrouble } from './plan.ts';

type Asked = RequestOf<'make offer'>;

/** Of the plans of an offer, in their order. */
export const planNames = ['A', 'B', 'C'] as const;

const asChosen = ({ choices, cents, days, hours }: OfferedPlan): RequestOf<'choose plan'> => ({
  kind: 'choose plan',
  choices,
  cents,
  days,
  hours,
});

const lineTrouble = ({ says, cents, hours, rate }: LabourLine, where: string): Trouble => {
  const wrong = blank(says, where, 'write what is done for it');
  if (wrong !== undefined || (hours === undefined && rate === undefined)) return wrong;
  if (hours === undefined || rate === undefined || rate > 10_000_000)
    return trouble(`“${says}” needs hours and a rate`, where, 'give both, or a price alone');
  const cost = labourCost(hours, rate);
  if (cost.kind === 'refused') return { ...cost.refusal, where };
  return cost.value === cents
    ? undefined
    : trouble(`“${says}” does not come to its hours at its rate`, where, 'reckon it again');
};

/** What is used but once must be priced as the plan needs it. */
const oneUseTrouble = (job: OpenJob, { choices, oneUse = [] }: OfferedPlan, where: string): Trouble => {
  const needed = oneUseLines(job, choices);
  const same =
    oneUse.length === needed.length &&
    needed.every(({ says, count, cents }, at) => {
      const line = oneUse[at];
      return line?.says === says && line.count === count && line.cents === cents;
    });
  return same
    ? undefined
    : trouble(
        `its ${oneUseTitle} are not those that the plan needs, at their prices`,
        where,
        'make the offer again from the plan',
      );
};

const plansTrouble = (job: OpenJob, asked: Asked): Trouble => {
  const { plans } = asked;
  if (plans.length < 1 || plans.length > planNames.length)
    return trouble(`${plans.length} plans are in it`, 'offer', 'put one, two or three plans into it');
  for (const [at, plan] of plans.entries()) {
    const where = `offer, plan ${plan.name}`;
    if (plan.name !== planNames[at])
      return trouble('its plans are not called A, B, C in order', where, 'name them so');
    const twin = plans.slice(0, at).find(({ choices }) => sameChoices(choices, plan.choices));
    if (twin) return trouble(`it is the same as plan ${twin.name}`, where, 'leave one of the two out');
    const wrong =
      blank(plan.title, where, 'write what sets it apart') ??
      plan.labour.map((line) => lineTrouble(line, `${where}, labour`)).find((one) => one !== undefined) ??
      (offerSum({ taxes: [] }, plan).net > mostCents
        ? trouble('it costs more than can be reckoned exactly', where, 'look at its prices again')
        : undefined);
    if (wrong) return wrong;
    const chosen = choosePlanTrouble(job, asChosen(plan));
    if (chosen) return { ...chosen, where: `${where}, ${chosen.where}` };
    const once = oneUseTrouble(job, plan, where);
    if (once) return once;
  }
  return undefined;
};

/** @param at  when it is made */
export const makeOfferTrouble = (job: OpenJob, asked: Asked, at: string): Trouble => {
  const next = job.offers.length + 1;
  return (
    (asked.number === next
      ? undefined
      : trouble(
          `offer ${asked.number} is not the next of this job`,
          'offer',
          `look at the offers there are, and make offer ${next}`,
        )) ??
    blank(asked.shop.name, 'offer', 'say first what the workshop is called') ??
    (asked.currency === job.booked.currency
      ? undefined
      : trouble(
          `the prices are in ${job.booked.currency}`,
          'offer, currency',
          `make it in ${job.booked.currency}`,
        )) ??
    (asked.validUntil >= at.slice(0, 10)
      ? undefined
      : trouble(`${asked.validUntil} is over`, 'offer, valid until', 'let it hold for a day at least')) ??
    (job.offers.some(({ token }) => token === asked.token)
      ? trouble('its link is that of an offer before', 'offer', 'make it with a link of its own')
      : undefined) ??
    taxesTrouble(asked.taxes) ??
    plansTrouble(job, asked)
  );
};

/** Why an offer cannot be accepted, or nothing where it can. */
const closedOffer = (offer: Offer, at: string): Trouble => {
  const where = `offer ${offer.number}`;
  const standing = offerStanding(offer, at);
  switch (standing) {
    case 'open':
      return undefined;
    case 'accepted':
      return trouble(
        `plan ${offer.accepted?.plan} of it was accepted on ${offer.accepted?.at.slice(0, 10)}`,
        where,
        'nothing is left to do; for anything else a new offer is made',
      );
    case 'superseded':
      return trouble(
        `it no longer stands: ${offer.superseded?.why}`,
        where,
        'ask for the offer as it stands now',
      );
    case 'expired':
      return trouble(`it was valid until ${offer.validUntil}`, where, 'ask for a new offer');
    default:
      return standing satisfies never;
  }
};

/** Offered plans must still be sound: what was read or found since may speak against them. */
const offeredTrouble = (
  job: OpenJob,
  { number, plan }: NonNullable<RequestOf<'note agreement'>['offer']>,
  at: string,
): Trouble => {
  const offer = job.offers[number - 1];
  if (offer === undefined)
    return trouble(`there is no offer ${number}`, 'agreement', 'agree to an offer that was made');
  const closed = closedOffer(offer, at);
  if (closed) return closed;
  const offered = offer.plans.find(({ name }) => name === plan);
  if (offered === undefined)
    return trouble(
      plan === '' ? 'no plan of it is chosen' : `it has no plan ${plan}`,
      `offer ${number}`,
      `choose plan ${orList(offer.plans.map(({ name }) => name))}`,
    );
  const barred = planOpenTrouble(job, asChosen(offered));
  return (
    barred &&
    trouble(
      `plan ${plan} does not hold on what was measured and found since: ${barred.what}`,
      `offer ${number}`,
      'ask for a new offer',
    )
  );
};

/** @param at  when the owner agreed */
export const noteAgreementTrouble = (
  job: OpenJob,
  asked: RequestOf<'note agreement'>,
  at: string,
): Trouble => {
  const named = blank(asked.name, 'agreement', 'write who agreed');
  if (asked.offer !== undefined) return offeredTrouble(job, asked.offer, at) ?? named;
  return job.plan === undefined
    ? trouble('there is no plan to agree to', 'agreement', 'choose a plan first')
    : named;
};
