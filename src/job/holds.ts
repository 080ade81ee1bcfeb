/** @module Operations and their hold points: done, open, or held back by what is lacking. */
import type { Operation } from '../engine/engine-type.ts';
import { lackingAgreement } from './hold/agreement.ts';
import { lackingSinceFound } from './hold/as-found.ts';
import { lackingAnswers } from './hold/asks.ts';
import { lackingBefore, lackingUnderCover } from './hold/before.ts';
import { lackingHome } from './hold/home.ts';
import type { Lacking } from './hold/lacking.ts';
import { lackingParts } from './hold/parts.ts';
import { lackingProof } from './hold/proof.ts';
import { lackingRenewed } from './hold/renewed.ts';
import { lackingRunIn } from './hold/run-in.ts';
import { beyondScope } from './hold/scope.ts';
import { lackingSums } from './hold/sums.ts';
import { lackingTightening } from './hold/tightening.ts';
import type { DoneOperation, OpenJob } from './job.ts';
import { operationsIn } from './scope.ts';

export type Standing =
  | { readonly kind: 'done'; readonly signed: DoneOperation }
  | { readonly kind: 'open' }
  /** What is lacking, each in words with its remedy; never empty. */
  | { readonly kind: 'held'; readonly lacking: readonly Lacking[] };

export interface OperationStanding {
  readonly operation: Operation;
  readonly standing: Standing;
}

const reasons: readonly ((job: OpenJob, operation: Operation) => readonly Lacking[])[] = [
  lackingAgreement,
  lackingBefore,
  lackingUnderCover,
  lackingParts,
  lackingRenewed,
  lackingProof,
  lackingSinceFound,
  lackingAnswers,
  lackingSums,
  lackingRunIn,
  lackingHome,
  lackingTightening,
];

/** All that an operation lacks; at a gate none of it may be overruled. */
const lackingOf = (job: OpenJob, operation: Operation): readonly Lacking[] => {
  const all = reasons.flatMap((reason) => reason(job, operation));
  return operation.gate ? all.map((one) => ({ ...one, overrule: 'never' })) : all;
};

/** How one operation stands. */
export const standingOf = (job: OpenJob, operation: Operation): Standing => {
  const signed = job.done.get(operation.name);
  if (signed !== undefined) return { kind: 'done', signed };
  const beyond = beyondScope(job, operation);
  const lacking = beyond.length > 0 ? beyond : lackingOf(job, operation);
  return lacking.length === 0 ? { kind: 'open' } : { kind: 'held', lacking };
};

/** Every operation of this job, in the order of the engine type, with how it stands. */
export const operationsOf = (job: OpenJob): readonly OperationStanding[] =>
  operationsIn(job).map((operation) => ({
    operation,
    standing: standingOf(job, operation),
  }));
