/** @module A store that cannot be used says what is wrong, where, and what to do; it is never changed by that. */
import { spawnSync } from 'node:child_process';
import {
  chmodSync,
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { Refused } from '../../src/store/refused.ts';
import { openSqliteStore } from '../../src/store/sqlite-store.ts';
import { journalOf, last, nextReading } from './journal-fixture.ts';

let folder: string;
let path: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'endfloat-damaged-'));
  path = join(folder, 'journal.sqlite');
});
afterEach(() => {
  chmodSync(folder, 0o700);
  rmSync(folder, { recursive: true });
});

const filled = async (length = 400): Promise<void> => {
  const store = await openSqliteStore(path);
  await store.append('job-a', 0, journalOf('job-a', length));
  await store.close();
};

/** What opening, or reading everything, is refused with. */
const refusal = async (patience = 50): Promise<Refused['refusal'] | 'usable'> => {
  try {
    const store = await openSqliteStore(path, { patience });
    try {
      await store.readFrom('job-a', 0);
      await store.list();
    } finally {
      await store.close();
    }
    return 'usable';
  } catch (error) {
    if (error instanceof Refused) return error.refusal;
    throw error;
  }
};

const spoil = (from: number, length: number): void => {
  const bytes = readFileSync(path);
  for (let at = from; at < Math.min(from + length, bytes.length); at += 1) bytes[at] = (at * 7 + 13) & 0xff;
  writeFileSync(path, bytes);
};

describe('a store that cannot be used', () => {
  it('is refused where the file is something else', async () => {
    writeFileSync(path, 'main.1;front;vertical;54,962\n'.repeat(200));
    const before = readFileSync(path);
    expect(await refusal()).toMatchObject({ what: 'this file is not a store', where: path });
    expect(readFileSync(path)).toEqual(before);
  });

  it('is refused where a folder stands', async () => {
    mkdirSync(path);
    expect(await refusal()).toMatchObject({ what: 'the store cannot be opened', where: path });
  });

  it('is refused where a file stands in the way of its folder', async () => {
    writeFileSync(path, '');
    path = join(path, 'deeper', 'journal.sqlite');
    expect(await refusal()).toMatchObject({ what: 'the folder of the store cannot be made' });
  });

  it('is refused where its first page is spoilt', async () => {
    await filled();
    spoil(0, 100);
    expect(await refusal()).toMatchObject({ what: 'this file is not a store' });
  });

  it('is refused where its pages are spoilt, when they are read', async () => {
    await filled();
    spoil(4096, 60_000);
    expect(await refusal()).toMatchObject({
      what: 'the store is damaged',
      where: path,
      remedy: expect.stringContaining('do not delete'),
    });
  });

  it('is refused where it was cut short', async () => {
    await filled();
    writeFileSync(path, readFileSync(path).subarray(0, 20_000));
    expect(await refusal()).toMatchObject({ what: 'the store is damaged' });
  });

  it('is refused where an event in it is no event any more', async () => {
    await filled(5);
    const database = new DatabaseSync(path);
    database.exec(`update journal set body = '{"half":' where version = 3`);
    database.close();
    expect(await refusal()).toMatchObject({
      where: 'event 3 of job-a',
      remedy: expect.stringContaining('copy'),
    });
  });

  it('is refused where another program holds it, after some patience', async () => {
    await filled(3);
    const other = new DatabaseSync(path);
    other.exec('pragma locking_mode = exclusive; begin exclusive');
    const from = Date.now();
    expect(await refusal(120)).toMatchObject({ what: 'the store is in use by another program', where: path });
    expect(Date.now() - from).toBeGreaterThan(100);
    other.exec('rollback');
    other.close();
    expect(await refusal()).toBe('usable');
  });

  it('refuses an append while another program writes, and takes it afterwards', async () => {
    await filled(3);
    const store = await openSqliteStore(path, { patience: 60 });
    const next = nextReading('job-a', last(await store.readFrom('job-a', 0)));
    const other = new DatabaseSync(path);
    other.exec('begin immediate');
    await expect(store.append('job-a', 3, [next])).rejects.toMatchObject({
      refusal: { what: 'the store is in use by another program' },
    });
    expect(await store.readFrom('job-a', 0)).toHaveLength(3);
    other.exec('rollback');
    other.close();
    expect(await store.append('job-a', 3, [next])).toEqual({ kind: 'appended', sequence: 4 });
    await store.close();
  });

  it('is refused where a newer program made it, and left as it was', async () => {
    await filled(3);
    const database = new DatabaseSync(path);
    database.exec(
      `insert into kysely_migration (name, timestamp) values ('9000-turbochargers', '2031-01-01')`,
    );
    database.close();
    const before = readFileSync(path);
    expect(await refusal()).toMatchObject({
      what: expect.stringContaining('newer Endfloat'),
      where: path,
      remedy: expect.stringContaining('nothing was changed'),
    });
    expect(readFileSync(path)).toEqual(before);
  });

  it('is refused where it may be read but not written', () => {
    // Whoever may do everything may write everything: the question is put as somebody who may not.
    const asked = spawnSync(
      process.execPath,
      [fileURLToPath(new URL('./open-read-only.ts', import.meta.url)), path],
      { encoding: 'utf8' },
    );
    expect(asked.stderr).toBe('');
    expect(JSON.parse(asked.stdout)).toMatchObject({
      what: 'the store can be read but not written',
      where: path,
      remedy: expect.stringContaining('right to write'),
    });
  });
});

describe('a store that is usable', () => {
  it('is one that was copied while it was closed', async () => {
    await filled(3);
    const copy = join(folder, 'copy.sqlite');
    copyFileSync(path, copy);
    path = copy;
    expect(await refusal()).toBe('usable');
  });

  it('is an empty file: it becomes a store', async () => {
    writeFileSync(path, '');
    chmodSync(path, 0o600);
    expect(await refusal()).toBe('usable');
  });
});
