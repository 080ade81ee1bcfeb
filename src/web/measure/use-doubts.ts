/** @module Doubts, looked for when the verdict has been painted, so that no key press waits for them. */
import { useEffect, useState } from 'react';
import { doubtsOf } from '../../measure/doubts.ts';
import type { Reading } from '../../measure/reading.ts';
import type { Sheet } from '../../measure/sheet.ts';
import type { Doubt } from '../../measure/verdict-model.ts';
import { whenIdle } from '../shell/when-idle.ts';

export interface Doubted {
  readonly doubt: Doubt;
  /** The readings in doubt, in the doubt's order. */
  readonly readings: readonly Reading[];
}

const doubted = (sheet: Sheet): readonly Doubted[] => {
  const doubts = doubtsOf(sheet);
  if (doubts.length === 0) return [];
  const byId = new Map([...sheet.readings.values()].flat().map((reading) => [reading.id, reading]));
  return doubts.map((doubt) => ({ doubt, readings: doubt.readings.flatMap((id) => byId.get(id) ?? []) }));
};

const same = (before: readonly Doubted[], now: readonly Doubted[]): boolean =>
  before.length === now.length && before.every(({ doubt }, at) => doubt.id === now[at]?.doubt.id);

export const useDoubts = (sheet: Sheet): readonly Doubted[] => {
  const [found, setFound] = useState<readonly Doubted[]>([]);
  useEffect(() => {
    const look = () => {
      const now = doubted(sheet);
      setFound((before) => (same(before, now) ? before : now));
    };
    return whenIdle(look);
  }, [sheet]);
  return found;
};
