/** @module Pictures taken at this bench, kept in the browser until the workshop's store has them. */

export interface PictureBox {
  /** Keeps a picture, on the disk before it answers; false where this browser keeps nothing. */
  readonly keep: (hash: string, bytes: Uint8Array) => Promise<boolean>;
  readonly bytes: (hash: string) => Promise<Uint8Array | undefined>;
  readonly drop: (hash: string) => Promise<void>;
}

const table = 'waiting';

const opened = (): Promise<IDBDatabase> =>
  new Promise((resolve, reject) => {
    const request = indexedDB.open('endfloat pictures', 1);
    request.onupgradeneeded = () => request.result.createObjectStore(table);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

const pictureBox = (): PictureBox => {
  let database: Promise<IDBDatabase> | undefined;
  /** Answers once the whole piece of work is on the disk. */
  const within = async (
    mode: IDBTransactionMode,
    work: (store: IDBObjectStore) => IDBRequest,
  ): Promise<unknown> => {
    database ??= opened();
    const transaction = (await database).transaction(table, mode, { durability: 'strict' });
    const request = work(transaction.objectStore(table));
    return new Promise((resolve, reject) => {
      transaction.oncomplete = () => resolve(request.result);
      transaction.onabort = () => reject(transaction.error);
    });
  };
  return {
    keep: async (hash, bytes) => {
      try {
        // A browser that is short of room then asks before it clears what waits here.
        void navigator.storage?.persist().catch(() => false);
        await within('readwrite', (store) => store.put(bytes, hash));
        return true;
      } catch {
        return false;
      }
    },
    bytes: async (hash) => {
      try {
        const kept = await within('readonly', (store) => store.get(hash));
        return kept instanceof Uint8Array ? kept : undefined;
      } catch {
        return undefined;
      }
    },
    drop: async (hash) => {
      try {
        await within('readwrite', (store) => store.delete(hash));
      } catch {}
    },
  };
};

/** The one of this browser. */
export const benchPictures: PictureBox = pictureBox();
