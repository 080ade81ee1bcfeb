/** @module Who stands at this bench: kept in the browser and signed under everything asked from it. */

export interface Who {
  readonly actor: string;
  readonly bench: string;
}

const key = 'endfloat who';

export const whoIsHere = (): Who => {
  const kept = localStorage.getItem(key);
  return kept === null ? { actor: '', bench: '' } : (JSON.parse(kept) as Who);
};

const listeners = new Set<() => void>();
let last: { readonly text: string | null; readonly who: Who } | undefined;

/** Stable while nothing changes, as a subscription asks. */
export const whoNow = (): Who => {
  const text = localStorage.getItem(key);
  if (last?.text !== text) last = { text, who: whoIsHere() };
  return last?.who ?? whoIsHere();
};

export const whoChanges = (changed: () => void): (() => void) => {
  listeners.add(changed);
  return () => listeners.delete(changed);
};

export const signOn = (who: Who): void => {
  localStorage.setItem(key, JSON.stringify(who));
  for (const listener of listeners) listener();
};
