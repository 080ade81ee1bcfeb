/** @module Pumps whose timing is to be proved, and under which no shim pack is noted: a reading belongs to the pack it was taken with. */
import type { EngineType } from '../../engine/engine-type.ts';
import type { PumpTiming } from '../../engine/pump-timing.ts';
import type { OpenJob } from '../job.ts';
import { pumpPlaces } from '../pumps.ts';
import { type GoTo, type Lacking, lacking } from './lacking.ts';

/** Where packs are noted: the operation that needs the depth of each pump, else beside the build. */
const whereNoted = ({ operations }: EngineType, { at, depth }: PumpTiming): GoTo => {
  const fitting = [...operations.values()].find((one) => one.at === at && one.needs.includes(depth));
  return fitting === undefined
    ? { kind: 'phase', phase: 'build' }
    : { kind: 'operation', operation: fitting.name };
};

/**
 * What must come before a pump's timing proves anything.
 *
 * @returns undefined where the characteristic is none of the second check, or a pack is noted at the place
 */
export const lackingPack = (job: OpenJob, characteristic: string, place: string): Lacking | undefined => {
  const { engine } = job.sheet;
  const timing = engine.pumpTiming;
  if (timing?.check?.of !== characteristic || job.packs.has(place)) return undefined;
  const pump = pumpPlaces(job).find(({ id }) => id === place);
  return (
    pump &&
    lacking(
      `no shim pack is noted under ${pump.title}, and its timing is proved only with the pack that is in`,
      'note the pack that is fitted first, then take the reading',
      whereNoted(engine, timing),
    )
  );
};
