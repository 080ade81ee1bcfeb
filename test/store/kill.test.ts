/** @module What was acknowledged is there after the program was killed at any moment. */
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkChain } from '../../src/journal/chain.ts';
import { openSqliteStore } from '../../src/store/sqlite-store.ts';

const program = fileURLToPath(new URL('./append-until-killed.ts', import.meta.url));
const job = 'job-a';
const events = 1000;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'endfloat-kill-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

interface Ending {
  /** The last sequence that was acknowledged. */
  readonly acknowledged: number;
  readonly signal: NodeJS.Signals | null;
}

/** Lets the program run until so many more are acknowledged, waits a little, and kills it. */
const runAndKill = (path: string, after: number, wait: number): Promise<Ending> =>
  new Promise((done, fail) => {
    const child = spawn(process.execPath, [program, path, job, String(events)], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let text = '';
    let killing = false;
    child.stdout.setEncoding('utf8');
    child.stdout.on('data', (chunk: string) => {
      text += chunk;
      if (killing || text.split('\n').length <= after) return;
      killing = true;
      setTimeout(() => child.kill('SIGKILL'), wait);
    });
    child.on('error', fail);
    child.on('close', (_, signal) => {
      // A last line without its end may be half a number.
      const lines = text.slice(0, text.lastIndexOf('\n') + 1).trimEnd();
      done({ acknowledged: Number(lines.split('\n').at(-1) ?? 0), signal });
    });
  });

describe('a journal whose program is killed', () => {
  it('holds every acknowledged event, in a chain that fits, however often and whenever that happens', async () => {
    const path = join(folder, 'journal.sqlite');
    let kills = 0;
    let acknowledged = 0;
    // Kills at the first acknowledged event, in the thick of it, and between two writes; then a run to the end.
    for (const [after, wait] of [
      [1, 0],
      [2, 1],
      [90, 0],
      [60, 3],
      [150, 1],
      [120, 7],
      [events, 0],
    ] as const) {
      const ending = await runAndKill(path, after, wait);
      if (ending.signal === 'SIGKILL') kills += 1;
      acknowledged = Math.max(acknowledged, ending.acknowledged);
      const store = await openSqliteStore(path);
      const kept = await store.readFrom(job, 0);
      expect(kept.length).toBeGreaterThanOrEqual(acknowledged);
      // Nobody was told of an event that was on its way; there is at most that one.
      expect(kept.length).toBeLessThanOrEqual(acknowledged + 1);
      expect(checkChain(kept)).toEqual({ kind: 'answer', value: undefined });
      expect(await store.list()).toMatchObject([{ job, sequence: kept.length, readings: kept.length - 1 }]);
      await store.close();
    }
    expect(kills).toBe(6);
    expect(acknowledged).toBe(events);
    const database = new DatabaseSync(path);
    expect(database.prepare('pragma integrity_check').all()).toEqual([{ integrity_check: 'ok' }]);
    database.close();
  });
});
