/** @module How far this job goes: which operations, places and characteristics it takes in, as set and as stripped so far. */
import type { Characteristic, EngineType, Operation, Place } from '../engine/engine-type.ts';
import { placesOf } from '../measure/scheme.ts';
import { type Extent, extentOf, wholeEngine } from '../work/extent.ts';
import type { OpenJob } from './job.ts';

type Scoped = Pick<OpenJob, 'sheet' | 'scopes' | 'done'>;

/** A job is asked for its scope again and again between two changes of it. */
const known = new WeakMap<EngineType, Map<string, Extent>>();
const most = 16;

const strippedSoFar = ({ sheet, done }: Scoped): readonly string[] =>
  [...sheet.engine.operations.values()]
    .filter(({ name, phase }) => phase === 'strip' && done.has(name))
    .map(({ name }) => name);

/**
 * The extent of the scope that was set last, with all that is off already; the whole engine where none was set, or one
 * that its engine type knows nothing of.
 */
export const scopeOf = (job: Scoped): Extent => {
  const { engine } = job.sheet;
  const { reach, also = [] } = job.scopes.at(-1) ?? { reach: [] };
  const done = reach.length + also.length === 0 ? [] : strippedSoFar(job);
  const key = JSON.stringify([reach, also, done]);
  const extents = known.get(engine) ?? new Map<string, Extent>();
  known.set(engine, extents);
  const before = extents.get(key);
  if (before !== undefined) return before;
  const found = extentOf(engine, { reach, also }, new Set(done));
  const extent = found.kind === 'answer' ? found.value : wholeEngine(engine);
  const [oldest] = extents.keys();
  if (extents.size >= most && oldest !== undefined) extents.delete(oldest);
  extents.set(key, extent);
  return extent;
};

/** The operations of this job, in the order of the engine type. */
export const operationsIn = (job: Scoped): readonly Operation[] => {
  const { operations } = scopeOf(job);
  return [...job.sheet.engine.operations.values()].filter(({ name }) => operations.has(name));
};

/** Whether any place of a kind is laid open. */
export const opensKind = (job: Scoped, kind: string): boolean =>
  [...scopeOf(job).open].some((id) => job.sheet.engine.places.get(id)?.kind === kind);

/** The places at which a characteristic is in question. */
export const placesInQuestion = (job: Scoped, characteristic: Characteristic): readonly Place[] => {
  const { inQuestion } = scopeOf(job);
  return placesOf(job.sheet.engine, characteristic).filter(({ id }) => inQuestion(characteristic.name, id));
};
