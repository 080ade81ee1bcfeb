/** @module Bolts ticked at the stage in hand and not noted yet: kept on this bench, since an angle must not be turned twice. */
import { useState } from 'react';

/** @param key  of the joint and its stage */
export const useTickedBolts = (key: string) => {
  const [ticked, setTicked] = useState(
    () => JSON.parse(localStorage.getItem(key) ?? '[]') as readonly string[],
  );
  const change = (bolts: readonly string[]) => {
    setTicked(bolts);
    if (bolts.length === 0) localStorage.removeItem(key);
    else localStorage.setItem(key, JSON.stringify(bolts));
  };
  return [ticked, change] as const;
};
