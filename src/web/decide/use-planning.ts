/** @module Plans, found beside the page so that nothing waits for them; with progress, and to be stopped at any time. */
import { useCallback, useEffect, useRef, useState } from 'react';
import type { PlanAnswer, PlanAsked, PlanTold } from './plan-worker.ts';

export type Planning =
  | { readonly kind: 'not asked' }
  | { readonly kind: 'working'; readonly share: number; readonly stop: () => void }
  | { readonly kind: 'answered'; readonly answer: PlanAnswer; readonly seconds: number }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly says: string };

/** Starts a worker on one question; what it tells comes through `tell`. */
const startOn = (asked: PlanAsked, tell: (planning: Planning) => void): (() => void) => {
  const worker = new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' });
  const begun = performance.now();
  const stop = () => {
    worker.terminate();
    tell({ kind: 'stopped' });
  };
  tell({ kind: 'working', share: 0, stop });
  worker.onmessage = ({ data }: MessageEvent<PlanTold>) => {
    if (data.kind === 'progress') {
      tell({ kind: 'working', share: data.share, stop });
      return;
    }
    worker.terminate();
    tell(data.kind === 'answered' ? { ...data, seconds: (performance.now() - begun) / 1000 } : data);
  };
  worker.onerror = (event) => tell({ kind: 'failed', says: event.message });
  worker.postMessage(asked);
  return () => worker.terminate();
};

interface Held {
  readonly asked: PlanAsked | undefined;
  readonly planning: Planning;
}

const notAsked: Planning = { kind: 'not asked' };
const nothing: Held = { asked: undefined, planning: notAsked };

/**
 * @param asked  a new object for each new question; undefined as long as nothing is asked
 * @returns how it stands, and what asks the same once more after it was stopped
 */
export const usePlanning = (
  asked: PlanAsked | undefined,
): { readonly planning: Planning; readonly again: () => void } => {
  const [held, setHeld] = useState(nothing);
  const end = useRef<() => void>(undefined);
  const begin = useCallback(() => {
    end.current?.();
    end.current = asked && startOn(asked, (planning) => setHeld({ asked, planning }));
    if (!asked) setHeld(nothing);
  }, [asked]);
  useEffect(() => {
    begin();
    return () => end.current?.();
  }, [begin]);
  return {
    // What was told of the question before this one is no answer to this one.
    planning: held.asked === asked ? held.planning : notAsked,
    again: begin,
  };
};
