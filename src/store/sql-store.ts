/** @module The store on any SQL database: the journal, the shelf and the pictures beside it. */
import type { Kysely } from 'kysely';
import type { JournalStore } from './journal-store.ts';
import type { Pictures } from './pictures.ts';
import type { Shelf } from './shelf.ts';
import { journalOn, mendLines } from './sql-journal.ts';
import { picturesOn } from './sql-pictures.ts';
import { shelfOn } from './sql-shelf.ts';
import type { Tables } from './tables.ts';

export type Store = JournalStore & Shelf & Pictures;

/** A store on a database whose tables are there. */
export const storeOn = async (db: Kysely<Tables>): Promise<Store> => {
  await mendLines(db);
  return { ...journalOn(db), ...shelfOn(db), ...picturesOn(db) };
};
