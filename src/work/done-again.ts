/** @module What is to be fitted, set and run again once some parts came off. */
import type { EngineType, OneUse, Operation } from '../engine/engine-type.ts';
import { workBefore } from '../engine/work-before.ts';

/** Parts used but once that some operations of the strip spoil. */
export const spoiltBy = (
  { oneUse }: Pick<EngineType, 'oneUse'>,
  strip: ReadonlySet<string>,
): readonly OneUse[] =>
  [...oneUse.values()].filter(({ disturbedBy }) => disturbedBy.some((name) => strip.has(name)));

/** What came off, was laid open and was spoilt. */
export interface TakenApart {
  /** What came off: kinds of place, or names of its own. */
  readonly off: ReadonlySet<string>;
  /** Kinds of place that were taken off or laid open. */
  readonly open: ReadonlySet<string>;
  /** Parts used but once, by name. */
  readonly spoilt: ReadonlySet<string>;
}

type Engine = Pick<EngineType, 'operations' | 'fasteners'>;

/** Works on places and joints that were left alone, all of them: a head that stayed on is not tightened again. */
const onlyAtRest = ({ fasteners }: Engine, { at, tightens }: Operation, { open }: TakenApart): boolean => {
  const kinds = [at, ...tightens.map((name) => fasteners.get(name)?.at)].filter((kind) => kind !== undefined);
  return kinds.length > 0 && kinds.every((kind) => !open.has(kind));
};

/**
 * What fits the parts again, works on them or renews what was spoilt; the settings that rest on that and fit nothing
 * themselves, and those directly before any of it that belong to no place or to one that was opened; and of the
 * running all that comes after, but for what is worked at places and joints that were left alone.
 *
 * @param also  operations that are done again whatever came off
 * @returns names of operations
 */
export const doneAgain = (
  engine: Engine,
  apart: TakenApart,
  also: ReadonlySet<string> = new Set(),
): ReadonlySet<string> => {
  const { off, open, spoilt } = apart;
  const back = [...engine.operations.values()].filter(({ phase }) => phase !== 'strip');
  const again = new Set(
    back
      .filter(
        ({ name, phase, at, fits, renews }) =>
          also.has(name) ||
          fits.some((part) => off.has(part)) ||
          renews.some((one) => spoilt.has(one)) ||
          (phase === 'build' && fits.length === 0 && at !== undefined && off.has(at)),
      )
      .map(({ name }) => name),
  );
  const resting = back.filter(({ phase, fits }) => phase !== 'run' && fits.length === 0);
  for (let before = -1; before !== again.size; ) {
    before = again.size;
    for (const { name, after } of resting) if (after.some((one) => again.has(one))) again.add(name);
  }
  const settings = back.filter(
    ({ phase, fits, at }) => phase === 'set' && fits.length === 0 && (at === undefined || open.has(at)),
  );
  const setUp = back.filter(({ name, phase }) => phase !== 'run' && again.has(name));
  const before = new Set(setUp.flatMap(({ after }) => after));
  for (const { name } of settings) if (before.has(name)) again.add(name);
  // Whatever stayed on in between: the engine is started after it.
  const rebuilt = new Set(again);
  for (const operation of back)
    if (
      operation.phase === 'run' &&
      !onlyAtRest(engine, operation, apart) &&
      [...workBefore(engine, operation.name)].some((one) => rebuilt.has(one))
    )
      again.add(operation.name);
  return again;
};
