/** @module What this job takes in and nobody has signed yet. */
import type { Operation } from '../engine/engine-type.ts';
import type { OpenJob } from './job.ts';
import { operationsIn } from './scope.ts';

/** Titles of the operations of some phases that are not done, in the order of the engine type. */
export const undone = (job: OpenJob, phases: readonly Operation['phase'][]): readonly string[] =>
  operationsIn(job)
    .filter(({ name, phase }) => phases.includes(phase) && !job.done.has(name))
    .map(({ title }) => title);
