/** @module Checks a record: the chain of its journal, decisions and figures computed again, and every picture and line of its page. */

import type { JobEvent } from '../job/event.ts';
import { blankJob, evolve, replay } from '../job/evolve.ts';
import type { Job, OpenJob } from '../job/job.ts';
import type { OfferedPlan } from '../job/offer.ts';
import { oneUseLines } from '../job/order/one-use-lines.ts';
import {
  acceptLineTrouble,
  noteCertificateTrouble,
  receiveDeliveryTrouble,
  sendBackTrouble,
} from '../job/rules/delivery.ts';
import { makeOfferTrouble, noteAgreementTrouble } from '../job/rules/offer.ts';
import { placeOrderTrouble } from '../job/rules/order.ts';
import { choosePlanTrouble } from '../job/rules/plan.ts';
import { takeReadingTrouble } from '../job/rules/reading.ts';
import {
  beginRunStepTrouble,
  noteFaultTrouble,
  putFaultRightTrouble,
  strikeOutRunReadingTrouble,
  takeRunReadingTrouble,
} from '../job/rules/run.ts';
import { sumTrouble } from '../job/rules/sum.ts';
import { readEvents } from '../job/upcast.ts';
import { checkChain } from '../journal/chain.ts';
import type { Trouble } from '../journal/trouble.ts';
import { checkPicture } from '../picture/picture.ts';
import { type Answer, answer, type Refusal, refuse } from '../quantity/refusal.ts';
import { type Figures, figuresOf } from './figures.ts';
import { type Held, heldIn } from './held.ts';
import type { PicturesHeld } from './picture-figures.ts';
import { pageOf, recordOf } from './record.ts';
import { recordPictures } from './sections/pictures.ts';

export type Verified =
  | {
      readonly kind: 'verified';
      readonly job: OpenJob;
      readonly events: readonly JobEvent[];
      /** How many figures were computed again and found the same. */
      readonly figures: number;
      /** The pictures inside, each as the journal has it. */
      readonly pictures: PicturesHeld;
      /** Those that the journal names and the file does not hold, in words. */
      readonly missing: readonly string[];
    }
  | { readonly kind: 'not verified'; readonly refusal: Refusal };

const distrust = 'do not rely on this record; ask for it again from where it was made';

/** What the journal itself gives. */
const jobOf = (journal: readonly unknown[]): Answer<{ job: OpenJob; events: readonly JobEvent[] }> => {
  const events = readEvents(journal);
  if (events.kind === 'refused') return events;
  // The hashes are over the text as it was written, before an older version is read into what it means now.
  const chain = checkChain(journal as readonly JobEvent[]);
  if (chain.kind === 'refused') return chain;
  const job = replay(events.value);
  if (job.kind === 'open') return answer({ job, events: events.value });
  return job.kind === 'unreadable'
    ? { kind: 'refused', refusal: job.why }
    : refuse('the journal is empty', 'journal', distrust);
};

const differing = (computed: Figures, shown: Figures): Answer<void> => {
  for (const [name, figure] of Object.entries(computed)) {
    const other = Object.hasOwn(shown, name) ? shown[name] : undefined;
    if (other === undefined)
      return refuse(`a figure is missing: the journal gives ${figure}`, name, distrust);
    if (other !== figure)
      return refuse(`the record shows ${other}, the journal gives ${figure}`, name, distrust);
  }
  const extra = Object.keys(shown).find((name) => !Object.hasOwn(computed, name));
  return extra === undefined
    ? answer(undefined)
    : refuse(`the record shows ${shown[extra]}, which the journal does not give`, extra, distrust);
};

const pageDiffers = (shown: string, computed: string): Answer<void> => {
  if (shown === computed) return answer(undefined);
  const lines = shown.split('\n');
  const at = computed.split('\n').findIndex((line, index) => line !== lines[index]);
  const line = at < 0 ? lines.length : at + 1;
  const words = (lines[line - 1] ?? '')
    .replace(/<[^>]*>/g, ' ')
    .trim()
    .slice(0, 80);
  return refuse(
    `the page does not show what the journal gives${words === '' ? '' : `: ${words}`}`,
    `line ${line} of the page`,
    distrust,
  );
};

/** An offer that was made before one-use items were priced says nothing of them. */
const asPriced = (job: OpenJob, plans: readonly OfferedPlan[]): readonly OfferedPlan[] =>
  plans.map((plan) => ({ ...plan, oneUse: plan.oneUse ?? oneUseLines(job, plan.choices) }));

