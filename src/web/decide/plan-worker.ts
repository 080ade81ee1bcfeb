/** @module Solves the plan off the page: the model and its solver are fetched only when a plan is asked for. */

import wasm from 'highs/runtime?url';
import { type PlanQuestion, planEngine } from '../../plan/plan.ts';
import type { Planned } from '../../plan/plan-model.ts';
import { highsSolver } from '../../solver/highs.ts';

export type PlanAsked = PlanQuestion;

export type PlanTold =
  | { readonly kind: 'planned'; readonly planned: Planned }
  | { readonly kind: 'failed'; readonly says: string };

const told = async (asked: PlanAsked): Promise<PlanTold> => {
  try {
    return { kind: 'planned', planned: await planEngine(asked, await highsSolver(wasm)) };
  } catch (trouble) {
    return { kind: 'failed', says: trouble instanceof Error ? trouble.message : String(trouble) };
  }
};

addEventListener('message', async ({ data }: MessageEvent<PlanAsked>) => postMessage(await told(data)));
