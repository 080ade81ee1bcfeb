/** @module The mark of every place of a job: one that it leaves alone is marked as that, not as missing work. */
import type { PlaceId } from '../engine/engine-type.ts';
import type { OpenJob } from '../job/job.ts';
import { counts } from '../job/judged.ts';
import { scopeOf } from '../job/scope.ts';
import type { Judged } from '../measure/verdict-model.ts';
import type { Extent } from '../work/extent.ts';
import { type Mark, markOf } from './mark.ts';

/** @param judged  all that is judged at the place; what is not asked of it and was not read leaves no mark */
export const markIn = (extent: Extent, place: PlaceId, judged: readonly Judged[]): Mark => {
  const asked = judged.filter(counts(extent));
  return asked.length === 0 && !extent.open.has(place) ? 'not opened' : markOf(asked);
};

/** The marks of all places of a job. */
export const marksIn = (
  job: Pick<OpenJob, 'sheet' | 'scopes' | 'done'>,
  judged: ReadonlyMap<PlaceId, readonly Judged[]>,
): ReadonlyMap<PlaceId, Mark> => {
  const extent = scopeOf(job);
  return new Map(
    [...job.sheet.engine.places.keys()].map((id) => [id, markIn(extent, id, judged.get(id) ?? [])]),
  );
};
