/** @module What was acknowledged is there after the program was killed at any moment. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { checkChain } from '../../src/journal/chain.ts';
import { openSqliteStore } from '../../src/store/sqlite-store.ts';
import { drawnPicture } from './pictures-contract.ts';
import { runAndKill } from './run-and-kill.ts';

const job = 'job-a';
const events = 1000;

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'endfloat-kill-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

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
      const ending = await runAndKill(
        new URL('./append-until-killed.ts', import.meta.url),
        [path, job, String(events)],
        after,
        wait,
      );
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

describe('pictures whose program is killed', () => {
  it('are there, byte for byte, once they were acknowledged', async () => {
    const path = join(folder, 'pictures.sqlite');
    for (const [after, wait] of [
      [1, 0],
      [40, 1],
      [25, 4],
    ] as const) {
      const before = await runAndKill(new URL('./put-until-killed.ts', import.meta.url), [path], after, wait);
      expect(before.signal).toBe('SIGKILL');
      expect(before.acknowledged).toBeGreaterThanOrEqual(after);
      const store = await openSqliteStore(path);
      for (let shade = 1; shade <= before.acknowledged; shade += 1) {
        const { picture, bytes } = drawnPicture(shade);
        expect(Buffer.from(bytes).equals((await store.picture(picture.hash)) ?? new Uint8Array())).toBe(true);
      }
      await store.close();
    }
  });
});
