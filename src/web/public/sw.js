/** @module Keeps the app itself in the browser, so that a page loads anew without the network. Journals are kept elsewhere. */

const shelf = 'endfloat app';
const page = '/index.html';

/** Papers stand alone and are no places in the app: the server writes each as it is asked for. */
const paper =
  /^\/jobs\/[^/]+\/(record|blank-sheet|offers\/\d+)$|^\/engine-types\/[^/]+\/blank-sheet$|^\/offer\//;

/** Keeps the page; a new one means a new build, whose parts have other names, so the old parts go. */
const keepPage = async (answer) => {
  const cache = await caches.open(shelf);
  const before = await (await cache.match(page))?.text();
  const now = await answer.clone().text();
  if (before !== undefined && before !== now) for (const kept of await cache.keys()) await cache.delete(kept);
  await cache.put(page, answer);
};

const pageFor = async (request) => {
  try {
    const answer = await fetch(request);
    if (answer.ok) await keepPage(answer.clone());
    return answer;
  } catch (unreachable) {
    const kept = await caches.match(page);
    if (kept) return kept;
    throw unreachable;
  }
};

/** Parts are named after their content and never change. */
const partFor = async (request) => {
  const kept = await caches.match(request);
  if (kept) return kept;
  const answer = await fetch(request);
  if (answer.ok) await (await caches.open(shelf)).put(request, answer.clone());
  return answer;
};

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

self.addEventListener('fetch', (event) => {
  const { pathname, origin } = new URL(event.request.url);
  if (event.request.method !== 'GET' || origin !== self.location.origin) return;
  if (event.request.mode === 'navigate' && !paper.test(pathname) && !pathname.startsWith('/api'))
    event.respondWith(pageFor(event.request));
  else if (pathname.startsWith('/assets/') || pathname === '/icon.svg')
    event.respondWith(partFor(event.request));
});

/** What a page had fetched before this worker stood behind it. */
self.addEventListener('message', (event) => {
  const parts = event.data.filter((address) => new URL(address).pathname.startsWith('/assets/'));
  const work = [pageFor(new Request(page)), ...parts.map((address) => partFor(new Request(address)))];
  event.waitUntil(Promise.allSettled(work));
});
