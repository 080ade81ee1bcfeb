/** @module The workshop over HTTP: what can be asked, of whatever store it is given. */
import { Hono } from 'hono';
import { Refused } from '../store/refused.ts';
import type { Store } from '../store/sql-store.ts';
import { guards } from './guard.ts';
import { jobRoutes } from './jobs.ts';
import { offerRoutes } from './offers.ts';
import { pictureRoutes } from './pictures.ts';
import { refusalAnswer } from './refusal-answer.ts';
import { registerRoutes } from './register.ts';
import { shelfRoutes } from './shelf.ts';
import { typeVersionRoutes } from './type-versions.ts';
import { webFiles } from './web-files.ts';

export interface ServerParts {
  readonly store: Store;
  /** Where the built browser app is. */
  readonly webFolder: string;
  /** The time, RFC 3339 in UTC; else the machine's. */
  readonly now?: () => string;
  /** Told of faults in the program, for whoever runs it; the asker gets no details. */
  readonly fault?: (error: unknown) => void;
}

/** How a client, or a second start on the same port, knows whom it has before it. */
export const programName = 'endfloat';

/** In UTC, as everything that is written down. */
const machineTime = (): string => new Date().toISOString();

export const serverApp = ({ store, webFolder, fault, now = machineTime }: ServerParts): Hono => {
  const app = new Hono();
  app.use(...guards);
  app.get('/api', (context) => context.json({ program: programName }));
  app.route('/', jobRoutes(store));
  app.route('/', pictureRoutes(store));
  app.route('/', shelfRoutes(store));
  app.route(
    '/',
    typeVersionRoutes(store, () => now().slice(0, 10)),
  );
  app.route('/', registerRoutes(store));
  app.route('/', offerRoutes(store, now));
  app.all('/api/*', (context) =>
    refusalAnswer(context, 404, {
      what: `${context.req.method} ${context.req.path} is nothing that can be asked`,
      where: 'address',
      remedy: 'see docs/addresses.md',
    }),
  );
  app.route('/', webFiles(webFolder));
  app.onError((error, context) => {
    if (error instanceof Refused) return refusalAnswer(context, 503, error.refusal);
    fault?.(error);
    return refusalAnswer(context, 500, {
      what: 'a fault in the program',
      where: context.req.path,
      remedy: 'try again; if it comes back, report what you did',
    });
  });
  return app;
};
