/** @module What has to come off to reach a place in this job: how far it is on that way, and what lies beyond the job. */
import type { Operation, PlaceId } from '../engine/engine-type.ts';
import { type Answer, answer } from '../quantity/refusal.ts';
import { type Extent, extentOf } from '../work/extent.ts';
import { type Reach, wholeWay } from '../work/reach.ts';
import { lackingBefore } from './hold/before.ts';
import { standingOf } from './holds.ts';
import type { OpenJob } from './job.ts';
import { scopeOf } from './scope.ts';

export interface WayStep {
  readonly operation: Operation;
  readonly standing: 'done' | 'open now' | 'not yet';
  /** Why not yet, or what it lacks itself; `''` where nothing is to be said. */
  readonly says: string;
}

/** What the job does not go so far as, and how far it would have to go. */
export interface Beyond {
  /** Operations that come with it: stripped, fitted and set again. */
  readonly more: readonly Operation[];
  /** Those that are in the job already, to be worked at more places. */
  readonly wider: readonly Operation[];
  /** Of these, signed already as far as the job went: they are opened again once it goes further. */
  readonly signed: readonly Operation[];
  /** What to set as reached. */
  readonly reach: readonly string[];
}

export interface WayToPlace extends Omit<Reach, 'strip'> {
  readonly steps: readonly WayStep[];
  /** Left out where the job goes so far. */
  readonly beyond?: Beyond;
}

/** Whether an operation works, in an extent, at all the places of some kinds at which a way needs it. */
const worksThere = (way: Reach, { placesAt }: Extent, { name, at, removes }: Operation): boolean =>
  [...removes, ...(at === undefined ? [] : [at])].every((kind) => {
    const places = placesAt(name, kind);
    return way.placesAt(name, kind).every((place) => places.has(place));
  });

const stepOf = (job: OpenJob, way: Reach, operation: Operation): WayStep => {
  const extent = scopeOf(job);
  const { name } = operation;
  if (!extent.operations.has(name))
    return { operation, standing: 'not yet', says: 'this job does not go so far' };
  const signed = job.done.has(name);
  if (!worksThere(way, extent, operation))
    return {
      operation,
      standing: 'not yet',
      says: signed ? 'done at other places alone: this job goes no further' : 'this job does not go so far',
    };
  if (signed) return { operation, standing: 'done', says: '' };
  const [before] = lackingBefore(job, operation);
  if (before !== undefined) return { operation, standing: 'not yet', says: before.says };
  const standing = standingOf(job, operation);
  return {
    operation,
    standing: 'open now',
    says: standing.kind === 'held' ? (standing.lacking[0]?.says ?? '') : '',
  };
};

const beyondOf = (job: OpenJob, place: PlaceId): Beyond | undefined => {
  const { engine } = job.sheet;
  const now = scopeOf(job);
  if (now.whole || now.open.has(place)) return undefined;
  const last = job.scopes.at(-1);
  const reach = [...(last?.reach ?? []), place];
  const wanted = extentOf(
    engine,
    { reach, ...(last?.also && { also: last.also }) },
    new Set(job.done.keys()),
  );
  if (wanted.kind === 'refused') return undefined;
  const taken = [...engine.operations.values()].filter(({ name }) => wanted.value.operations.has(name));
  const grows = ({ name, at = '' }: Operation): boolean => {
    const before = now.placesAt(name, at);
    return [...wanted.value.placesAt(name, at)].some((one) => !before.has(one));
  };
  const wider = taken.filter((one) => now.operations.has(one.name) && grows(one));
  return {
    more: taken.filter(({ name }) => !now.operations.has(name)),
    wider,
    signed: wider.filter(({ name }) => job.done.has(name)),
    reach,
  };
};

/**
 * The way to a place in this job, from its beginning.
 *
 * @param place  of the engine
 * @returns refuses a place that is not known or that no operation lays open
 */
export const wayToPlace = (job: OpenJob, place: PlaceId): Answer<WayToPlace> => {
  const found = wholeWay(job.sheet.engine, place, new Set(job.done.keys()));
  if (found.kind === 'refused') return found;
  const { strip, ...way } = found.value;
  const beyond = beyondOf(job, place);
  return answer({
    ...way,
    steps: strip.map((operation) => stepOf(job, found.value, operation)),
    ...(beyond && { beyond }),
  });
};

/** The next operation of this job, not signed yet, at which a place is worked. */
export const nextAtPlace = (job: OpenJob, place: PlaceId): Operation | undefined => {
  const { operations, placesAt } = scopeOf(job);
  const kind = job.sheet.engine.places.get(place)?.kind ?? '';
  return [...job.sheet.engine.operations.values()].find(
    ({ name, at, removes, fits }) =>
      operations.has(name) &&
      !job.done.has(name) &&
      (at === kind || removes.includes(kind) || fits.includes(kind)) &&
      placesAt(name, kind).has(place),
  );
};
