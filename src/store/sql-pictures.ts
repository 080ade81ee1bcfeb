/** @module Pictures on any SQL database. */
import type { Kysely } from 'kysely';
import { checkPicture } from '../picture/picture.ts';
import { answer } from '../quantity/refusal.ts';
import type { Pictures } from './pictures.ts';
import type { Tables } from './tables.ts';

export const picturesOn = (db: Kysely<Tables>): Pictures => ({
  putPicture: async (hash, bytes) => {
    const checked = checkPicture(hash, bytes);
    if (checked.kind === 'refused') return checked;
    await db
      .insertInto('picture')
      .values({ hash, bytes })
      .onConflict((clash) => clash.column('hash').doNothing())
      .execute();
    return answer(undefined);
  },
  picture: async (hash) => {
    const row = await db.selectFrom('picture').select('bytes').where('hash', '=', hash).executeTakeFirst();
    return row?.bytes;
  },
});
