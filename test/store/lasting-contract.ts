/** @module What a store promises that outlives its user and lets several programs in at once. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../src/store/sql-store.ts';
import { journalOf } from './journal-fixture.ts';
import type { OpenedStore } from './journals-contract.ts';
import { drawnPicture } from './pictures-contract.ts';
import { race } from './race.ts';

export interface LastingStore extends OpenedStore {
  /** Closes the store and opens the same one again. */
  readonly again: () => Promise<Store>;
  /** A second way into the same store, as another program has it. */
  readonly beside: () => Promise<Store>;
  /** Runs SQL on the same database, to damage what can be rebuilt. */
  readonly run: (sql: string) => Promise<void>;
}

export const lastingStoreContract = (name: string, open: () => Promise<LastingStore>): void => {
  describe(`${name} outlives its user`, () => {
    let opened: LastingStore;
    let store: Store;
    beforeEach(async () => {
      opened = await open();
      store = opened.store;
    });
    afterEach(() => opened.tidy());

    it('lets one of 16 rivals win that come from several programs at once', async () => {
      const others = await Promise.all([opened.beside(), opened.beside(), opened.beside()]);
      const doors = [store, ...others];
      await race(
        store,
        Array.from({ length: 16 }, (_, rival) => doors[rival % doors.length] as Store),
        8,
      );
      for (const other of others) await other.close();
    });

    it('sees what another program has appended, in the journal and in the list', async () => {
      const other = await opened.beside();
      const events = journalOf('job-a', 4);
      await store.append('job-a', 0, events.slice(0, 2));
      await other.append('job-a', 2, events.slice(2, 3));
      expect(await store.append('job-a', 3, events.slice(3))).toEqual({ kind: 'appended', sequence: 4 });
      expect(await store.list()).toMatchObject([{ sequence: 4, readings: 3 }]);
      await other.close();
    });

    it('has everything again after it was closed', async () => {
      const events = journalOf('job-a', 3);
      await store.append('job-a', 0, events);
      const lines = await store.list();
      store = await opened.again();
      expect(await store.readFrom('job-a', 0)).toEqual(events);
      expect(await store.list()).toEqual(lines);
    });

    it('has its pictures again after it was closed, and those that another program has put', async () => {
      const [one, other] = [drawnPicture(1), drawnPicture(2)];
      const door = await opened.beside();
      await store.putPicture(one.picture.hash, one.bytes);
      await door.putPicture(other.picture.hash, other.bytes);
      await door.close();
      store = await opened.again();
      for (const { picture, bytes } of [one, other])
        expect(new Uint8Array((await store.picture(picture.hash)) ?? [])).toEqual(new Uint8Array(bytes));
    });

    it('writes the jobs list anew from the journal where it is lost or lags behind', async () => {
      await store.append('job-a', 0, journalOf('job-a', 3));
      await store.append('job-b', 0, journalOf('job-b', 2));
      const lines = await store.list();
      await opened.run("delete from job_line where job_id = 'job-a'");
      await opened.run(
        "update job_line set version = 1, readings = 0, phase = 'Strip' where job_id = 'job-b'",
      );
      expect(await store.list()).not.toEqual(lines);
      store = await opened.again();
      expect(await store.list()).toEqual(lines);
    });
  });
};
