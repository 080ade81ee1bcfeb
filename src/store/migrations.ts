/** @module How a store came to its tables, step by step. A step that has been published is never changed. */
import type { Kysely } from 'kysely';
import { type Migration, Migrator } from 'kysely/migration';
import { Refused } from './refused.ts';
import type { Tables } from './tables.ts';
import { takeOverInstruments } from './take-over-instruments.ts';

const steps: Readonly<Record<string, Migration>> = {
  '0001-journal': {
    up: async (db) => {
      await db.schema
        .createTable('journal')
        .addColumn('job_id', 'varchar(64)', (column) => column.notNull())
        .addColumn('version', 'integer', (column) => column.notNull())
        .addColumn('event_id', 'varchar(64)', (column) => column.notNull())
        .addColumn('kind', 'varchar(64)', (column) => column.notNull())
        .addColumn('at', 'varchar(40)', (column) => column.notNull())
        .addColumn('hash', 'char(64)', (column) => column.notNull())
        .addColumn('body', 'text', (column) => column.notNull())
        .addPrimaryKeyConstraint('journal_key', ['job_id', 'version'])
        .addUniqueConstraint('journal_event_once', ['job_id', 'event_id'])
        .execute();
      await db.schema
        .createTable('job_line')
        .addColumn('job_id', 'varchar(64)', (column) => column.primaryKey())
        .addColumn('version', 'integer', (column) => column.notNull())
        .addColumn('number', 'text', (column) => column.notNull())
        .addColumn('engine', 'text', (column) => column.notNull())
        .addColumn('owner', 'text', (column) => column.notNull())
        .addColumn('plate', 'text', (column) => column.notNull())
        .addColumn('phase', 'varchar(40)', (column) => column.notNull())
        .addColumn('readings', 'integer', (column) => column.notNull())
        .addColumn('changed', 'varchar(40)', (column) => column.notNull())
        .execute();
    },
  },
  '0002-shelf': {
    up: async (db) => {
      await db.schema
        .createTable('engine_type')
        .addColumn('id', 'varchar(64)', (column) => column.notNull())
        .addColumn('version', 'integer', (column) => column.notNull())
        .addColumn('title', 'text', (column) => column.notNull())
        .addColumn('body', 'text', (column) => column.notNull())
        .addPrimaryKeyConstraint('engine_type_key', ['id', 'version'])
        .execute();
      await db.schema
        .createTable('instrument')
        .addColumn('name', 'varchar(200)', (column) => column.primaryKey())
        .addColumn('body', 'text', (column) => column.notNull())
        .execute();
    },
  },
  '0003-register': { up: takeOverInstruments },
  '0004-pictures': {
    up: async (db) => {
      await db.schema
        .createTable('picture')
        .addColumn('hash', 'char(64)', (column) => column.primaryKey())
        // PostgreSQL's word for bytes; SQLite keeps bytes as bytes under any.
        .addColumn('bytes', 'bytea', (column) => column.notNull())
        .execute();
    },
  },
  '0005-board': {
    up: async (db) => {
      await db.schema
        .alterTable('job_line')
        .addColumn('board', 'text', (column) => column.notNull().defaultTo(''))
        .execute();
      // Lines without their journal's head are written anew when the store is opened.
      await db.deleteFrom('job_line').execute();
    },
  },
};

/** Brings a store of any age up to now; refuses one that a newer program has made. */
export const migrate = async (db: Kysely<Tables>, where: string): Promise<void> => {
  const done = await stepsDone(db);
  const strange = done.find((name) => !Object.hasOwn(steps, name));
  if (strange !== undefined)
    throw new Refused({
      what: `the store was made by a newer Endfloat (it has the step ${strange})`,
      where,
      remedy: 'use that Endfloat, or a newer one; nothing was changed',
    });
  if (done.length === Object.keys(steps).length) return;
  const migrator = new Migrator({ db, provider: { getMigrations: async () => ({ ...steps }) } });
  const { error } = await migrator.migrateToLatest();
  if (error !== undefined) throw error;
};

/** Names of the steps that a store has taken; none for an empty one. */
const stepsDone = async (db: Kysely<Tables>): Promise<readonly string[]> => {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true });
  if (!tables.some(({ name }) => name === 'kysely_migration')) return [];
  const rows = await db
    .withTables<{ kysely_migration: { readonly name: string } }>()
    .selectFrom('kysely_migration')
    .select('name')
    .execute();
  return rows.map(({ name }) => name);
};
