/** @module Where an operation stands in the app: on the sheet of its phase, under its own name. */
import type { EngineType, Operation } from '../../engine/engine-type.ts';
import type { OpenJob } from '../../job/job.ts';
import { addressOf } from '../shell/phases.ts';

/** Setting is done where the engine runs. */
const slugs = { strip: 'strip', build: 'build', set: 'run', run: 'run' } as const;

export const phasesAt: Readonly<Record<string, readonly Operation['phase'][]>> = {
  strip: ['strip'],
  build: ['build'],
  run: ['set', 'run'],
};

/** The operation at an address, where there is one. */
export const operationAt = (engine: EngineType, slug: string, part: string): Operation | undefined => {
  const operation = engine.operations.get(part);
  return operation !== undefined && slugs[operation.phase] === slug ? operation : undefined;
};

export const addressOfOperation = (job: OpenJob, name: string): string => {
  const phase = job.sheet.engine.operations.get(name)?.phase ?? 'strip';
  return `${addressOf(job.head.event?.job ?? '', slugs[phase])}/${encodeURIComponent(name)}`;
};
