/** @module Which operations of the strip count as done. */
import type { OpenJob } from './job.ts';
import { operationsIn } from './scope.ts';

/** Where no operation of the strip is signed, the shop signs none, and all of it is taken as done. */
export const strippedOf = (
  job: Pick<OpenJob, 'sheet' | 'done' | 'scopes'>,
): ((operation: string) => boolean) => {
  const { done } = job;
  const strip = operationsIn(job).filter(({ phase }) => phase === 'strip');
  const signed = strip.some(({ name }) => done.has(name));
  return (operation) => done.has(operation) || (!signed && strip.some(({ name }) => name === operation));
};
