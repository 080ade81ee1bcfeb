/** @module An offer as text for the terminal: its plans side by side, how it stands, where its link leads. */
import type { OpenJob } from '../job/job.ts';
import { type Offer, offerStanding } from '../job/offer.ts';
import { offerSum } from '../job/offer-sum.ts';
import { formatFigure } from '../quantity/figure.ts';
import { moneyText, timeText } from '../record/figure-text.ts';
import { outcomeText } from '../record/sections/offers.ts';
import { plain } from './plain.ts';
import { table } from './table.ts';

/** Below the address at which the workshop is served. */
export const linkOf = ({ head }: OpenJob, { token }: Offer): string =>
  `/offer/${head.event?.job ?? ''}/${token}`;

/** How the link is reached, since the workshop is served to its own machine alone. */
const reach =
  'Its link answers on this machine alone, while endfloat serve runs. An owner who is elsewhere is sent the page, and\ntheir word is noted with endfloat do JOB note-agreement offer=N plan=A.';

const standingWords = (offer: Offer, now: string): string =>
  offerStanding(offer, now) === 'expired'
    ? `not answered, and over since ${offer.validUntil}: make a new one`
    : outcomeText(offer);

export const offerText = (job: OpenJob, offer: Offer, now: string): string => {
  const money = (cents: number) => moneyText(cents, offer.currency);
  const plans = offer.plans.map((plan) => ({ plan, sum: offerSum(offer, plan) }));
  const row = (head: string, says: (one: (typeof plans)[number]) => string) => [head, ...plans.map(says)];
  return [
    `Offer ${offer.number} for ${plain(job.booked.number)}, made ${timeText(offer.at)} by ${plain(offer.by)}: ${plain(standingWords(offer, now))}.\n`,
    table(
      [
        { head: 'Plan' },
        ...plans.map(({ plan }) => ({ head: `${plan.name}: ${plain(plan.title)}`, right: true })),
      ],
      [
        row('Parts and machining', ({ sum }) => money(sum.components)),
        row('Set-ups, less for quantity', ({ sum }) => money(sum.beside)),
        row('Gaskets, seals, other one-use', ({ sum }) => money(sum.oneUse)),
        row('Work', ({ sum }) => money(sum.labour)),
        row('Before tax', ({ sum }) => money(sum.net)),
        ...offer.taxes.map((_, at) =>
          row(plans[0]?.sum.taxes[at]?.says ?? '', ({ sum }) => money(sum.taxes[at]?.cents ?? 0)),
        ),
        row('To pay', ({ sum }) => money(sum.gross)),
        row('Days', ({ plan }) => formatFigure(plan.days, 0)),
        row('Hours', ({ plan }) => formatFigure(plan.hours, 0)),
      ],
    ),
    ...(offerStanding(offer, now) === 'open' ? [`Link: ${linkOf(job, offer)}\n${reach}\n`] : []),
  ].join('');
};
