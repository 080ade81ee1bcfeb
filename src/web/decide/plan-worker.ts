/** @module Solves the plan off the page: the model and its solver are fetched only when a plan is asked for. */
import loadHighs from 'highs';
import { planEngine } from '../../plan/plan.ts';
import type { Planned } from '../../plan/plan-model.ts';
import type { PlanQuestion } from '../../plan/question.ts';
import { solveWith } from '../../solver/solve-with-highs.ts';

export type PlanAsked = PlanQuestion;

export type PlanTold =
  | { readonly kind: 'planned'; readonly planned: Planned }
  | { readonly kind: 'failed'; readonly says: string };

const told = async (asked: PlanAsked): Promise<PlanTold> => {
  try {
    const highs = await loadHighs();
    return { kind: 'planned', planned: await planEngine(asked, solveWith(highs)) };
  } catch (trouble) {
    return { kind: 'failed', says: trouble instanceof Error ? trouble.message : String(trouble) };
  }
};

addEventListener('message', async ({ data }: MessageEvent<PlanAsked>) => postMessage(await told(data)));
