/** @module Where a sum of an operation is done: once a place, or once for the whole operation. */
import type { EngineType, Operation, Place } from '../../engine/engine-type.ts';
import type { OperationSum } from '../../engine/operation-sum.ts';

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

/** Every sum of an operation at each of its places. */
export const sumsAt = (engine: EngineType, operation: Operation): readonly SumPlace[] =>
  operation.sums.flatMap((sum) => sumPlaces(engine, sum).map((place) => ({ operation, sum, place })));
