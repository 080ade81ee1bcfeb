/** @module The register of instruments over HTTP: instruments as they stand, its journal, commands, what is in question. */
import { Hono } from 'hono';
import { z } from 'zod';
import { registerId } from '../register/event.ts';
import { readRegisterCommand } from '../register/read.ts';
import { inUse } from '../register/register.ts';
import type { JournalStore } from '../store/journal-store.ts';
import { inQuestionNow } from '../store/register-now.ts';
import { afterAsked } from './after-asked.ts';
import { keepRegister } from './keep-commands.ts';
import { readBody } from './read-body.ts';
import { refusalAnswer } from './refusal-answer.ts';

const sent = z.object({ command: z.unknown(), after: z.int().min(0).default(0) });

export const registerRoutes = (store: JournalStore): Hono => {
  const commands = keepRegister(store);
  const routes = new Hono();

  routes.get('/api/instruments', async (context) =>
    context.json({ instruments: inUse(await commands.now(registerId)) }),
  );

  routes.get('/api/register/events', async (context) => {
    const after = afterAsked(context);
    return after.kind === 'refused'
      ? refusalAnswer(context, 422, after.refusal)
      : context.json({ events: await store.register.readFrom(registerId, after.value) });
  });

  routes.post('/api/register/commands', async (context) => {
    const body = await readBody(context, sent);
    if (body.kind === 'refused') return refusalAnswer(context, 422, body.refusal);
    const command = readRegisterCommand(body.value.command);
    if (command.kind === 'refused') return refusalAnswer(context, 422, command.refusal);
    const taken = await commands.take(command.value, body.value.after);
    return taken.kind === 'refused'
      ? refusalAnswer(context, 422, taken.refusal)
      : context.json({ events: taken.value });
  });

  routes.get('/api/register/in-question', async (context) =>
    context.json({ instruments: await inQuestionNow(store, await commands.now(registerId)) }),
  );

  return routes;
};
