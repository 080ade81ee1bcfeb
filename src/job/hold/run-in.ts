/** @module What the run-in lacks for an operation that steps of it belong to. */
import type { Operation } from '../../engine/engine-type.ts';
import type { OpenJob } from '../job.ts';
import { runInStanding } from '../run/run-in-standing.ts';
import { type Lacking, lacking } from './lacking.ts';

/** Steps that are not passed, each with what it lacks. */
export const stepsLeft = (job: OpenJob, operation?: Operation): readonly string[] =>
  runInStanding(job)
    .steps.filter(
      ({ step, standing }) =>
        standing !== 'passed' && (operation === undefined || step.operation === operation.name),
    )
    .map(
      ({ number, step, attempt }) =>
        `step ${number} of the run-in, “${step.title}”, is not passed${attempt === undefined ? '' : `: ${attempt.lacking.join('; ')}`}`,
    );

export const lackingRunIn = (job: OpenJob, operation: Operation): readonly Lacking[] =>
  operation.phase !== 'run'
    ? []
    : stepsLeft(job, operation).map((says) =>
        lacking(says, 'run it to its end, and take the readings that it asks for', {
          kind: 'phase',
          phase: 'run',
        }),
      );
