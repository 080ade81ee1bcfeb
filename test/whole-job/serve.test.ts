/** @module The workshop is served to this machine's browsers, the record among its pages, until it is told to stop. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { verifyRecord } from '../../src/record/verify.ts';
import { bench, demoFile, root } from './endfloat.ts';

const at = bench();
afterAll(at.clear);

describe('endfloat serve', { timeout: 60_000 }, () => {
  it('says its address, serves a job and its record, and ends in order when it is told to', async () => {
    const booking = ['owner=A', 'plate=1', 'hours=1h', 'complaint=none', 'currency=crowns'];
    expect((await at.ask(['book-in', demoFile('engines/mudlark-1.yaml'), ...booking])).code).toBe(0);
    const child = spawn(process.execPath, [join(root, 'bin/endfloat.js'), 'serve', '--port', '0', '--json'], {
      cwd: at.folder,
    });
    const ended = new Promise<number | null>((done) => child.on('close', done));
    const { address } = await new Promise<{ address: string }>((done) =>
      child.stdout.once('data', (line: Buffer) => done(JSON.parse(line.toString()) as { address: string })),
    );
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+$/);
    const { jobs } = (await (await fetch(`${address}/api/jobs`)).json()) as { jobs: { job: string }[] };
    expect(jobs).toHaveLength(1);
    const page = await (await fetch(`${address}/jobs/${jobs[0]?.job}/record`)).text();
    expect(verifyRecord(page).kind).toBe('verified');
    child.kill('SIGTERM');
    expect(await ended).toBe(0);
  });
});
