/** @module Doubts, looked for when the verdict has been painted, so that no key press waits for them. */
import { useEffect, useState } from 'react';
import { scalePair } from '../../drawing/scale-pair.ts';
import type { SvgNode } from '../../drawing/svg.ts';
import { doubtsIn } from '../../job/doubted.ts';
import type { OpenJob } from '../../job/job.ts';
import type { Reading } from '../../measure/reading.ts';
import type { Sheet } from '../../measure/sheet.ts';
import type { Doubt } from '../../measure/verdict-model.ts';
import { whenIdle } from '../shell/when-idle.ts';

export interface Doubted {
  readonly doubt: Doubt;
  /** The readings in doubt, in the doubt's order. */
  readonly readings: readonly Reading[];
  /** The scale as typed and as it probably was, where that is what differs. */
  readonly scale?: SvgNode;
}

const scaleFor = (sheet: Sheet, { onScale, likely: [likely] }: Doubt, first: Reading | undefined) => {
  const instrument = first && sheet.instruments.get(first.instrument);
  return onScale && likely && instrument ? scalePair(instrument, first.typed, likely) : undefined;
};

type Looked = Pick<OpenJob, 'sheet' | 'scopes' | 'done'>;

const doubted = (job: Looked): readonly Doubted[] => {
  const { sheet } = job;
  const doubts = doubtsIn(job);
  if (doubts.length === 0) return [];
  const byId = new Map([...sheet.readings.values()].flat().map((reading) => [reading.id, reading]));
  return doubts.map((doubt) => {
    const readings = doubt.readings.flatMap((id) => byId.get(id) ?? []);
    const scale = scaleFor(sheet, doubt, readings[0]);
    return { doubt, readings, ...(scale && { scale }) };
  });
};

const same = (before: readonly Doubted[], now: readonly Doubted[]): boolean =>
  before.length === now.length && before.every(({ doubt }, at) => doubt.id === now[at]?.doubt.id);

export const useDoubts = ({ sheet, scopes, done }: Looked): readonly Doubted[] => {
  const [found, setFound] = useState<readonly Doubted[]>([]);
  useEffect(() => {
    const look = () => {
      const now = doubted({ sheet, scopes, done });
      setFound((before) => (same(before, now) ? before : now));
    };
    return whenIdle(look);
  }, [sheet, scopes, done]);
  return found;
};
