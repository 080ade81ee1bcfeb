/** @module Jobs over HTTP: the list, the journal, commands, the record. */
import { type Context, Hono } from 'hono';
import { z } from 'zod';
import type { JobEvent } from '../job/event.ts';
import { replay } from '../job/evolve.ts';
import type { OpenJob } from '../job/job.ts';
import { readCommand } from '../job/read-command.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { measuringSheet } from '../record/measuring-sheet.ts';
import { fileOf, pageOf } from '../record/record.ts';
import { formerOverhauls } from '../store/former-overhauls.ts';
import type { JournalStore } from '../store/journal-store.ts';
import { type Pictures, picturesOf, pictureTrouble } from '../store/pictures.ts';
import { afterAsked } from './after-asked.ts';
import { keepCommands } from './keep-commands.ts';
import { readBody } from './read-body.ts';
import { refusalAnswer } from './refusal-answer.ts';

const sent = z.object({ command: z.unknown(), after: z.int().min(0).default(0) });

const openJob = async (
  store: JournalStore,
  id: string,
): Promise<Answer<{ readonly job: OpenJob; readonly events: readonly JobEvent[] }>> => {
  const events = await store.readFrom(id, 0);
  const job = replay(events);
  switch (job.kind) {
    case 'open':
      return answer({ job, events });
    case 'unreadable':
      return { kind: 'refused', refusal: job.why };
    case 'blank':
      return refuse('there is no such job', id, 'choose one from the jobs list');
    default:
      return job satisfies never;
  }
};

/** A name that any disk takes. */
const fileName = (number: string): string => `job-${number.replace(/[^A-Za-z0-9-]+/g, '-')}.json`;

const sendRecord = async (
  context: Context,
  store: JournalStore,
  write: (job: OpenJob, events: readonly JobEvent[]) => Response | Promise<Response>,
): Promise<Response> => {
  const found = await openJob(store, context.req.param('job') ?? '');
  return found.kind === 'refused'
    ? refusalAnswer(context, 404, found.refusal)
    : write(found.value.job, found.value.events);
};

export const jobRoutes = (store: JournalStore & Pictures): Hono => {
  const commands = keepCommands(store);
  const routes = new Hono();

  routes.get('/api/jobs', async (context) => context.json({ jobs: await store.list() }));

  routes.get('/api/former-overhauls', async (context) => {
    const { engine = '', plate = '', but = '' } = context.req.query();
    return context.json({ former: await formerOverhauls(store, { engine, plate }, but) });
  });

  routes.get('/api/jobs/:job/events', async (context) => {
    const after = afterAsked(context);
    return after.kind === 'refused'
      ? refusalAnswer(context, 422, after.refusal)
      : context.json({ events: await store.readFrom(context.req.param('job'), after.value) });
  });

  routes.post('/api/jobs/:job/commands', async (context) => {
    const body = await readBody(context, sent);
    if (body.kind === 'refused') return refusalAnswer(context, 422, body.refusal);
    const command = readCommand(body.value.command);
    if (command.kind === 'refused') return refusalAnswer(context, 422, command.refusal);
    if (command.value.job !== context.req.param('job'))
      return refusalAnswer(context, 422, {
        what: 'the command is for another job than its address',
        where: command.value.job,
        remedy: 'send it to its own job',
      });
    const lacking = await pictureTrouble(store, command.value.request);
    if (lacking !== undefined) return refusalAnswer(context, 422, lacking);
    const taken = await commands.take(command.value, body.value.after);
    return taken.kind === 'refused'
      ? refusalAnswer(context, 422, taken.refusal)
      : context.json({ events: taken.value });
  });

  routes.get('/jobs/:job/record', (context) =>
    sendRecord(context, store, async (job, events) =>
      context.html(pageOf(job, events, await picturesOf(store, job))),
    ),
  );

  routes.get('/jobs/:job/blank-sheet', (context) =>
    sendRecord(context, store, ({ booked, sheet }) =>
      context.html(
        measuringSheet(sheet.engine, { job: booked.number, plate: booked.plate, owner: booked.owner }),
      ),
    ),
  );

  routes.get('/api/jobs/:job/record-file', (context) =>
    sendRecord(context, store, async (job, events) => {
      context.header('content-type', 'application/json; charset=utf-8');
      context.header('content-disposition', `attachment; filename="${fileName(job.booked.number)}"`);
      return context.body(fileOf(job, events, await picturesOf(store, job)));
    }),
  );

  return routes;
};
