/** @module Offers over HTTP: the page at the link that the owner has, its answer without a script, the page to print. */
import { timingSafeEqual } from 'node:crypto';
import { type Context, Hono } from 'hono';
import { v7 } from 'uuid';
import type { Job, OpenJob } from '../job/job.ts';
import type { Offer } from '../job/offer.ts';
import { offerPage } from '../record/offer-page.ts';
import type { JournalStore } from '../store/journal-store.ts';
import { keepCommands } from './keep-commands.ts';
import { refusalAnswer } from './refusal-answer.ts';

interface Found {
  readonly job: OpenJob;
  readonly offer: Offer;
}

/** How long a guess takes to be refused says nothing of how good it was. */
const sameToken = (one: string, other: string): boolean => {
  const [a, b] = [Buffer.from(one), Buffer.from(other)];
  return a.length === b.length && timingSafeEqual(a, b);
};

const offerIn = (job: Job, is: (offer: Offer) => boolean): Found | undefined => {
  const offer = job.kind === 'open' ? job.offers.find(is) : undefined;
  return job.kind === 'open' && offer ? { job, offer } : undefined;
};

/** The same for a job that is not there and for a link that is wrong. */
const noOffer = `<!DOCTYPE html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><title>No offer here</title>
<p>There is no offer at this address. Look whether the whole of the link was copied, or ask the workshop.</p></html>`;

const sentText = (sent: unknown): string => (typeof sent === 'string' ? sent.trim().slice(0, 200) : '');

/** @param now  the time, RFC 3339 in UTC */
export const offerRoutes = (store: JournalStore, now: () => string): Hono => {
  const commands = keepCommands(store);
  const routes = new Hono();

  const linked = async (context: Context): Promise<Found | undefined> => {
    const token = context.req.param('token') ?? '';
    const job = await commands.now(context.req.param('job') ?? '');
    return offerIn(job, (offer) => sameToken(offer.token, token));
  };

  routes.get('/offer/:job/:token', async (context) => {
    const found = await linked(context);
    if (found === undefined) return context.html(noOffer, 404);
    return context.html(offerPage(found.job, found.offer, now(), { address: context.req.path }));
  });

  routes.post('/offer/:job/:token', async (context) => {
    const found = await linked(context);
    if (found === undefined) return context.html(noOffer, 404);
    const sent = await context.req.parseBody();
    const [name, plan] = [sentText(sent.name), sentText(sent.plan)];
    const taken = await commands.take(
      {
        id: v7(),
        job: context.req.param('job'),
        at: now(),
        // Who has the link speaks for the owner; without a name the job refuses it for that.
        actor: name === '' ? found.job.booked.owner : name,
        bench: 'the link of the offer',
        request: {
          kind: 'note agreement',
          name,
          how: 'at the link of the offer',
          offer: { number: found.offer.number, plan: plan.slice(0, 1), by: 'link' },
        },
      },
      found.job.head.sequence,
    );
    // Loaded anew, the page asks and sends nothing again.
    if (taken.kind === 'answer') return context.redirect(context.req.path, 303);
    const after = (await linked(context)) ?? found;
    const answering = { address: context.req.path, refused: taken.refusal, name };
    return context.html(offerPage(after.job, after.offer, now(), answering), 422);
  });

  routes.get('/jobs/:job/offers/:number', async (context) => {
    const number = Number(context.req.param('number'));
    const found = offerIn(await commands.now(context.req.param('job')), (offer) => offer.number === number);
    return found === undefined
      ? refusalAnswer(context, 404, {
          what: 'there is no such offer',
          where: context.req.path,
          remedy: 'choose one from the job’s Decide sheet',
        })
      : context.html(offerPage(found.job, found.offer, now()));
  });

  return routes;
};
