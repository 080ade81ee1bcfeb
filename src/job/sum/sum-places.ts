/** @module Where a sum of an operation is done: once a place, or once for the whole operation. */

import type { EngineType, Operation, Place } from '../../engine/engine-type.ts';
import type { OperationSum } from '../../engine/operation-sum.ts';
import type { OpenJob } from '../job.ts';
import { scopeOf } from '../scope.ts';

/** The places of a sum in the order of the engine type; `undefined` alone where it is done once. */
export const sumPlaces = (engine: EngineType, { at }: OperationSum): readonly (Place | undefined)[] =>
  at === undefined ? [undefined] : [...engine.places.values()].filter(({ kind }) => kind === at);

/** What a noted sum is kept under. */
export const sumKey = (operation: string, sum: string, place: string | undefined): string =>
  `${operation}|${sum}|${place ?? ''}`;

export interface SumPlace {
  readonly operation: Operation;
  readonly sum: OperationSum;
  readonly place: Place | undefined;
}

/** Every sum of an operation at each of the places at which this job does it. */
export const sumsAt = (job: OpenJob, operation: Operation): readonly SumPlace[] =>
  operation.sums.flatMap((sum) => {
    const worked = scopeOf(job).placesAt(operation.name, sum.at ?? '');
    return sumPlaces(job.sheet.engine, sum)
      .filter((place) => place === undefined || worked.has(place.id))
      .map((place) => ({ operation, sum, place }));
  });
