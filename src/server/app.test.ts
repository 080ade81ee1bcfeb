/** @module The workshop over HTTP: jobs, shelf, door and files. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Hono } from 'hono';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { booking, micrometer, mm } from '../../test/job/bench.ts';
import { checkChain } from '../job/chain.ts';
import type { Request as Asked } from '../job/command.ts';
import type { JobEvent } from '../job/event.ts';
import { Refused } from '../store/refused.ts';
import type { Store } from '../store/sql-store.ts';
import { openSqliteStore } from '../store/sqlite-store.ts';
import { serverApp } from './app.ts';

const web = mkdtempSync(join(tmpdir(), 'endfloat-web-'));
let store: Store;
let app: Hono;
let faults: unknown[];

beforeAll(() => {
  mkdirSync(join(web, 'assets'));
  writeFileSync(join(web, 'index.html'), '<!doctype html><title>the app</title>');
  writeFileSync(join(web, 'assets', 'main-ab12.js'), 'export {};');
});
afterAll(() => rmSync(web, { recursive: true }));
beforeEach(async () => {
  store = await openSqliteStore(':memory:');
  faults = [];
  app = serverApp({ store, webFolder: web, fault: (error) => faults.push(error) });
});
afterEach(() => store.close());

const host = '127.0.0.1:4810';

const get = async (path: string, headers: Record<string, string> = {}) =>
  app.request(`http://${host}${path}`, { headers: { host, ...headers } });

const post = async (path: string, body: unknown, headers: Record<string, string> = {}) =>
  app.request(`http://${host}${path}`, {
    method: 'POST',
    headers: { host, 'content-type': 'application/json', ...headers },
    body: typeof body === 'string' ? body : JSON.stringify(body),
  });

const job = '0195a1b2-0000-7000-8000-0000000000ff';
let commands = 0;
const command = (request: Asked, id?: string) => {
  commands += 1;
  return {
    id: id ?? `0195a1b2-0000-7000-8000-${String(commands).padStart(12, '0')}`,
    job,
    at: '2026-03-02T08:00:00.000Z',
    actor: 'Ilse Quarrow',
    bench: 'bench 2',
    request,
  };
};
const send = (request: Asked, after = 0, id?: string) =>
  post(`/api/jobs/${job}/commands`, { command: command(request, id), after });

const reading: Asked = {
  kind: 'take reading',
  cell: { place: 'main.1', characteristic: 'main-journal-diameter', plane: '', axis: 'vertical' },
  typed: mm('49.980'),
  instrument: micrometer.name,
};

const eventsOf = async (answer: Response): Promise<readonly JobEvent[]> =>
  ((await answer.json()) as { readonly events: readonly JobEvent[] }).events;

const refusalOf = async (answer: Response) =>
  ((await answer.json()) as { readonly refusal: { what: string; where: string; remedy: string } }).refusal;

describe('a job over HTTP', () => {
  it('is booked in, listed and read', async () => {
    const booked = await send(booking);
    expect(booked.status).toBe(200);
    expect(await eventsOf(booked)).toMatchObject([{ sequence: 1, fact: { kind: 'booked in' } }]);
    expect(await (await get('/api/jobs')).json()).toMatchObject({
      jobs: [{ job, number: '26-031', sequence: 1 }],
    });
    expect(await eventsOf(await get(`/api/jobs/${job}/events`))).toHaveLength(1);
    expect(await eventsOf(await get(`/api/jobs/${job}/events?after=1`))).toEqual([]);
  });

  it('answers a command with every event that the bench has not seen, its own last', async () => {
    await send(booking);
    await send({ kind: 'bring instrument', instrument: micrometer }, 1);
    const events = await eventsOf(await send(reading, 1));
    expect(events.map(({ fact }) => fact.kind)).toEqual(['instrument brought', 'reading taken']);
    expect(checkChain(await store.readFrom(job, 0)).kind).toBe('answer');
  });

  it('takes a command once however often it is sent, at once or later', async () => {
    await send(booking);
    await send({ kind: 'bring instrument', instrument: micrometer });
    const once = command(reading);
    const body = { command: once, after: 2 };
    const both = await Promise.all([1, 2, 3].map(() => post(`/api/jobs/${job}/commands`, body)));
    for (const answer of both) expect(await eventsOf(answer)).toMatchObject([{ id: once.id, sequence: 3 }]);
    await send({ ...reading, typed: mm('49.981') });
    const late = await eventsOf(await post(`/api/jobs/${job}/commands`, body));
    expect(late.map(({ sequence }) => sequence)).toEqual([3, 4]);
    expect(await store.readFrom(job, 0)).toHaveLength(4);
  });

  it('takes the commands of sixteen benches at once, one after the other', async () => {
    await send(booking);
    await send({ kind: 'bring instrument', instrument: micrometer });
    const answers = await Promise.all(Array.from({ length: 16 }, () => send(reading)));
    expect(answers.map(({ status }) => status)).toEqual(Array.from({ length: 16 }, () => 200));
    const journal = await store.readFrom(job, 0);
    expect(journal).toHaveLength(18);
    expect(checkChain(journal).kind).toBe('answer');
  });

  it('sees what another program put into the store', async () => {
    await send(booking);
    const beside = serverApp({ store, webFolder: web });
    await beside.request(`http://${host}/api/jobs/${job}/commands`, {
      method: 'POST',
      headers: { host, 'content-type': 'application/json' },
      body: JSON.stringify({
        command: command({ kind: 'bring instrument', instrument: micrometer }),
        after: 1,
      }),
    });
    expect((await send(reading)).status).toBe(200);
  });

  it('refuses in the words of the trade, and writes nothing', async () => {
    await send(booking);
    const answer = await send(reading);
    expect(answer.status).toBe(422);
    expect(await refusalOf(answer)).toMatchObject({
      where: 'main bearing 1, main journal diameter, vertical',
    });
    expect(await store.readFrom(job, 0)).toHaveLength(1);
  });

  it.each([
    ['no JSON', '{"command":'],
    ['no command', { after: 0 }],
    ['half a command', { command: { id: 'a' }, after: 0 }],
    ['a sequence below none', { command: command(booking), after: -1 }],
    ['a command for another job', { command: { ...command(booking), job: 'job-2' }, after: 0 }],
  ])('refuses %s with a remedy', async (_, body) => {
    const answer = await post(`/api/jobs/${job}/commands`, body);
    expect(answer.status).toBe(422);
    expect((await refusalOf(answer)).remedy).not.toBe('');
    expect(await store.list()).toEqual([]);
  });

  it('refuses a sequence that is none', async () => {
    expect((await get(`/api/jobs/${job}/events?after=x`)).status).toBe(422);
  });

  it('gives its record as a page that loads and runs nothing, and as a file', async () => {
    await send(booking);
    const page = await get(`/jobs/${job}/record`);
    expect(page.status).toBe(200);
    expect(page.headers.get('content-security-policy')).toMatch(/^default-src 'none'/);
    expect(await page.text()).toContain('26-031');
    const file = await get(`/api/jobs/${job}/record-file`);
    expect(file.headers.get('content-disposition')).toBe('attachment; filename="job-26-031.json"');
    expect(JSON.parse(await file.text())).toMatchObject({ journal: [{ sequence: 1 }] });
  });

  it('has no record where it is not there', async () => {
    expect((await get('/jobs/none/record')).status).toBe(404);
    expect((await get('/api/jobs/none/record-file')).status).toBe(404);
  });
});

describe('the shelf over HTTP', () => {
  it('takes an engine type and gives it back', async () => {
    const answer = await post('/api/engine-types', { text: booking.engineType });
    expect(answer.status).toBe(201);
    expect(await (await get('/api/engine-types')).json()).toMatchObject({
      engineTypes: [{ id: 'sparrowbill-2', version: 1, text: booking.engineType }],
    });
  });

  it('refuses one with an error, and names every trouble by line', async () => {
    const text = booking.engineType.replace('cylinders: 2', 'cylinders: two');
    const answer = await post('/api/engine-types', { text });
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({
      refusal: { where: 'line 7' },
      troubles: [{ weight: 'error', line: 7 }],
    });
    expect(await store.engineTypes()).toEqual([]);
  });

  it('takes an instrument that makes sense, and no other', async () => {
    expect((await post('/api/instruments', { instrument: micrometer })).status).toBe(201);
    expect(
      (await post('/api/instruments', { instrument: { ...micrometer, resolution: mm('0') } })).status,
    ).toBe(422);
    expect((await post('/api/instruments', { instrument: { name: 'x' } })).status).toBe(422);
    expect(await (await get('/api/instruments')).json()).toEqual({ instruments: [micrometer] });
  });
});

describe('the door', () => {
  it.each(['workshop.example:4810', '127.0.0.1.example', 'localhost.example:4810', '10.0.0.7:4810', ''])(
    'is shut to a page that calls this machine “%s”',
    async (name) => {
      const answer = await get('/api/jobs', { host: name });
      expect(answer.status).toBe(403);
    },
  );

  it.each(['localhost:4810', 'LOCALHOST', '127.0.0.1', '[::1]:4810'])('is open under %s', async (name) => {
    expect((await get('/api/jobs', { host: name })).status).toBe(200);
  });

  it('is shut to a page from elsewhere that writes', async () => {
    const body = { command: command(booking), after: 0 };
    const path = `/api/jobs/${job}/commands`;
    expect((await post(path, body, { origin: 'http://elsewhere.example' })).status).toBe(403);
    expect((await post(path, body, { origin: 'http://127.0.0.1:9999' })).status).toBe(403);
    expect((await post(path, body, { 'content-type': 'text/plain' })).status).toBe(415);
    expect(await store.list()).toEqual([]);
    expect((await post(path, body, { origin: `http://${host}` })).status).toBe(200);
  });

  it('lets no page from elsewhere read', async () => {
    const answer = await get('/api/jobs', { origin: 'http://elsewhere.example' });
    expect(answer.headers.get('access-control-allow-origin')).toBeNull();
  });

  it('lets nothing larger in than an engine type needs', async () => {
    const answer = await post('/api/engine-types', { text: 'x'.repeat(4_100_000) });
    expect(answer.status).toBe(413);
    expect((await refusalOf(answer)).remedy).toContain('4 MB');
  });

  it('sends every answer with its policy', async () => {
    for (const path of ['/', '/api/jobs', '/nothing.js']) {
      const { headers } = await get(path);
      expect(headers.get('content-security-policy')).toContain("default-src 'self'");
      expect(headers.get('content-security-policy')).toContain("frame-ancestors 'none'");
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('referrer-policy')).toBe('no-referrer');
    }
    expect((await get('/api/jobs')).headers.get('cache-control')).toBe('no-store');
  });

  it('says nothing of the inside when something breaks there', async () => {
    const broken = { ...store, list: () => Promise.reject(new Error('at /home/someone/secret.ts:7')) };
    app = serverApp({ store: broken, webFolder: web, fault: (error) => faults.push(error) });
    const answer = await get('/api/jobs');
    expect(answer.status).toBe(500);
    expect(await answer.text()).not.toContain('secret');
    expect(faults).toHaveLength(1);
  });

  it('passes on what the store refuses', async () => {
    const refusal = { what: 'the disk is full', where: 'journal.sqlite', remedy: 'make room' };
    const full = { ...store, list: () => Promise.reject(new Refused(refusal)) };
    app = serverApp({ store: full, webFolder: web });
    const answer = await get('/api/jobs');
    expect(answer.status).toBe(503);
    expect(await refusalOf(answer)).toEqual(refusal);
  });
});

describe('the app’s files', () => {
  it('are given as they are, and a place in the app falls to its page', async () => {
    for (const path of ['/', '/jobs', `/jobs/${job}/measure`, '/jobs/26.031/measure'])
      expect(await (await get(path)).text()).toContain('the app');
    const script = await get('/assets/main-ab12.js');
    expect(script.headers.get('content-type')).toContain('text/javascript');
    expect(script.headers.get('cache-control')).toContain('immutable');
  });

  it('do not reach outside their folder', async () => {
    for (const path of [
      '/../package.json',
      '/..%2fpackage.json',
      '/assets/..%2f..%2fpackage.json',
      '/%2e%2e/x.json',
    ])
      expect(await (await get(path)).text()).not.toContain('"endfloat"');
  });

  it('that are not there are not there, and addresses of the workshop are no place in the app', async () => {
    expect((await get('/assets/other.js')).status).toBe(404);
    expect((await get('/api/nothing')).status).toBe(404);
    expect((await refusalOf(await get('/api/nothing'))).what).toContain('/api/nothing');
  });

  it('say how to build them where they are not built', async () => {
    app = serverApp({ store, webFolder: join(web, 'none') });
    const answer = await get('/');
    expect(answer.status).toBe(503);
    expect(await answer.text()).toContain('npm start');
  });
});
