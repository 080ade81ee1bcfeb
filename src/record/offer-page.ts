/** @module An offer as a page that stands alone: plans side by side, prints on A4, and can be accepted where it is served. */
import type { OpenJob } from '../job/job.ts';
import { type Offer, type OfferedPlan, offerStanding } from '../job/offer.ts';
import { type OfferSum, offerSum } from '../job/offer-sum.ts';
import { formatFigure } from '../quantity/figure.ts';
import { type Refusal, refusalText } from '../quantity/refusal.ts';
import { typedText } from '../quantity/typed.ts';
import { moneyText, timeText } from './figure-text.ts';
import { escaped, words } from './html.ts';
import { oneUseTable } from './offer-one-use.ts';
import { offerPageStyle } from './offer-page-style.ts';
import { pageStyle } from './page-style.ts';
import { plate } from './plate.ts';
import { slotTitle } from './sections/named.ts';
import { outcomeText } from './sections/offers.ts';

/** Where the owner answers; without it the page is to read and to print. */
export interface OfferAnswering {
  /** The address that the form is sent to. */
  readonly address: string;
  /** Why what was sent was not taken. */
  readonly refused?: Refusal;
  /** The name as it was typed. */
  readonly name?: string;
}

interface Summed {
  readonly plan: OfferedPlan;
  readonly sum: OfferSum;
}

const row = (head: string, cells: readonly string[], kind = ''): string =>
  `<tr${kind === '' ? '' : ` class="${kind}"`}><th scope="row">${words(head)}</th>${cells.map((cell) => `<td class="sum">${escaped(cell)}</td>`).join('')}</tr>\n`;

/** Lines that only some plans have stand empty in the others. */
const labourRows = (plans: readonly Summed[], money: (cents: number) => string): string => {
  const names = [...new Set(plans.flatMap(({ plan }) => plan.labour.map(({ says }) => says)))];
  return names
    .map((name) =>
      row(
        `Work: ${name}`,
        plans.map(({ plan }) =>
          plan.labour
            .filter(({ says }) => says === name)
            .map(({ cents, hours, rate }) =>
              hours === undefined || rate === undefined
                ? money(cents)
                : `${typedText(hours)} at ${money(rate)} = ${money(cents)}`,
            )
            .join(', '),
        ),
      ),
    )
    .join('');
};

const plansTable = (offer: Offer, plans: readonly Summed[]): string => {
  const money = (cents: number) => moneyText(cents, offer.currency);
  const each = (says: (summed: Summed) => string) => plans.map(says);
  const beside = plans.some(({ sum }) => sum.beside !== 0);
  const taxes = plans[0]?.sum.taxes ?? [];
  return `<div class="sheet" tabindex="0" role="region" aria-label="Plans side by side"><table class="plans">
<thead><tr><th scope="col">Plan</th>${plans.map(({ plan }) => `<th scope="col">${escaped(plan.name)}: ${words(plan.title)}</th>`).join('')}</tr></thead>
<tbody>
${row(
  'Parts and machining',
  each(({ sum }) => money(sum.components)),
)}${
  beside
    ? row(
        'Setting up and carriage, less for quantity',
        each(({ sum }) => money(sum.beside)),
      )
    : ''
}${
  plans.some(({ sum }) => sum.oneUse !== 0)
    ? row(
        'Gaskets, seals and other one-use items',
        each(({ sum }) => money(sum.oneUse)),
      )
    : ''
}${labourRows(plans, money)}${row(
  'Before tax',
  each(({ sum }) => money(sum.net)),
)}${taxes
  .map(({ says }, at) =>
    row(
      says,
      each(({ sum }) => money(sum.taxes[at]?.cents ?? 0)),
    ),
  )
  .join('')}${row(
  'To pay',
  each(({ sum }) => money(sum.gross)),
  'pay',
)}${row(
  'Ready in',
  each(({ plan }) => `${formatFigure(plan.days, 0)} days`),
)}${row(
  'Hours expected until the next overhaul',
  each(({ plan }) => `${formatFigure(plan.hours, 0)} h`),
)}</tbody>
</table></div>
`;
};

const doneIn = ({ choices }: OfferedPlan, slot: string) => {
  const choice = choices.find((one) => one.slot === slot);
  return choice?.option.split(':')[1] === 'put back' ? undefined : choice;
};

/** What is done to each part, plan by plan, and why; then what goes back as it is in all of them. */
const workTable = (job: OpenJob, offer: Offer): string => {
  const { engine } = job.sheet;
  const slots = offer.plans[0]?.choices.map(({ slot }) => slot) ?? [];
  const touched = slots.filter((slot) => offer.plans.some((plan) => doneIn(plan, slot)));
  const left = slots.filter((slot) => !touched.includes(slot)).map((slot) => slotTitle(engine, slot));
  const inside = (plan: OfferedPlan, slot: string): string => {
    const choice = plan.choices.find((one) => one.slot === slot);
    if (choice === undefined) return '';
    const cost = choice.cents === 0 ? '' : `, ${escaped(moneyText(choice.cents, offer.currency))}`;
    return `${words(choice.what)}${cost}<span class="why">${words(choice.why)}</span>`;
  };
  // What is the same in all plans is read once.
  const cells = (slot: string): string => {
    const all = offer.plans.map((plan) => inside(plan, slot));
    return all.length > 1 && new Set(all).size === 1
      ? `<td colspan="${all.length}">${all[0]}</td>`
      : all.map((cell) => `<td>${cell}</td>`).join('');
  };
  const table =
    touched.length === 0
      ? ''
      : `<div class="sheet" tabindex="0" role="region" aria-label="What is done"><table class="work">
<thead><tr><th scope="col">Part</th>${offer.plans.map(({ name }) => `<th scope="col">Plan ${escaped(name)}</th>`).join('')}</tr></thead>
<tbody>
${touched.map((slot) => `<tr><th scope="row">${words(slotTitle(engine, slot))}</th>${cells(slot)}</tr>\n`).join('')}</tbody>
</table></div>
`;
  const back =
    left.length === 0
      ? ''
      : `<p>Measured, sound and put back as it is${offer.plans.length > 1 ? ' in every plan' : ''}: ${words(left.join('; '))}.</p>\n`;
  return `<h2>What is done, and why</h2>\n${table}${back}`;
};

