/** @module A served workshop for tests: asks over HTTP without a network, with a small browser app on its disk. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Request as Asked, Command, RequestOf } from '../../src/job/command.ts';
import type { JobEvent } from '../../src/job/event.ts';
import type { Refusal } from '../../src/quantity/refusal.ts';
import { serverApp } from '../../src/server/app.ts';
import type { Store } from '../../src/store/sql-store.ts';
import { openSqliteStore } from '../../src/store/sqlite-store.ts';
import { micrometer, mm } from '../job/bench.ts';

export const host = '127.0.0.1:4810';
export const job = '0195a1b2-0000-7000-8000-0000000000ff';

export const reading: RequestOf<'take reading'> = {
  kind: 'take reading',
  cell: { place: 'main.1', characteristic: 'main-journal-diameter', plane: '', axis: 'vertical' },
  typed: mm('49.980'),
  instrument: micrometer.name,
};

type Headers = Readonly<Record<string, string>>;

export interface Desk {
  readonly store: Store;
  /** Where the browser app is. */
  readonly webFolder: string;
  /** What the program was told of its own faults. */
  readonly faults: readonly unknown[];
  readonly get: (path: string, headers?: Headers) => Promise<Response>;
  readonly post: (path: string, body: unknown, headers?: Headers) => Promise<Response>;
  readonly put: (path: string, bytes: Uint8Array, headers?: Headers) => Promise<Response>;
  readonly send: (request: Asked, after?: number) => Promise<Response>;
  /** Another program that serves the same store, or one that stands in for it. */
  readonly beside: (store?: Partial<Store>, webFolder?: string) => Desk;
  readonly close: () => Promise<void>;
}

const makeWeb = (): string => {
  const web = mkdtempSync(join(tmpdir(), 'endfloat-web-'));
  mkdirSync(join(web, 'assets'));
  writeFileSync(join(web, 'index.html'), '<!doctype html><title>the app</title>');
  writeFileSync(join(web, 'assets', 'main-ab12.js'), 'export {};');
  return web;
};

let commands = 0;

/** A request as a command with an id of its own. */
export const command = (request: Asked): Command => {
  commands += 1;
  return {
    id: `0195a1b2-0000-7000-8000-${String(commands).padStart(12, '0')}`,
    job,
    at: '2026-03-02T08:00:00.000Z',
    actor: 'Ilse Quarrow',
    bench: 'bench 2',
    request,
  };
};

const deskOn = (store: Store, webFolder: string, now?: () => string): Desk => {
  const faults: unknown[] = [];
  const app = serverApp({ store, webFolder, fault: (error) => faults.push(error), ...(now && { now }) });
  const post = async (path: string, body: unknown, headers: Headers = {}) =>
    app.request(`http://${host}${path}`, {
      method: 'POST',
      headers: { host, 'content-type': 'application/json', ...headers },
      body: typeof body === 'string' ? body : JSON.stringify(body),
    });
  return {
    store,
    webFolder,
    faults,
    get: async (path, headers = {}) =>
      app.request(`http://${host}${path}`, { headers: { host, ...headers } }),
    post,
    put: async (path, bytes, headers = {}) =>
      app.request(`http://${host}${path}`, {
        method: 'PUT',
        headers: { host, ...headers },
        body: Uint8Array.from(bytes),
      }),
    send: (request, after = 0) => post(`/api/jobs/${job}/commands`, { command: command(request), after }),
    beside: (other = {}, folder = webFolder) => deskOn({ ...store, ...other }, folder, now),
    close: async () => {
      await store.close();
      rmSync(webFolder, { recursive: true });
    },
  };
};

/** @param now  what the server takes for the time, else the machine's */
export const openDesk = async (now?: () => string): Promise<Desk> =>
  deskOn(await openSqliteStore(':memory:'), makeWeb(), now);

export const eventsOf = async (answer: Response): Promise<readonly JobEvent[]> =>
  ((await answer.json()) as { readonly events: readonly JobEvent[] }).events;

export const refusalOf = async (answer: Response): Promise<Refusal> =>
  ((await answer.json()) as { readonly refusal: Refusal }).refusal;
