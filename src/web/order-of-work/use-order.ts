/** @module An order of work, reckoned beside the page so that nothing waits for it, and to be stopped at any time. */
import { useEffect, useState } from 'react';
import type { OrderAsked, OrderFound } from './order-worker.ts';

export type Ordering =
  | { readonly kind: 'not asked' | 'stopped' }
  | { readonly kind: 'working'; readonly stop: () => void }
  | { readonly kind: 'found'; readonly answer: OrderFound }
  | { readonly kind: 'failed'; readonly says: string };

interface Held {
  readonly asked: OrderAsked | undefined;
  readonly ordering: Ordering;
}

const notAsked: Ordering = { kind: 'not asked' };

/** @param asked  a new object for each new question */
export const useOrder = (asked: OrderAsked | undefined): Ordering => {
  const [held, setHeld] = useState<Held>({ asked: undefined, ordering: notAsked });
  useEffect(() => {
    if (asked === undefined) return;
    const tell = (ordering: Ordering) => setHeld({ asked, ordering });
    const worker = new Worker(new URL('./order-worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }: MessageEvent<OrderFound>) => {
      worker.terminate();
      tell({ kind: 'found', answer: data });
    };
    worker.onerror = (event) => tell({ kind: 'failed', says: event.message });
    tell({
      kind: 'working',
      stop: () => {
        worker.terminate();
        tell({ kind: 'stopped' });
      },
    });
    worker.postMessage(asked);
    return () => worker.terminate();
  }, [asked]);
  return held.asked === asked ? held.ordering : notAsked;
};
