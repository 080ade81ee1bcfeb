/** @module What a picture shows, in words, and which pictures belong to a place, an operation or a finding. */
import type { EngineType } from '../engine/engine-type.ts';
import type { PictureOf } from './event.ts';
import type { OpenJob, TakenPicture } from './job.ts';

/** The places, operations and findings that a picture is of, by their titles; `the engine` where it names none. */
export const pictureOfWords = (
  engine: EngineType,
  findings: OpenJob['findings'],
  { place, operation, finding }: PictureOf,
): string => {
  const found = findings.find(({ id }) => id === finding);
  const at = place ?? found?.place;
  const words = [
    ...(at === undefined ? [] : [engine.places.get(at)?.title ?? at]),
    ...(found === undefined ? [] : [found.finding]),
    ...(operation === undefined ? [] : [engine.operations.get(operation)?.title ?? operation]),
  ];
  return words.length === 0 ? 'the engine' : words.join(', ');
};

/** Whether a picture is of the very finding or operation asked for, or of anything at the place asked for. */
export const isPictureOf = (
  picture: TakenPicture,
  asked: PictureOf,
  findings: OpenJob['findings'],
): boolean => {
  if (asked.finding !== undefined) return picture.of.finding === asked.finding;
  if (asked.operation !== undefined) return picture.of.operation === asked.operation;
  if (asked.place === undefined) return true;
  const { finding } = picture.of;
  const at = picture.of.place ?? findings.find(({ id }) => id === finding)?.place;
  return at === asked.place;
};
