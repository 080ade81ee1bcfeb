/** @module How far a job goes, in words: what it reaches, and what it does not open. */
import type { EngineType } from '../engine/engine-type.ts';
import type { OpenJob, SetScope } from './job.ts';
import { scopeOf } from './scope.ts';

const titled = ({ places, placeKinds }: EngineType, asked: string): string =>
  places.get(asked)?.title ?? placeKinds.get(asked)?.title ?? asked;

/** `fuel pump 1, cylinder head; and “Take off the flywheel”`. */
export const scopeWords = (
  engine: EngineType,
  { reach, also = [] }: Pick<SetScope, 'reach' | 'also'>,
): string => {
  const beside = also.map((name) => `“${engine.operations.get(name)?.title ?? name}”`);
  const parts = [reach.map((one) => titled(engine, one)).join(', '), beside.join(', ')];
  return parts.every((part) => part === '')
    ? 'the whole engine'
    : parts.filter((part) => part !== '').join('; and ');
};

/** How far the job goes now. */
export const scopeNow = (job: Pick<OpenJob, 'sheet' | 'scopes'>): string =>
  scopeWords(job.sheet.engine, job.scopes.at(-1) ?? { reach: [] });

/** What it does not open, kind by kind: `main bearing, all 4`, `piston 1, piston 3`. */
export const notOpened = (job: Pick<OpenJob, 'sheet' | 'scopes' | 'done'>): readonly string[] => {
  const { placeKinds, places } = job.sheet.engine;
  const { open } = scopeOf(job);
  return [...placeKinds.values()].flatMap(({ name, title, count }) => {
    const shut = [...places.values()].filter(({ kind, id }) => kind === name && !open.has(id));
    if (shut.length === 0) return [];
    return shut.length === count && count > 1
      ? [`${title}, all ${count}`]
      : [shut.map((place) => place.title).join(', ')];
  });
};
