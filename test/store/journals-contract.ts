/** @module What every store promises of every kind of journal that it keeps. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { checkChain } from '../../src/journal/chain.ts';
import type { JournalEvent } from '../../src/journal/event.ts';
import type { Journals } from '../../src/store/journal-store.ts';
import type { Store } from '../../src/store/sql-store.ts';
import { last } from './journal-fixture.ts';

export interface OpenedStore {
  readonly store: Store;
  readonly tidy: () => Promise<void>;
}

/** One kind of journal, with journals to try it on. */
export interface JournalsToTry<Event extends JournalEvent> {
  readonly of: (store: Store) => Journals<Event>;
  readonly journalOf: (id: string, length: number) => readonly Event[];
  /** An event after another one; `mark` tells rivals apart. */
  readonly next: (id: string, before: Event | undefined, mark?: string) => Event;
}

export const journalsContract = <Event extends JournalEvent>(
  name: string,
  open: () => Promise<OpenedStore>,
  { of, journalOf, next }: JournalsToTry<Event>,
): void => {
  describe(`${name}: a journal`, () => {
    let opened: OpenedStore;
    let journals: Journals<Event>;
    beforeEach(async () => {
      opened = await open();
      journals = of(opened.store);
    });
    afterEach(() => opened.tidy());

    it('gives back what was appended, in order and word for word', async () => {
      const events = journalOf('job-a', 5);
      expect(await journals.append('job-a', 0, events)).toEqual({ kind: 'appended', sequence: 5 });
      const kept = await journals.readFrom('job-a', 0);
      expect(kept).toEqual(events);
      expect(checkChain(kept).kind).toBe('answer');
    });

    it('reads only what comes after a sequence', async () => {
      const events = journalOf('job-a', 5);
      await journals.append('job-a', 0, events);
      expect(await journals.readFrom('job-a', 3)).toEqual(events.slice(3));
      expect(await journals.readFrom('job-a', 5)).toEqual([]);
    });

    it('knows nothing of a journal that is not there', async () => {
      expect(await journals.readFrom('job-z', 0)).toEqual([]);
    });

    it('keeps two journals apart', async () => {
      const [a, b] = [journalOf('job-a', 3), journalOf('job-b', 2)];
      await journals.append('job-a', 0, a);
      await journals.append('job-b', 0, b);
      expect(await journals.readFrom('job-a', 0)).toEqual(a);
      expect(await journals.readFrom('job-b', 0)).toEqual(b);
    });

    it('refuses an append whose expected sequence is stale, says what it holds and writes nothing', async () => {
      const events = journalOf('job-a', 4);
      await journals.append('job-a', 0, events);
      const late = next('job-a', events[1], '-late');
      expect(await journals.append('job-a', 2, [late])).toEqual({ kind: 'stale', sequence: 4 });
      expect(await journals.readFrom('job-a', 0)).toEqual(events);
    });

    it('refuses an append that leaves a gap', async () => {
      const events = journalOf('job-a', 4);
      await journals.append('job-a', 0, events.slice(0, 2));
      expect(await journals.append('job-a', 3, events.slice(3))).toEqual({ kind: 'stale', sequence: 2 });
      expect(await journals.readFrom('job-a', 0)).toHaveLength(2);
    });

    it('refuses an event that follows another one than the one it holds', async () => {
      const events = journalOf('job-a', 2);
      await journals.append('job-a', 0, events);
      const [first] = events;
      const elsewhere = next('job-a', next('job-a', first, '-other'));
      expect(await journals.append('job-a', 2, [elsewhere])).toEqual({ kind: 'stale', sequence: 2 });
    });

    it('rejects an append that does not carry on from its own expected sequence', async () => {
      const events = journalOf('job-a', 3);
      await expect(journals.append('job-a', 1, events)).rejects.toThrow('cannot follow');
      await expect(journals.append('job-b', 0, events)).rejects.toThrow('cannot follow');
      expect(await journals.readFrom('job-a', 0)).toEqual([]);
    });

    it('takes the same events twice and keeps them once', async () => {
      const events = journalOf('job-a', 4);
      await journals.append('job-a', 0, events);
      expect(await journals.append('job-a', 0, events)).toEqual({ kind: 'appended', sequence: 4 });
      expect(await journals.append('job-a', 2, events.slice(2, 3))).toEqual({
        kind: 'appended',
        sequence: 3,
      });
      expect(await journals.readFrom('job-a', 0)).toEqual(events);
    });

    it('takes an event again that others have been appended after', async () => {
      const events = journalOf('job-a', 3);
      await journals.append('job-a', 0, events);
      const more = next('job-a', last(events));
      await journals.append('job-a', 3, [more]);
      expect(await journals.append('job-a', 2, [last(events)])).toEqual({ kind: 'appended', sequence: 3 });
      expect(await journals.readFrom('job-a', 0)).toHaveLength(4);
    });

    it('appends all or none: a batch that is half there and half new goes in no part', async () => {
      const events = journalOf('job-a', 5);
      await journals.append('job-a', 0, events.slice(0, 3));
      expect(await journals.append('job-a', 2, events.slice(2))).toEqual({ kind: 'stale', sequence: 3 });
      expect(await journals.readFrom('job-a', 0)).toHaveLength(3);
    });

    it('answers an event that stands elsewhere under its id with where it stands, and keeps it once', async () => {
      const events = journalOf('job-a', 2);
      await journals.append('job-a', 0, events);
      const { id } = last(events);
      const sealedAnew = { ...next('job-a', last(events)), id };
      expect(await journals.append('job-a', 2, [sealedAnew])).toEqual({ kind: 'appended', sequence: 2 });
      expect(await journals.readFrom('job-a', 0)).toEqual(events);
    });

    it('knows the events of a journal by their ids', async () => {
      const events = journalOf('job-a', 2);
      await journals.append('job-a', 0, events);
      expect(await journals.has('job-a', last(events).id)).toBe(true);
      expect(await journals.has('job-b', last(events).id)).toBe(false);
      expect(await journals.has('job-a', 'none')).toBe(false);
    });

    it('appends nothing when there is nothing to append', async () => {
      expect(await journals.append('job-a', 0, [])).toEqual({ kind: 'appended', sequence: 0 });
    });

    it('takes a long journal in one append', async () => {
      const events = journalOf('job-a', 2500);
      expect(await journals.append('job-a', 0, events)).toEqual({ kind: 'appended', sequence: 2500 });
      expect(await journals.readFrom('job-a', 0)).toEqual(events);
    });
  });
};
