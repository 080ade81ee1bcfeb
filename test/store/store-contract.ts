/** @module What every store promises, run against each: a store that passes may keep journals. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { JobEvent } from '../../src/job/event.ts';
import { checkChain } from '../../src/journal/chain.ts';
import type { Store } from '../../src/store/sql-store.ts';
import { booking, eventAfter, journalOf, last, nextReading } from './journal-fixture.ts';
import { race } from './race.ts';

export interface OpenedStore {
  readonly store: Store;
  readonly tidy: () => Promise<void>;
}

export const storeContract = (name: string, open: () => Promise<OpenedStore>): void => {
  describe(`${name} keeps a journal`, () => {
    let opened: OpenedStore;
    let store: Store;
    beforeEach(async () => {
      opened = await open();
      store = opened.store;
    });
    afterEach(() => opened.tidy());

    it('gives back what was appended, in order and word for word', async () => {
      const events = journalOf('job-a', 5);
      expect(await store.append('job-a', 0, events)).toEqual({ kind: 'appended', sequence: 5 });
      const kept = await store.readFrom('job-a', 0);
      expect(kept).toEqual(events);
      expect(checkChain(kept).kind).toBe('answer');
    });

    it('reads only what comes after a sequence', async () => {
      const events = journalOf('job-a', 5);
      await store.append('job-a', 0, events);
      expect(await store.readFrom('job-a', 3)).toEqual(events.slice(3));
      expect(await store.readFrom('job-a', 5)).toEqual([]);
    });

    it('knows nothing of a job that is not there', async () => {
      expect(await store.readFrom('job-z', 0)).toEqual([]);
      expect(await store.list()).toEqual([]);
    });

    it('keeps the journals of two jobs apart', async () => {
      const [a, b] = [journalOf('job-a', 3), journalOf('job-b', 2)];
      await store.append('job-a', 0, a);
      await store.append('job-b', 0, b);
      expect(await store.readFrom('job-a', 0)).toEqual(a);
      expect(await store.readFrom('job-b', 0)).toEqual(b);
    });

    it('refuses an append whose expected sequence is stale, says what it holds and writes nothing', async () => {
      const events = journalOf('job-a', 4);
      await store.append('job-a', 0, events);
      const late = nextReading('job-a', events[1] as JobEvent, '-late');
      expect(await store.append('job-a', 2, [late])).toEqual({ kind: 'stale', sequence: 4 });
      expect(await store.readFrom('job-a', 0)).toEqual(events);
    });

    it('refuses an append that leaves a gap', async () => {
      const events = journalOf('job-a', 4);
      await store.append('job-a', 0, events.slice(0, 2));
      expect(await store.append('job-a', 3, events.slice(3))).toEqual({ kind: 'stale', sequence: 2 });
      expect(await store.readFrom('job-a', 0)).toHaveLength(2);
    });

    it('refuses an event that follows another one than the one it holds', async () => {
      const events = journalOf('job-a', 2);
      await store.append('job-a', 0, events);
      const [first] = events;
      const elsewhere = nextReading('job-a', eventAfter('job-a', first, booking, '-other'));
      expect(await store.append('job-a', 2, [elsewhere])).toEqual({ kind: 'stale', sequence: 2 });
    });

    it('rejects an append that does not carry on from its own expected sequence', async () => {
      const events = journalOf('job-a', 3);
      await expect(store.append('job-a', 1, events)).rejects.toThrow('cannot follow');
      await expect(store.append('job-b', 0, events)).rejects.toThrow('cannot follow');
      expect(await store.readFrom('job-a', 0)).toEqual([]);
    });

    it('takes the same events twice and keeps them once', async () => {
      const events = journalOf('job-a', 4);
      await store.append('job-a', 0, events);
      expect(await store.append('job-a', 0, events)).toEqual({ kind: 'appended', sequence: 4 });
      expect(await store.append('job-a', 2, events.slice(2, 3))).toEqual({ kind: 'appended', sequence: 3 });
      expect(await store.readFrom('job-a', 0)).toEqual(events);
    });

    it('takes an event again that others have been appended after', async () => {
      const events = journalOf('job-a', 3);
      await store.append('job-a', 0, events);
      const more = nextReading('job-a', last(events));
      await store.append('job-a', 3, [more]);
      expect(await store.append('job-a', 2, [last(events)])).toEqual({ kind: 'appended', sequence: 3 });
      expect(await store.readFrom('job-a', 0)).toHaveLength(4);
    });

    it('appends all or none: a batch that is half there and half new goes in no part', async () => {
      const events = journalOf('job-a', 5);
      await store.append('job-a', 0, events.slice(0, 3));
      expect(await store.append('job-a', 2, events.slice(2))).toEqual({ kind: 'stale', sequence: 3 });
      expect(await store.readFrom('job-a', 0)).toHaveLength(3);
    });

    it('answers an event that stands elsewhere under its id with where it stands, and keeps it once', async () => {
      const events = journalOf('job-a', 2);
      await store.append('job-a', 0, events);
      const { id } = last(events);
      const sealedAnew = { ...nextReading('job-a', last(events)), id };
      expect(await store.append('job-a', 2, [sealedAnew])).toEqual({ kind: 'appended', sequence: 2 });
      expect(await store.readFrom('job-a', 0)).toEqual(events);
    });

    it('knows the events of a job by their ids', async () => {
      const events = journalOf('job-a', 2);
      await store.append('job-a', 0, events);
      expect(await store.has('job-a', last(events).id)).toBe(true);
      expect(await store.has('job-b', last(events).id)).toBe(false);
      expect(await store.has('job-a', 'none')).toBe(false);
    });

    it('appends nothing when there is nothing to append', async () => {
      expect(await store.append('job-a', 0, [])).toEqual({ kind: 'appended', sequence: 0 });
      expect(await store.list()).toEqual([]);
    });

    it('takes a long journal in one append', async () => {
      const events = journalOf('job-a', 2500);
      expect(await store.append('job-a', 0, events)).toEqual({ kind: 'appended', sequence: 2500 });
      expect(await store.readFrom('job-a', 0)).toEqual(events);
    });

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

    it('keeps one instrument of each name', async () => {
      const length = (text: string) => ({ text, unit: 'mm' });
      const micrometer = {
        name: 'mic-50-75',
        kind: 'outside micrometer',
        range: { least: length('50'), greatest: length('75') },
        resolution: length('0.01'),
        permissibleError: length('0.004'),
        repeatability: length('0.001'),
      };
      await store.putInstrument(micrometer);
      await store.putInstrument({ ...micrometer, zero: length('0.002') });
      await store.putInstrument({ ...micrometer, name: 'mic-25-50' });
      expect(await store.instruments()).toEqual([
        { ...micrometer, name: 'mic-25-50' },
        { ...micrometer, zero: length('0.002') },
      ]);
    });
  });
};
