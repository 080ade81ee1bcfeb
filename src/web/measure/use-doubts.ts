/** @module Doubts, looked for when the verdict has been painted, so that no key press waits for them. */
import { useEffect, useState } from 'react';
import { doubtsOf } from '../../measure/doubts.ts';
import type { Sheet } from '../../measure/sheet.ts';
import type { Doubt } from '../../measure/verdict-model.ts';

export const useDoubts = (sheet: Sheet): readonly Doubt[] => {
  const [doubts, setDoubts] = useState<readonly Doubt[]>([]);
  useEffect(() => {
    const timer = setTimeout(() => setDoubts(doubtsOf(sheet)), 60);
    return () => clearTimeout(timer);
  }, [sheet]);
  return doubts;
};
