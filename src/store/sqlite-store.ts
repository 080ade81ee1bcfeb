/** @module The store in one SQLite file: what an acknowledged event is written to before it is acknowledged. */
import { mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { Kysely } from 'kysely';
import { migrate } from './migrations.ts';
import { nodeSqliteDialect } from './node-sqlite-dialect.ts';
import { Refused } from './refused.ts';
import { type Store, storeOn } from './sql-store.ts';
import { inWords } from './sqlite-trouble.ts';
import type { Tables } from './tables.ts';

export interface SqliteOptions {
  /** How long to wait for another program that is writing, milliseconds. */
  readonly patience?: number;
}

const makeFolder = (path: string): void => {
  try {
    mkdirSync(dirname(path), { recursive: true });
  } catch (error) {
    throw new Refused(
      {
        what: 'the folder of the store cannot be made',
        where: dirname(path),
        remedy: 'choose a folder in which you may write',
      },
      error,
    );
  }
};

const openDatabase = (path: string, patience: number): DatabaseSync => {
  let database: DatabaseSync | undefined;
  try {
    database = new DatabaseSync(path, { timeout: patience });
    database.exec('pragma journal_mode = wal; pragma synchronous = full');
    // From here on a wait inside SQLite would hold the whole program up; the dialect waits between its tries.
    database.exec('pragma busy_timeout = 5');
    return database;
  } catch (error) {
    database?.close();
    throw inWords(error, path);
  }
};

/**
 * Opens the store in a file, or a new one where there is none; `:memory:` for one that is gone when it is closed.
 * Rejects with `Refused` where the file is no store, damaged, newer than this program, in use or not to be written.
 */
export const openSqliteStore = async (
  path: string,
  { patience = 5000 }: SqliteOptions = {},
): Promise<Store> => {
  if (path !== ':memory:') makeFolder(path);
  const database = openDatabase(path, patience);
  const db = new Kysely<Tables>({ dialect: nodeSqliteDialect({ database, path, patience }) });
  try {
    await migrate(db, path);
    return await storeOn(db);
  } catch (error) {
    if (database.isOpen) database.close();
    throw inWords(error, path);
  }
};
