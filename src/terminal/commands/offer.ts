/** @module `endfloat offer`: makes an offer to the owner, shows how it stands, writes its page. */
import { standingOffer } from '../../job/offer.ts';
import { makeOffer } from '../../job/offering.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { offerPage } from '../../record/offer-page.ts';
import { registerNow } from '../../store/register-now.ts';
import type { Store } from '../../store/sql-store.ts';
import { answerNo, type Given, lastValue, type Outcome, type TerminalCommand } from '../command.ts';
import { didYouMean } from '../nearest.ts';
import { linkOf, offerText } from '../offer-text.ts';
import { planExample, plansToOffer } from '../offered-plan.ts';
import { fileNameOf, writeWhole } from '../output-file.ts';
import { plain } from '../plain.ts';
import { carryOut, type FoundJob, inJob, signingOptions } from '../workshop.ts';
import { noPlan } from './plan.ts';

const validDays = (given: Given): Answer<number | undefined> => {
  const text = lastValue(given, 'valid-days');
  if (text === undefined) return answer(undefined);
  return /^[1-9]\d{0,2}$/.test(text)
    ? answer(Number(text))
    : refuse(`${plain(text)} is no number of days`, '--valid-days', 'write for example --valid-days 14');
};

const make = async (given: Given, store: Store, { id, job }: FoundJob): Promise<Answer<Outcome>> => {
  const days = validDays(given);
  if (days.kind === 'refused') return days;
  const { workshop } = await registerNow(store);
  if (workshop === undefined)
    return answerNo({
      what: 'nothing is said of the workshop yet: its name, taxes and terms',
      where: 'offer',
      remedy: 'say it with endfloat workshop name=… taxes=…, then make the offer',
    });
  const texts = given.values.get('plan') ?? ['as wanted'];
  const found = await plansToOffer(given, { sheet: job.sheet, job, warnings: [] }, texts);
  if (found.kind === 'refused') return found;
  if (found.value.kind === 'none') return noPlan(found.value.found);
  const { world } = given;
  const request = makeOffer(job, workshop, found.value.plans, {
    at: world.now(),
    token: world.newToken(),
    ...(days.value !== undefined && { validDays: days.value }),
  });
  if (request.kind === 'refused') return answerNo(request.refusal);
  const carried = await carryOut(store, given, id, job, [request.value]);
  if (carried.kind === 'refused') return carried;
  if (carried.value.kind === 'no') return answerNo(carried.value.refusal);
  const { job: after, events } = carried.value;
  const offer = after.kind === 'open' ? after.offers.at(-1) : undefined;
  if (after.kind !== 'open' || offer === undefined) throw new Error('an offer made is not in the job');
  return answer({
    text: offerText(after, offer, world.now()),
    json: { done: true, events, link: linkOf(after, offer) },
  });
};

const numbered = (given: Given, { job }: FoundJob) => {
  const text = given.words[2];
  const offer = text === undefined ? (standingOffer(job) ?? job.offers.at(-1)) : job.offers[Number(text) - 1];
  return offer === undefined
    ? refuse(
        text === undefined ? 'no offer is made yet' : `there is no offer ${plain(text)}`,
        `job ${plain(job.booked.number)}`,
        job.offers.length === 0 ? 'make one with endfloat offer JOB make' : `there are ${job.offers.length}`,
      )
    : answer(offer);
};

const show = (given: Given, found: FoundJob): Answer<Outcome> => {
  const { job } = found;
  const now = given.world.now();
  if (given.words[2] === undefined)
    return answer({
      text:
        job.offers.length === 0
          ? 'No offer is made yet: endfloat offer JOB make.'
          : job.offers.map((offer) => offerText(job, offer, now)).join('\n'),
      json: { offers: job.offers, agreed: job.agreed ?? null, agreedBefore: job.agreedBefore },
    });
  const offer = numbered(given, found);
  return offer.kind === 'refused'
    ? offer
    : answer({ text: offerText(job, offer.value, now), json: { offer: offer.value } });
};

const page = async (given: Given, found: FoundJob): Promise<Answer<Outcome>> => {
  const offer = numbered(given, found);
  if (offer.kind === 'refused') return offer;
  const { job } = found;
  const { number } = offer.value;
  const path = lastValue(given, 'to') ?? `offer-${fileNameOf(job.booked.number)}-${number}.html`;
  const written = await writeWhole(path, offerPage(job, offer.value, given.world.now()), given.world);
  return written.kind === 'refused'
    ? written
    : answer({
        text: `Offer ${number} of ${plain(job.booked.number)} written to ${plain(written.value)}\nOpen it in a browser to print it.`,
        json: { number, file: written.value },
      });
};

const ways = ['show', 'make', 'page'] as const;

export const offer: TerminalCommand = {
  name: 'offer',
  summary: 'make an offer of up to three plans to the owner, see how it stands, write its page',
  usage: ['offer JOB [show [N]]', `offer JOB make --plan ${planExample} [--plan …]`, 'offer JOB page [N]'],
  about: `A plan is typed as its title, then a colon and what is asked of it as endfloat plan does, each as key=value;
labour=16h charges hours at the workshop's rate. Without any, the plan is as booked. What else stands on the offer is
said with endfloat workshop. The owner's word is noted with endfloat do JOB note-agreement. Exit code 1 when it cannot be made.`,
  options: [
    ...signingOptions,
    { name: 'plan', value: 'TITLE', many: true, says: 'a plan to offer, up to three times' },
    { name: 'valid-days', value: 'N', says: 'days that it holds, else as the workshop says' },
    { name: 'to', value: 'PATH', says: 'where to write the page, else offer-JOB-N.html here' },
  ],
  words: [1, 3],
  run: (given) =>
    inJob<Outcome>(given, async (found, store) => {
      const [, way = 'show'] = given.words;
      switch (way) {
        case 'make':
          return make(given, store, found);
        case 'show':
          return show(given, found);
        case 'page':
          return page(given, found);
        default:
          return refuse(
            `an offer cannot be asked to ${plain(way)}`,
            'endfloat offer',
            didYouMean(way, ways, `write one of ${ways.join(', ')}`),
          );
      }
    }),
};
