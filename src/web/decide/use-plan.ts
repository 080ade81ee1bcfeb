/** @module The plan, computed beside the page so that nothing waits for it; it can be stopped. */
import { useEffect, useMemo, useState } from 'react';
import type { OpenJob } from '../../job/job.ts';
import { planQuestionOf } from '../../job/planning.ts';
import type { Demands, Planned } from '../../plan/plan-model.ts';
import type { PlanAsked, PlanTold } from './plan-worker.ts';

export type Planning =
  | { readonly kind: 'planning'; readonly stop: () => void }
  | { readonly kind: 'planned'; readonly planned: Planned; readonly seconds: number }
  | { readonly kind: 'stopped' }
  | { readonly kind: 'failed'; readonly says: string };

/** Starts a worker on one question; the answer comes through `tell`. */
const startOn = (asked: PlanAsked, tell: (planning: Planning) => void): (() => void) => {
  const worker = new Worker(new URL('./plan-worker.ts', import.meta.url), { type: 'module' });
  const begun = performance.now();
  const stop = () => {
    worker.terminate();
    tell({ kind: 'stopped' });
  };
  tell({ kind: 'planning', stop });
  worker.onmessage = ({ data }: MessageEvent<PlanTold>) => {
    worker.terminate();
    tell(data.kind === 'planned' ? { ...data, seconds: (performance.now() - begun) / 1000 } : data);
  };
  worker.onerror = (event) => tell({ kind: 'failed', says: event.message });
  worker.postMessage(asked);
  return () => worker.terminate();
};

export const usePlan = (job: OpenJob, demands: Demands): Planning => {
  const { sheet, findings, booked, orders, done } = job;
  const [planning, setPlanning] = useState<Planning>({ kind: 'stopped' });
  const question = useMemo(
    () => planQuestionOf({ sheet, findings, booked, orders, done }, demands),
    [sheet, findings, booked, orders, done, demands],
  );
  useEffect(() => startOn(question, setPlanning), [question]);
  return planning;
};
