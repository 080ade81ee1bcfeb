/** @module Pictures over HTTP: put before anything is said of them, had by hash. */
import { Hono } from 'hono';
import { checkPicture } from '../picture/picture.ts';
import type { Pictures } from '../store/pictures.ts';
import { refusalAnswer } from './refusal-answer.ts';

export const pictureRoutes = (store: Pictures): Hono => {
  const routes = new Hono();

  routes.put('/api/pictures/:hash', async (context) => {
    const bytes = new Uint8Array(await context.req.arrayBuffer());
    const put = await store.putPicture(context.req.param('hash'), bytes);
    return put.kind === 'refused'
      ? refusalAnswer(context, 422, put.refusal)
      : context.json({ picture: context.req.param('hash') }, 201);
  });

  routes.get('/api/pictures/:hash', async (context) => {
    const hash = context.req.param('hash');
    const bytes = await store.picture(hash);
    // What it is comes from its content, and what the disk has spoilt is not given out.
    const checked = bytes && checkPicture(hash, bytes);
    if (checked?.kind !== 'answer')
      return refusalAnswer(
        context,
        404,
        checked?.refusal ?? {
          what: 'there is no such picture here',
          where: `picture ${hash.slice(0, 12)}`,
          remedy: 'it comes with the bench that took it, once that bench reaches the store',
        },
      );
    return context.body(Uint8Array.from(checked.value.bytes), 200, {
      'content-type': checked.value.picture.mediaType,
      // Bytes under their own hash never change.
      'cache-control': 'private, max-age=31536000, immutable',
    });
  });

  return routes;
};
