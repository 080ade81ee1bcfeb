/** @module SQLite held to the store's contract. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { openSqliteStore } from '../../src/store/sqlite-store.ts';
import { type LastingStore, lastingStoreContract } from './lasting-contract.ts';
import { storeContract } from './store-contract.ts';

storeContract('SQLite in memory', async () => {
  const store = await openSqliteStore(':memory:');
  return { store, tidy: () => store.close() };
});

const inFile = async (): Promise<LastingStore> => {
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-store-'));
  const path = join(folder, 'deep', 'in', 'journal.sqlite');
  let store = await openSqliteStore(path);
  return {
    store,
    again: async () => {
      await store.close();
      store = await openSqliteStore(path);
      return store;
    },
    beside: () => openSqliteStore(path),
    run: async (sql) => {
      const database = new DatabaseSync(path);
      database.exec(sql);
      database.close();
    },
    tidy: async () => {
      await store.close();
      rmSync(folder, { recursive: true });
    },
  };
};

storeContract('SQLite in a file', inFile);
lastingStoreContract('SQLite in a file', inFile);
