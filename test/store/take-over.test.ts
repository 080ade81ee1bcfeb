/** @module A store with the list of instruments that older programs kept: the list becomes the register's first entries. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { checkChain } from '../../src/journal/chain.ts';
import { registerId } from '../../src/register/event.ts';
import { inUse } from '../../src/register/register.ts';
import { Refused } from '../../src/store/refused.ts';
import { registerNow } from '../../src/store/register-now.ts';
import { openSqliteStore } from '../../src/store/sqlite-store.ts';
import { micrometer } from '../job/bench.ts';
import { journalOf } from './journal-fixture.ts';

let folder: string;
let path: string;

/** As a store stood before there was a register. */
const older = async (bodies: Readonly<Record<string, string>>): Promise<void> => {
  const store = await openSqliteStore(path);
  await store.append('job-a', 0, journalOf('job-a', 3));
  await store.close();
  const database = new DatabaseSync(path);
  database.exec(
    `delete from kysely_migration where name in ('0003-register', '0004-pictures', '0005-board');
     drop table picture; alter table job_line drop column board;
     create table instrument (name varchar(200) primary key, body text not null)`,
  );
  const insert = database.prepare('insert into instrument values (?, ?)');
  for (const [name, body] of Object.entries(bodies)) insert.run(name, body);
  database.close();
};

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'endfloat-take-over-'));
  path = join(folder, 'journal.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true }));

describe('a store from before the register', () => {
  it('has its instruments in the register, zeros and all, and its jobs untouched', async () => {
    const other = { ...micrometer, name: 'mic-0-25' };
    await older({ 'mic-25-50': JSON.stringify(micrometer), 'mic-0-25': JSON.stringify(other) });
    const store = await openSqliteStore(path);
    expect(inUse(await registerNow(store))).toEqual([other, micrometer]);
    const events = await store.register.readFrom(registerId, 0);
    expect(events.map(({ fact }) => fact.kind)).toEqual(['instrument entered', 'instrument entered']);
    expect(checkChain(events).kind).toBe('answer');
    expect(await store.readFrom('job-a', 0)).toEqual(journalOf('job-a', 3));
    // The list is written anew with what its lines had not held then.
    expect(await store.list()).toMatchObject([{ job: 'job-a', board: { next: { phase: 'Measure' } } }]);
    await store.close();
    const again = await openSqliteStore(path);
    expect(await again.register.readFrom(registerId, 0)).toEqual(events);
    await again.close();
  });

  it('is left as it was where an instrument in it makes no sense, and says which', async () => {
    await older({ 'mic-25-50': JSON.stringify({ ...micrometer, resolution: { text: '0', unit: 'mm' } }) });
    const opening = openSqliteStore(path);
    await expect(opening).rejects.toBeInstanceOf(Refused);
    await expect(opening).rejects.toMatchObject({ refusal: { where: 'instrument mic-25-50' } });
    const database = new DatabaseSync(path);
    expect(database.prepare('select name from instrument').all()).toEqual([{ name: 'mic-25-50' }]);
    expect(
      database.prepare("select count(*) as n from journal where job_id like 'register/%'").get(),
    ).toEqual({
      n: 0,
    });
    database.close();
  });
});
