/** @module What every answer carries and every request must show: this program speaks to its own pages alone. */
import type { Context, MiddlewareHandler, Next } from 'hono';
import { bodyLimit } from 'hono/body-limit';
import { secureHeaders } from 'hono/secure-headers';
import { refusalAnswer } from './refusal-answer.ts';

/** An engine type file of two megabytes, and what comes round it. */
const mostBytes = 4_000_000;

/** Names under which this machine calls itself; another name in `Host` is a page elsewhere that was pointed here. */
const ownNames = new Set(['localhost', '127.0.0.1', '[::1]']);

const nameOf = (host: string): string => host.replace(/:\d+$/, '').toLowerCase();

const ownHost: MiddlewareHandler = async (context, next) => {
  if (ownNames.has(nameOf(context.req.header('host') ?? ''))) return next();
  return refusalAnswer(context, 403, {
    what: 'Endfloat answers on this machine only, under its own name',
    where: context.req.header('host') ?? 'no host',
    remedy: 'open it as http://127.0.0.1 with the port that was printed',
  });
};

/** The page at an offer's link is answered by a form, so that it works without a script. */
const offerLink = /^\/offer\/[^/]+\/[^/]+$/;

const isForm = (context: Context): boolean =>
  offerLink.test(context.req.path) &&
  /^application\/x-www-form-urlencoded\b/i.test(context.req.header('content-type') ?? '');

const changes = (method: string): boolean => method !== 'GET' && method !== 'HEAD';

/** Pictures come as they are, everything else as JSON. */
const mayBeSent = (path: string, type: string): boolean =>
  path.startsWith('/api/pictures/')
    ? /^image\/(jpeg|png|webp)$/i.test(type)
    : /^application\/json\b/i.test(type);

/** A page from elsewhere may not write: browsers say where a request comes from, and ask before sending JSON or a picture. */
const ownPages: MiddlewareHandler = async (context, next) => {
  if (!changes(context.req.method)) return next();
  const origin = context.req.header('origin');
  const form = isForm(context);
  // Any page can send a form without being asked: it must say that it comes from here.
  if ((origin !== undefined || form) && origin !== `http://${context.req.header('host')}`)
    return refusalAnswer(context, 403, {
      what: 'a page from elsewhere tried to write',
      where: origin ?? 'a page that does not say where it is from',
      remedy: 'work in the page that Endfloat itself serves',
    });
  if (!form && !mayBeSent(context.req.path, context.req.header('content-type') ?? ''))
    return refusalAnswer(context, 415, {
      what: 'what was sent is neither JSON nor, where a picture belongs, a picture',
      where: context.req.path,
      remedy: 'send it as application/json; a picture as image/jpeg, image/png or image/webp',
    });
  return next();
};

const tooLarge = (context: Context) =>
  refusalAnswer(context, 413, {
    what: 'what was sent is too large',
    where: context.req.path,
    remedy: `send at most ${mostBytes / 1_000_000} MB at once`,
  });

const headers = secureHeaders({
  contentSecurityPolicy: {
    defaultSrc: ["'self'"],
    // The solver is WebAssembly.
    scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
    // Drawings and accessible components set positions in style attributes.
    styleSrc: ["'self'", "'unsafe-inline'"],
    imgSrc: ["'self'", 'data:', 'blob:'],
    fontSrc: ["'self'", 'data:'],
    workerSrc: ["'self'", 'blob:'],
    connectSrc: ["'self'"],
    objectSrc: ["'none'"],
    baseUri: ["'none'"],
    formAction: ["'self'"],
    frameAncestors: ["'none'"],
  },
  // Plain HTTP on the loopback address: nothing to promise for the future.
  strictTransportSecurity: false,
  referrerPolicy: 'no-referrer',
});

const paper = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

const stricterPolicies: readonly (readonly [RegExp, string])[] = [
  // Record and offer stand alone: nothing is loaded into them and nothing in them runs; the app may show them in a frame.
  [/^\/jobs\/[^/]+\/(record$|offers\/)/, `${paper}; frame-ancestors 'self'`],
  // What the owner has of an offer is answered here, and stands in no frame.
  [offerLink, `${paper}; base-uri 'none'; form-action 'self'; frame-ancestors 'none'`],
  // Opened by itself, a picture is a picture and nothing more.
  [/^\/api\/pictures\//, "default-src 'none'; sandbox; frame-ancestors 'none'"],
];

const stricter: MiddlewareHandler = async (context, next) => {
  await next();
  const policy = stricterPolicies.find(([path]) => path.test(context.req.path))?.[1];
  if (policy !== undefined) context.res.headers.set('content-security-policy', policy);
};

/** Without it a browser hides where the form of an offer comes from; nobody but this program hears it. */
const offer: MiddlewareHandler = async (context, next) => {
  await next();
  if (offerLink.test(context.req.path)) context.res.headers.set('referrer-policy', 'same-origin');
};

/** In the order in which they are asked, and the other way round for answers. */
export const guards: readonly MiddlewareHandler[] = [
  stricter,
  offer,
  headers,
  ownHost,
  ownPages,
  bodyLimit({ maxSize: mostBytes, onError: tooLarge }),
  async (context: Context, next: Next) => {
    await next();
    if (!context.res.headers.has('cache-control')) context.res.headers.set('cache-control', 'no-store');
  },
];
