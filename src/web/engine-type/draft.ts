/** @module What somebody is changing in an engine type: kept on this bench until it is saved or dropped. */
import { useCallback, useMemo, useState } from 'react';

interface Kept {
  /** The version that it was begun on. */
  readonly after: number;
  readonly text: string;
}

export interface Draft extends Kept {
  readonly changed: boolean;
  readonly set: (text: string) => void;
  readonly drop: () => void;
  /** Puts the draft on top of a version that came meanwhile. */
  readonly putOn: (version: number) => void;
}

const keyOf = (id: string): string => `endfloat draft ${id}`;

const keptFor = (id: string): Kept | undefined => {
  const kept = localStorage.getItem(keyOf(id));
  return kept === null ? undefined : (JSON.parse(kept) as Kept);
};

export const useDraft = (id: string, newest: { readonly version: number; readonly text: string }): Draft => {
  const [kept, setKept] = useState(() => keptFor(id));
  const keep = useCallback(
    (next: Kept | undefined) => {
      if (next === undefined) localStorage.removeItem(keyOf(id));
      else localStorage.setItem(keyOf(id), JSON.stringify(next));
      setKept(next);
    },
    [id],
  );
  return useMemo(() => {
    const now = kept ?? { after: newest.version, text: newest.text };
    return {
      ...now,
      changed: kept !== undefined && kept.text !== newest.text,
      set: (text) => keep({ after: now.after, text }),
      drop: () => keep(undefined),
      putOn: (version) => keep({ after: version, text: now.text }),
    };
  }, [kept, keep, newest]);
};
