/** @module One joint of an operation on the bench: its stages, which bolts of each are done, which one is next. */

import type { EngineType, Operation, Place } from '../../engine/engine-type.ts';
import type { Fastener, Stage, TightenAgain } from '../../engine/fastener.ts';
import type { OpenJob, TightenedStage } from '../job.ts';
import { scopeOf } from '../scope.ts';
import { type Joint, jointOf } from './joint.ts';
import { jointKey } from './joint-key.ts';

export interface StageStanding {
  readonly stage: Stage;
  /** Bolts in the order in which they were pulled. */
  readonly done: readonly string[];
  /** Those still to be pulled, in the order of the joint. */
  readonly left: readonly string[];
  readonly noted: readonly TightenedStage[];
}

export interface Tightening {
  readonly operation: Operation;
  readonly fastener: Fastener;
  readonly place: Place;
  readonly joint: Joint;
  /** Set where the operation tightens again what another has tightened. */
  readonly again?: TightenAgain;
  /** Never empty. */
  readonly stages: readonly StageStanding[];
  /** Which stage, 0 and up, and which bolt; left out once all is tight. */
  readonly next?: { readonly stage: number; readonly bolt: string };
}

/** Places where a fastener sits, in the order of the engine type. */
const placesWith = (engine: EngineType, { at }: Fastener): readonly Place[] =>
  [...engine.places.values()].filter(({ kind }) => kind === at);

const standingOf = (
  stage: Stage,
  index: number,
  noted: readonly TightenedStage[],
  { order }: Joint,
): StageStanding => {
  const here = noted.filter((one) => one.stage === index);
  const done = [...new Set(here.flatMap(({ bolts }) => bolts))];
  return { stage, done, left: order.filter((bolt) => !done.includes(bolt)), noted: here };
};

const tighteningAt = (
  job: OpenJob,
  operation: Operation,
  fastener: Fastener,
  place: Place,
  joint: Joint,
): Tightening => {
  const again = fastener.again.find(({ by }) => by === operation.name);
  const key = jointKey({ operation: operation.name, fastener: fastener.name, place: place.id });
  const noted = job.tightened.get(key) ?? [];
  const stages = (again ?? fastener).stages.map((stage, index) => standingOf(stage, index, noted, joint));
  const at = stages.findIndex(({ left }) => left.length > 0);
  const bolt = stages[at]?.left[0];
  return {
    operation,
    fastener,
    place,
    joint,
    ...(again && { again }),
    stages,
    ...(bolt !== undefined && { next: { stage: at, bolt } }),
  };
};

/** Every joint that an operation tightens, fastener by fastener and place by place. */
export const tighteningsOf = (job: OpenJob, operation: Operation): readonly Tightening[] => {
  const { engine } = job.sheet;
  return operation.tightens.flatMap((name) => {
    const fastener = engine.fasteners.get(name);
    if (fastener === undefined) return [];
    const joint = jointOf(fastener);
    const worked = scopeOf(job).placesAt(operation.name, fastener.at);
    return placesWith(engine, fastener)
      .filter(({ id }) => worked.has(id))
      .map((place) => tighteningAt(job, operation, fastener, place, joint));
  });
};
