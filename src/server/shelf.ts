/** @module The shelf over HTTP: engine types. */
import { Hono } from 'hono';
import { z } from 'zod';
import { readCheckedType } from '../job/sum/checked-engine-type.ts';
import type { Shelf } from '../store/shelf.ts';
import { readBody } from './read-body.ts';
import { refusalAnswer } from './refusal-answer.ts';
import { typeRefusal } from './type-versions.ts';

export const shelfRoutes = (shelf: Shelf): Hono => {
  const routes = new Hono();

  routes.get('/api/engine-types', async (context) =>
    context.json({ engineTypes: await shelf.engineTypes() }),
  );

  /** Answers 201 with what was put there and the linter's warnings, or 422 with every trouble, by line and column. */
  routes.post('/api/engine-types', async (context) => {
    const body = await readBody(context, z.object({ text: z.string() }));
    if (body.kind === 'refused') return refusalAnswer(context, 422, body.refusal);
    const { engine, troubles } = readCheckedType(body.value.text);
    if (engine === undefined) return context.json({ refusal: typeRefusal(troubles), troubles }, 422);
    const { id, title, version } = engine;
    await shelf.putEngineType({ id, title, version, text: body.value.text });
    return context.json({ engineType: { id, title, version }, troubles }, 201);
  });

  return routes;
};