/** What a decision was asked with, and what is said where it was not to be had. */
const redecided = (job: OpenJob, { fact, at }: JobEvent): { what: string; trouble: Trouble } | undefined => {
  switch (fact.kind) {
    case 'plan chosen':
      return {
        what: 'the plan is not one that its readings give',
        trouble: choosePlanTrouble(job, { ...fact, kind: 'choose plan' }),
      };
    case 'offer made':
      return {
        what: 'the offer is not one that its readings give',
        trouble: makeOfferTrouble(job, { ...fact, plans: asPriced(job, fact.plans), kind: 'make offer' }, at),
      };
    case 'owner agreed':
      return {
        what: 'the owner could not agree to it',
        trouble: noteAgreementTrouble(job, { ...fact, kind: 'note agreement' }, at),
      };
    case 'order placed':
      return {
        what: 'the order is not one that the agreed plan gives',
        trouble: placeOrderTrouble(job, { ...fact, kind: 'place order' }),
      };
    case 'delivery received':
      return {
        what: 'this could not be received',
        trouble: receiveDeliveryTrouble(job, { ...fact, kind: 'receive delivery' }),
      };
    case 'certificate noted':
      return {
        what: 'this certificate could not be noted',
        trouble: noteCertificateTrouble(job, { ...fact, kind: 'note certificate' }),
      };
    case 'line sent back':
      return {
        what: 'this could not be sent back',
        trouble: sendBackTrouble(job, { ...fact, kind: 'send back' }),
      };
    case 'line accepted':
      return {
        what: 'this could not be taken in as it is',
        trouble: acceptLineTrouble(job, { ...fact, kind: 'accept line' }),
      };
    case 'sum noted':
      return {
        what: 'this sum does not come of what its readings give',
        trouble: sumTrouble(job, { ...fact, kind: 'note sum' }),
      };
    case 'reading taken':
      return {
        what: 'this could not be read so',
        trouble: takeReadingTrouble(job, { ...fact, kind: 'take reading' }),
      };
    case 'run step begun':
      return {
        what: 'this step could not be begun',
        trouble: beginRunStepTrouble(job, { ...fact, kind: 'begin run step' }),
      };
    case 'run reading taken':
      return {
        what: 'this could not be read so',
        trouble: takeRunReadingTrouble(job, { ...fact, kind: 'take run reading' }),
      };
    case 'run reading struck out':
      return {
        what: 'this reading could not be struck out',
        trouble: strikeOutRunReadingTrouble(job, { ...fact, kind: 'strike out run reading' }),
      };
    case 'fault noted':
      return {
        what: 'this fault could not be noted so',
        trouble: noteFaultTrouble(job, { ...fact, kind: 'note fault' }),
      };
    case 'fault put right':
      return {
        what: 'this fault could not be put right so',
        trouble: putFaultRightTrouble(job, { ...fact, kind: 'put fault right' }),
      };
    default:
      return undefined;
  }
};

/**
 * Each plan chosen or offered must have been open on the readings as they then stood, its sums those of its choices,
 * each agreement one to a plan or an offer that stood, each order one of what that plan needs, and each delivery one of
 * what was ordered.
 */
const decisionsHold = (events: readonly JobEvent[]): Answer<void> => {
  let before: Job = blankJob;
  for (const event of events) {
    const found = before.kind === 'open' ? redecided(before, event) : undefined;
    if (found?.trouble)
      return refuse(`${found.what}: ${found.trouble.what}`, `event ${event.sequence}`, distrust);
    before = evolve(before, event);
  }
  return answer(undefined);
};

/** Each picture inside must be one of the journal's, unchanged; answers with those that are not inside. */
const picturesHold = (job: OpenJob, held: PicturesHeld): Answer<readonly string[]> => {
  const shown = recordPictures(job);
  const strange = [...held.keys()].find((hash) => !shown.some((one) => one.hash === hash));
  if (strange !== undefined)
    return refuse('a picture stands in it that the journal does not name', strange, distrust);
  for (const { hash, number, of } of shown) {
    const bytes = held.get(hash);
    const checked = bytes && checkPicture(hash, bytes);
    if (checked?.kind === 'refused')
      return refuse(`picture ${number} is not the one that was taken: it has been changed`, of, distrust);
  }
  return answer(
    shown.filter(({ hash }) => !held.has(hash)).map(({ number, of }) => `picture ${number}, ${of}`),
  );
};

const check = (held: Held): Answer<Omit<Extract<Verified, { kind: 'verified' }>, 'kind'>> => {
  const read = jobOf(held.journal);
  if (read.kind === 'refused') return read;
  const { job, events } = read.value;
  const decisions = decisionsHold(events);
  if (decisions.kind === 'refused') return decisions;
  const computed = figuresOf(recordOf(job, events));
  const figures = differing(computed, held.figures);
  if (figures.kind === 'refused') return figures;
  const pictures = picturesHold(job, held.pictures);
  if (pictures.kind === 'refused') return pictures;
  const page =
    held.page === undefined
      ? answer(undefined)
      : pageDiffers(held.page, pageOf(job, events, held.pictures, held.journal));
  if (page.kind === 'refused') return page;
  return answer({
    job,
    events,
    figures: Object.keys(computed).length,
    pictures: held.pictures,
    missing: pictures.value,
  });
};

/**
 * Verifies a record page or an exported file.
 *
 * A forger who computes the whole chain anew is not found out by the file alone: hold its last hash against the
 * one printed on the signed paper.
 */
export const verifyRecord = (text: string): Verified => {
  const held = heldIn(text);
  const checked = held.kind === 'refused' ? held : check(held.value);
  return checked.kind === 'refused'
    ? { kind: 'not verified', refusal: checked.refusal }
    : { kind: 'verified', ...checked.value };
};
