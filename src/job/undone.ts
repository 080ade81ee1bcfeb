/** @module What the engine type lists and nobody has signed yet. */
import type { Operation } from '../engine/engine-type.ts';
import type { OpenJob } from './job.ts';

/** Titles of the operations of some phases that are not done, in the order of the engine type. */
export const undone = (job: OpenJob, phases: readonly Operation['phase'][]): readonly string[] =>
  [...job.sheet.engine.operations.values()]
    .filter(({ name, phase }) => phases.includes(phase) && !job.done.has(name))
    .map(({ title }) => title);
