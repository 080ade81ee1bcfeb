/** @module The browser app's files. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type Desk, job, openDesk, refusalOf } from '../../test/server/desk.ts';

let desk: Desk;
beforeEach(async () => {
  desk = await openDesk();
});
afterEach(() => desk.close());

describe('the app’s files', () => {
  it('are given as they are, and a place in the app falls to its page', async () => {
    for (const path of ['/', '/jobs', `/jobs/${job}/measure`, '/jobs/26.031/measure'])
      expect(await (await desk.get(path)).text()).toContain('the app');
    const script = await desk.get('/assets/main-ab12.js');
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
      expect(await (await desk.get(path)).text()).not.toContain('"endfloat"');
  });

  it('that are not there are not there, and addresses of the workshop are no place in the app', async () => {
    expect((await desk.get('/assets/other.js')).status).toBe(404);
    expect((await desk.get('/api/nothing')).status).toBe(404);
    expect((await refusalOf(await desk.get('/api/nothing'))).what).toContain('/api/nothing');
  });

  it('are found when the app is built anew while it is served', async () => {
    expect((await desk.get('/assets/main-cd34.js')).status).toBe(404);
    writeFileSync(join(desk.webFolder, 'assets', 'main-cd34.js'), 'export const anew = true;');
    expect(await (await desk.get('/assets/main-cd34.js')).text()).toContain('anew');
  });

  it('say how to build them where they are not built', async () => {
    const answer = await desk.beside({}, '/nowhere').get('/');
    expect(answer.status).toBe(503);
    expect(await answer.text()).toContain('npm start');
  });
});
