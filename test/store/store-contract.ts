/** @module What every store promises, run against each: a store that passes may keep journals. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '../../src/store/sql-store.ts';
import { booking, eventAfter, jobJournals, journalOf, nextReading } from './journal-fixture.ts';
import { journalsContract, type OpenedStore } from './journals-contract.ts';
import { picturesContract } from './pictures-contract.ts';
import { race } from './race.ts';
import { registerJournals, registerOf } from './register-fixture.ts';

export const storeContract = (name: string, open: () => Promise<OpenedStore>): void => {
  journalsContract(`${name}, jobs`, open, jobJournals);
  journalsContract(`${name}, the register`, open, registerJournals);
  picturesContract(name, open);

  describe(`${name} keeps jobs and a register`, () => {
    let opened: OpenedStore;
    let store: Store;
    beforeEach(async () => {
      opened = await open();
      store = opened.store;
    });
    afterEach(() => opened.tidy());

    it('lets one of 16 rivals win in each round, and leaves no gap', async () => {
      await race(
        store,
        Array.from({ length: 16 }, () => store),
        25,
      );
    });

    it('lists every job with what is known of it, the last changed first', async () => {
      await store.append('job-a', 0, journalOf('job-a', 2));
      await store.append('job-b', 0, journalOf('job-b', 4));
      expect(await store.list()).toMatchObject([
        { job: 'job-b', sequence: 4, readings: 3, phase: 'Measure', changed: '2026-03-02T08:00:04Z' },
        {
          job: 'job-a',
          number: '26-014',
          engine: 'Quillfeather 3W pump-set engine',
          owner: 'Tolliver Marsh Drainage Board',
          plate: 'QF3W-00417',
          sequence: 2,
          readings: 1,
          board: { scope: '', next: { phase: 'Measure' }, waitsFor: [], spent: 0 },
        },
      ]);
    });

    it('lists a job whose engine type cannot be read, and keeps its journal whole', async () => {
      const strange = eventAfter('job-a', undefined, {
        ...booking,
        engineType: 'not: an engine',
      } as typeof booking);
      await store.append('job-a', 0, [strange]);
      await store.append('job-a', 1, [nextReading('job-a', strange)]);
      expect(await store.list()).toMatchObject([
        { job: 'job-a', number: '26-014', engine: 'cannot be read' },
      ]);
      expect(await store.readFrom('job-a', 0)).toHaveLength(2);
    });

    it('keeps the newest version of each engine type on the shelf, and its text as given', async () => {
      const shelved = (version: number, text: string) => ({
        id: 'mudlark-1',
        title: 'Mudlark 1',
        version,
        text,
      });
      await store.putEngineType(shelved(1, 'first'));
      await store.putEngineType(shelved(10, 'tenth'));
      await store.putEngineType(shelved(9, 'ninth'));
      await store.putEngineType(shelved(10, 'tenth, set right'));
      await store.putEngineType({
        id: 'quillfeather-3w',
        title: 'Quillfeather 3W',
        version: 1,
        text: 'other',
      });
      expect(await store.engineTypes()).toEqual([
        shelved(10, 'tenth, set right'),
        { id: 'quillfeather-3w', title: 'Quillfeather 3W', version: 1, text: 'other' },
      ]);
    });

    it('keeps every version of an engine type, and adds one only where it is not there yet', async () => {
      const shelved = (version: number, text: string) => ({
        id: 'mudlark-1',
        title: 'Mudlark 1',
        version,
        text,
      });
      expect(await store.engineTypeVersions('mudlark-1')).toEqual([]);
      const rivals = await Promise.all([
        store.addEngineType(shelved(2, 'one bench')),
        store.addEngineType(shelved(2, 'another bench')),
      ]);
      expect(rivals.filter((won) => won)).toHaveLength(1);
      const kept = rivals[0] ? 'one bench' : 'another bench';
      expect(await store.addEngineType(shelved(10, 'tenth'))).toBe(true);
      expect(await store.addEngineType(shelved(10, 'tenth again'))).toBe(false);
      await store.putEngineType({ ...shelved(3, 'other'), id: 'quillfeather-3w' });
      expect(await store.engineTypeVersions('mudlark-1')).toEqual([shelved(10, 'tenth'), shelved(2, kept)]);
    });

    it('keeps a job and a register of the same id apart, and lists the job alone', async () => {
      const [events, entries] = [journalOf('instruments', 2), registerOf('instruments', 3)];
      await store.append('instruments', 0, events);
      await store.register.append('instruments', 0, entries);
      await store.register.append('others', 0, registerOf('others', 1));
      expect(await store.readFrom('instruments', 0)).toEqual(events);
      expect(await store.register.readFrom('instruments', 0)).toEqual(entries);
      expect(await store.readFrom('others', 0)).toEqual([]);
      expect(await store.list()).toMatchObject([{ job: 'instruments', sequence: 2 }]);
    });
  });
};
