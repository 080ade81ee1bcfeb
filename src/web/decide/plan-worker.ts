/** @module Finds plans off the page: everything heavy is fetched only when a plan is asked for, the general solver only where it is needed. */
import loadHighs from 'highs';
import { type Alternatives, alternativesOf } from '../../plan/alternatives.ts';
import { optionsOf } from '../../plan/options.ts';
import { planEngine } from '../../plan/plan.ts';
import type { Option, Planned, Solve } from '../../plan/plan-model.ts';
import type { PlanQuestion } from '../../plan/question.ts';
import { type TradeOff, tradeOffOf } from '../../plan/trade-off.ts';
import { solveWith } from '../../solver/solve-with-highs.ts';

export type PlanAsked =
  | { readonly kind: 'plan'; readonly question: PlanQuestion }
  | { readonly kind: 'trade-off'; readonly question: PlanQuestion }
  | { readonly kind: 'alternatives'; readonly question: PlanQuestion; readonly marginCents: number };

/** Several plans, or why there is none. */
export type Several = TradeOff | Alternatives | Exclude<Planned, { kind: 'plan' }>;

export type PlanAnswer =
  | {
      readonly kind: 'one';
      readonly planned: Planned;
      /** What is open at its own price, whatever is asked. */
      readonly options: readonly Option[];
    }
  | { readonly kind: 'several'; readonly found: Several };

export type PlanTold =
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'answered'; readonly answer: PlanAnswer }
  | { readonly kind: 'failed'; readonly says: string };

const tell = (told: PlanTold) => postMessage(told);

let solver: Promise<Solve> | undefined;

const solve: Solve = async (model) => {
  solver ??= loadHighs().then(solveWith);
  return (await solver)(model);
};

const progress = (share: number) => tell({ kind: 'progress', share });

const answerTo = async (asked: PlanAsked): Promise<PlanAnswer> => {
  const { question } = asked;
  switch (asked.kind) {
    case 'plan': {
      const { options } = optionsOf({ ...question, demands: {} });
      return { kind: 'one', planned: await planEngine(question, solve, { progress }), options };
    }
    case 'trade-off':
      return { kind: 'several', found: await tradeOffOf(question, solve, { progress }) };
    case 'alternatives':
      return {
        kind: 'several',
        found: await alternativesOf(question, asked.marginCents, solve, { progress }),
      };
    default:
      return asked satisfies never;
  }
};

const told = async (asked: PlanAsked): Promise<PlanTold> => {
  try {
    return { kind: 'answered', answer: await answerTo(asked) };
  } catch (trouble) {
    return { kind: 'failed', says: trouble instanceof Error ? trouble.message : String(trouble) };
  }
};

addEventListener('message', async ({ data }: MessageEvent<PlanAsked>) => tell(await told(data)));
