/** @module The shelf on any SQL database. */
import type { Kysely } from 'kysely';
import type { Shelf } from './shelf.ts';
import type { Tables } from './tables.ts';

export const shelfOn = (db: Kysely<Tables>): Shelf => ({
  engineTypes: async () => {
    const rows = await db.selectFrom('engine_type').selectAll().orderBy('title').orderBy('version').execute();
    const newest = new Map(rows.map((row) => [row.id, row]));
    return [...newest.values()].map(({ body, ...row }) => ({ ...row, text: body }));
  },
  engineTypeVersions: async (id) => {
    const rows = await db
      .selectFrom('engine_type')
      .selectAll()
      .where('id', '=', id)
      .orderBy('version', 'desc')
      .execute();
    return rows.map(({ body, ...row }) => ({ ...row, text: body }));
  },
  addEngineType: async ({ id, version, title, text }) => {
    const added = await db
      .insertInto('engine_type')
      .values({ id, version, title, body: text })
      .onConflict((clash) => clash.columns(['id', 'version']).doNothing())
      .returning('version')
      .execute();
    return added.length === 1;
  },
  putEngineType: async ({ id, version, title, text }) => {
    await db
      .insertInto('engine_type')
      .values({ id, version, title, body: text })
      .onConflict((clash) => clash.columns(['id', 'version']).doUpdateSet({ title, body: text }))
      .execute();
  },
});
