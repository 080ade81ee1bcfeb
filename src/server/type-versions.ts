/** @module Versions of an engine type over HTTP: all of them, the next one, the second person's check, the blank sheet. */
import { type Context, Hono } from 'hono';
import { z } from 'zod';
import { nextVersion } from '../engine/edit/new-version.ts';
import { type FigureApart, secondCheck } from '../engine/edit/second-check.ts';
import type { Trouble } from '../engine/trouble.ts';
import { readCheckedType } from '../job/sum/checked-engine-type.ts';
import type { Refusal } from '../quantity/refusal.ts';
import { measuringSheet } from '../record/measuring-sheet.ts';
import type { Shelf, ShelvedType } from '../store/shelf.ts';
import { readBody } from './read-body.ts';
import { refusalAnswer } from './refusal-answer.ts';

const name = z.string().max(400);
const edited = z.object({ text: z.string(), after: z.int().min(1), by: name });
const figures = z.array(z.object({ at: name, reads: z.string().max(100) })).max(5000);
const checking = z.object({ after: z.int().min(1), by: name, figures });

const noType = (id: string): Refusal => ({
  what: 'there is no such engine type on the shelf',
  where: id.slice(0, 64),
  remedy: 'choose one of the list of engine types',
});

const notNewest = (newest: ShelvedType): Refusal => ({
  what: `version ${newest.version} has been put on the shelf meanwhile`,
  where: newest.id,
  remedy: 'look at what changed, and make your change to that version',
});

/** Of an engine type that cannot be used: the worst, with where all of them stand beside it. */
export const typeRefusal = (troubles: readonly Trouble[]): Refusal => {
  const worst = troubles.find(({ weight }) => weight === 'error');
  return {
    what: `the engine type has an error: ${worst?.what ?? 'it is empty'}`,
    where: `line ${worst?.line ?? 1}`,
    remedy: worst?.remedy ?? 'send a whole engine type file',
  };
};

export const typeVersionRoutes = (shelf: Shelf, today: () => string): Hono => {
  const routes = new Hono();

  const versionsOf = (context: Context) => shelf.engineTypeVersions(context.req.param('id') ?? '');

  /** Puts a text on the shelf as the version that it names, unless somebody was quicker. */
  const add = async (context: Context, newest: ShelvedType, text: string, others: object = {}) => {
    const { engine, troubles } = readCheckedType(text);
    if (engine === undefined) return context.json({ refusal: typeRefusal(troubles), troubles }, 422);
    const { id, title, version } = engine;
    if (!(await shelf.addEngineType({ id, title, version, text })))
      return refusalAnswer(context, 409, notNewest({ ...newest, version }));
    return context.json({ engineType: { id, title, version, text }, troubles, ...others }, 201);
  };

  routes.get('/api/engine-types/:id/versions', async (context) => {
    const versions = await versionsOf(context);
    return versions.length === 0
      ? refusalAnswer(context, 404, noType(context.req.param('id')))
      : context.json({ versions });
  });

  /** Answers 201 with the version, 409 where somebody was quicker, 422 with every trouble. Jobs keep theirs. */
  routes.post('/api/engine-types/:id/versions', async (context) => {
    const body = await readBody(context, edited);
    if (body.kind === 'refused') return refusalAnswer(context, 422, body.refusal);
    const [newest] = await versionsOf(context);
    if (!newest) return refusalAnswer(context, 404, noType(context.req.param('id')));
    if (newest.version !== body.value.after) return refusalAnswer(context, 409, notNewest(newest));
    // Told by the lines of what was sent, before anything is written into it.
    const { engine, troubles } = readCheckedType(body.value.text);
    if (engine === undefined) return context.json({ refusal: typeRefusal(troubles), troubles }, 422);
    const signed = { by: body.value.by.trim(), on: today() };
    const text = nextVersion(newest.text, body.value.text, signed);
    return text.kind === 'refused'
      ? refusalAnswer(context, 422, text.refusal)
      : add(context, newest, text.value);
  });

  /** Holds critical figures, typed in unseen, against the newest version; what comes of it is the next version. */
  routes.post('/api/engine-types/:id/check', async (context) => {
    const body = await readBody(context, checking);
    if (body.kind === 'refused') return refusalAnswer(context, 422, body.refusal);
    const [newest] = await versionsOf(context);
    if (!newest) return refusalAnswer(context, 404, noType(context.req.param('id')));
    if (newest.version !== body.value.after) return refusalAnswer(context, 409, notNewest(newest));
    const typed = new Map(body.value.figures.map(({ at, reads }) => [at, reads]));
    const checked = secondCheck(newest.text, typed, { by: body.value.by.trim(), on: today() });
    if (checked.kind === 'refused') return refusalAnswer(context, 422, checked.refusal);
    const apart: readonly FigureApart[] = checked.value.kind === 'differs' ? checked.value.apart : [];
    return add(context, newest, checked.value.text, { apart });
  });

  routes.get('/engine-types/:id/blank-sheet', async (context) => {
    const versions = await versionsOf(context);
    const asked = context.req.query('version');
    const shelved = versions.find(({ version }) => asked === undefined || String(version) === asked);
    const { engine } = shelved ? readCheckedType(shelved.text) : {};
    return engine
      ? context.html(measuringSheet(engine))
      : refusalAnswer(context, 404, noType(context.req.param('id')));
  });

  return routes;
};