const form = (offer: Offer, { address, name = '' }: OfferAnswering): string => {
  const [only] = offer.plans;
  const choice =
    offer.plans.length === 1 && only
      ? `<input type="hidden" name="plan" value="${escaped(only.name)}">`
      : `<fieldset><legend>Which plan</legend>${offer.plans
          .map(
            (plan) =>
              `<label><input type="radio" name="plan" value="${escaped(plan.name)}" required> <span>Plan ${escaped(plan.name)}: ${words(plan.title)}, ${escaped(moneyText(offerSum(offer, plan).gross, offer.currency))}</span></label>`,
          )
          .join('')}</fieldset>`;
  return `<form method="post" action="${escaped(address)}" aria-labelledby="accept">
<h2 id="accept">Accept${only && offer.plans.length === 1 ? '' : ' one of the plans'}</h2>
${choice}
<label class="name">Your name, in place of a signature<input name="name" value="${escaped(name)}" maxlength="200" autocomplete="name" required></label>
<button type="submit">I accept and order this work</button>
</form>
`;
};

/** In the owner's words; who closed it and when stands on the shop's own pages. */
const standingText = (offer: Offer, at: string): string | undefined => {
  const standing = offerStanding(offer, at);
  switch (standing) {
    case 'open':
      return undefined;
    case 'accepted':
    case 'superseded':
      return `Offer ${offer.number}: ${outcomeText(offer)}.`;
    case 'expired':
      return `Offer ${offer.number} was valid until ${offer.validUntil}. Ask the workshop for a new one.`;
    default:
      return standing satisfies never;
  }
};

const cautions: readonly string[] = [
  'Hours are worked out from the wear that was measured on this engine, or from what is usual for it. They compare the plans with one another; they are not a promise.',
  'What comes to light once work has begun is told to you before anything more is done, and offered anew.',
  "The maker's manual, local codes and licensed practice overrule this offer.",
];

/**
 * Writes the page of an offer.
 *
 * @param at         when it is looked at: an offer that is over says so, and takes no answer
 * @param answering  where the owner accepts; left out where the page is for print
 */
export const offerPage = (job: OpenJob, offer: Offer, at: string, answering?: OfferAnswering): string => {
  const { booked, sheet } = job;
  const plans = offer.plans.map((plan) => ({ plan, sum: offerSum(offer, plan) }));
  const title = `Offer ${offer.number} for job ${booked.number}: ${sheet.engine.title}`;
  const notices = [
    standingText(offer, at),
    answering?.refused && `Not accepted: ${refusalText(answering.refused)}.`,
  ].flatMap((says) => (says === undefined ? [] : [`<p class="notice" role="status">${words(says)}</p>\n`]));
  const open = offerStanding(offer, at) === 'open';
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex">
<link rel="icon" href="data:,">
<title>${escaped(title)}</title>
<style>${pageStyle}${offerPageStyle}</style>
</head>
<body>
<main>
<div class="letter">${[offer.shop.name, ...offer.shop.address].map((line) => `<p>${words(line)}</p>`).join('')}</div>
<h1>${words(title)}</h1>
${notices.join('')}${plate([
  { name: 'For', says: booked.owner },
  { name: 'Engine', says: `${sheet.engine.title}${booked.plate === '' ? '' : `, plate ${booked.plate}`}` },
  { name: 'Hours run', says: typedText(booked.hoursRun) },
  { name: 'Complaint', says: booked.complaint },
  { name: 'Made', says: `${timeText(offer.at)}, ${offer.by}` },
  { name: 'Valid until', says: offer.validUntil },
])}<h2>${offer.plans.length === 1 ? 'The plan' : 'The plans side by side'}</h2>
${plansTable(offer, plans)}<p>Each tax is reckoned on the sum before tax and rounded to the nearest hundredth, half up.</p>
${workTable(job, offer)}${oneUseTable(offer)}${
  offer.terms.trim() === ''
    ? ''
    : `<h2>Terms</h2>\n${offer.terms
        .split('\n')
        .map((line) => `<p>${words(line)}</p>\n`)
        .join('')}`
}<section class="safety">
<h2>To be known</h2>
${cautions.map((line) => `<p>${escaped(line)}</p>\n`).join('')}</section>
${open && answering ? form(offer, answering) : ''}<div class="signs three-signs"><div>Plan chosen: ${escaped(offer.plans.map(({ name }) => name).join(' / '))}</div><div>For the owner: name, signature, date</div><div>For the workshop: name, signature, date</div></div>
</main>
</body>
</html>
`;
};
