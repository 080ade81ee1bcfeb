/** @module Events already fetched, kept in this browser so that a job opens without the network. A cache: it may go. */
import type { JobEvent } from '../../job/event.ts';

export interface EventsCache {
  /** In order; empty when there are none or the browser keeps none. */
  readonly read: (job: string) => Promise<readonly JobEvent[]>;
  readonly keep: (events: readonly JobEvent[]) => Promise<void>;
  readonly drop: (job: string) => Promise<void>;
}

const table = 'events';

const settled = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

const opened = (): Promise<IDBDatabase> => {
  const request = indexedDB.open('endfloat', 1);
  request.onupgradeneeded = () => request.result.createObjectStore(table, { keyPath: ['job', 'sequence'] });
  return settled(request);
};

const ofJob = (job: string) => IDBKeyRange.bound([job, 0], [job, Number.MAX_SAFE_INTEGER]);

export const eventsCache = (): EventsCache => {
  let database: Promise<IDBDatabase> | undefined;
  const within = async <T>(
    mode: IDBTransactionMode,
    work: (store: IDBObjectStore) => IDBRequest<T> | undefined,
  ) => {
    database ??= opened();
    const request = work((await database).transaction(table, mode).objectStore(table));
    return request === undefined ? undefined : await settled(request);
  };
  // A browser that keeps nothing (private window, full disk) still works: it only fetches more.
  return {
    read: async (job) => {
      try {
        const events = (await within('readonly', (store) => store.getAll(ofJob(job)))) as JobEvent[];
        return events.every((event, at) => event.sequence === at + 1) ? events : [];
      } catch {
        return [];
      }
    },
    keep: async (events) => {
      try {
        await within('readwrite', (store) => {
          let last: IDBRequest<IDBValidKey> | undefined;
          for (const event of events) last = store.put(event);
          return last;
        });
      } catch {}
    },
    drop: async (job) => {
      try {
        await within('readwrite', (store) => store.delete(ofJob(job)));
      } catch {}
    },
  };
};
