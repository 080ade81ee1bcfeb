/** @module Who is let in, and what every answer carries. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { booking } from '../../test/job/bench.ts';
import { command, type Desk, host, job, openDesk, refusalOf } from '../../test/server/desk.ts';
import { Refused } from '../store/refused.ts';

let desk: Desk;
beforeEach(async () => {
  desk = await openDesk();
});
afterEach(() => desk.close());

describe('the door', () => {
  it.each(['workshop.example:4810', '127.0.0.1.example', 'localhost.example:4810', '10.0.0.7:4810', ''])(
    'is shut to a page that calls this machine “%s”',
    async (name) => {
      const answer = await desk.get('/api/jobs', { host: name });
      expect(answer.status).toBe(403);
    },
  );

  it.each(['localhost:4810', 'LOCALHOST', '127.0.0.1', '[::1]:4810'])('is open under %s', async (name) => {
    expect((await desk.get('/api/jobs', { host: name })).status).toBe(200);
  });

  it('is shut to a page from elsewhere that writes', async () => {
    const body = { command: command(booking), after: 0 };
    const path = `/api/jobs/${job}/commands`;
    expect((await desk.post(path, body, { origin: 'http://elsewhere.example' })).status).toBe(403);
    expect((await desk.post(path, body, { origin: 'http://127.0.0.1:9999' })).status).toBe(403);
    expect((await desk.post(path, body, { 'content-type': 'text/plain' })).status).toBe(415);
    expect(await desk.store.list()).toEqual([]);
    expect((await desk.post(path, body, { origin: `http://${host}` })).status).toBe(200);
  });

  it('lets no page from elsewhere read', async () => {
    const answer = await desk.get('/api/jobs', { origin: 'http://elsewhere.example' });
    expect(answer.headers.get('access-control-allow-origin')).toBeNull();
  });

  it('lets nothing larger in than an engine type needs', async () => {
    const answer = await desk.post('/api/engine-types', { text: 'x'.repeat(4_100_000) });
    expect(answer.status).toBe(413);
    expect((await refusalOf(answer)).remedy).toContain('4 MB');
  });

  it('sends every answer with its policy', async () => {
    for (const path of ['/', '/api/jobs', '/nothing.js']) {
      const { headers } = await desk.get(path);
      expect(headers.get('content-security-policy')).toContain("default-src 'self'");
      expect(headers.get('content-security-policy')).toContain("frame-ancestors 'none'");
      expect(headers.get('x-content-type-options')).toBe('nosniff');
      expect(headers.get('referrer-policy')).toBe('no-referrer');
    }
    expect((await desk.get('/api/jobs')).headers.get('cache-control')).toBe('no-store');
  });

  it('says nothing of the inside when something breaks there', async () => {
    const broken = desk.beside({ list: () => Promise.reject(new Error('at /home/someone/secret.ts:7')) });
    const answer = await broken.get('/api/jobs');
    expect(answer.status).toBe(500);
    expect(await answer.text()).not.toContain('secret');
    expect(broken.faults).toHaveLength(1);
  });

  it('passes on what the store refuses', async () => {
    const refusal = { what: 'the disk is full', where: 'journal.sqlite', remedy: 'make room' };
    const full = desk.beside({ list: () => Promise.reject(new Refused(refusal)) });
    const answer = await full.get('/api/jobs');
    expect(answer.status).toBe(503);
    expect(await refusalOf(answer)).toEqual(refusal);
  });
});
