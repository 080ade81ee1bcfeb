/** @module How the run-in stands: each step passed, in hand or ahead, which is next, and what keeps it from going on. */
import type { RunInStep } from '../../engine/run-in.ts';
import type { OpenJob } from '../job.ts';
import { scopeOf } from '../scope.ts';
import type { Alarm } from './alarm.ts';
import { type Attempt, type Fault, openAlarms, type Run, runOf } from './attempt.ts';

export interface StepStanding {
  /** From 1. */
  readonly number: number;
  readonly step: RunInStep;
  readonly standing: 'passed' | 'in hand' | 'ahead';
  /** The attempt by which it is passed, or that is in hand. */
  readonly attempt?: Attempt;
}

export interface RunInStanding extends Run {
  readonly steps: readonly StepStanding[];
  /** The first that is not passed; none where all are. */
  readonly next?: StepStanding;
  /** The attempt to which a reading goes. */
  readonly inHand?: Attempt;
  /** Not answered. */
  readonly alarms: readonly Alarm[];
  /** Not put right: those that bear on the run keep it from going on, all keep the engine from being handed over. */
  readonly openFaults: readonly Fault[];
  /** Whether the engine is to be started for the next step, so that the seconds to oil pressure are asked. */
  readonly starts: boolean;
}

/** How the run-in of a job stands; no steps where its engine type has none, or the job does not go so far. */
export const runInStanding = (job: OpenJob): RunInStanding => {
  const run = runOf(job);
  const { runIn } = job.sheet.engine;
  const last = run.attempts.at(-1);
  const inHand = last?.ended === undefined ? last : undefined;
  const { operations } = scopeOf(job);
  const steps = (runIn?.steps ?? []).flatMap((step, at): readonly StepStanding[] => {
    if (!operations.has(step.operation)) return [];
    const attempt = run.attempts.findLast((one) => one.number === at + 1 && one.ended === undefined);
    const standing = attempt?.passed === true ? 'passed' : attempt === undefined ? 'ahead' : 'in hand';
    return [{ number: at + 1, step, standing, ...(attempt && { attempt }) }];
  });
  const next = steps.find(({ standing }) => standing !== 'passed');
  return {
    ...run,
    steps,
    ...(next && { next }),
    ...(inHand && { inHand }),
    alarms: inHand === undefined ? [] : openAlarms(inHand),
    openFaults: run.faults.filter(({ putRight }) => putRight === undefined),
    starts:
      runIn?.noOilPressureWithin !== undefined &&
      (inHand === undefined || inHand.step.operation !== next?.step.operation),
  };
};
