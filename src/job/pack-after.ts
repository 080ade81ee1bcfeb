/** @module What fitting a pack does to the job: the pump is another now, and its timing must be checked again. */

import type { Signed } from '../journal/event.ts';
import { cellKey } from '../measure/reading.ts';
import { cellsOf } from '../measure/scheme.ts';
import { lengthOf, type Typed } from '../quantity/typed.ts';
import type { Fact } from './event.ts';
import type { OpenJob } from './job.ts';
import { setAside } from './set-aside.ts';

/** Of two packs of the same thicknesses, in whatever order and however written, none is another. */
const thicknesses = (shims: readonly Typed[]): string =>
  shims
    .map((shim) => {
      const length = lengthOf(shim);
      return length.kind === 'answer' ? length.value.toFixed(5) : shim.text;
    })
    .sort()
    .join();

/**
 * The job with a pack fitted under a pump. What was read of the pump's timing before says nothing of the new pack; it
 * is kept beside the pack that it was read with.
 */
export const afterPack = (
  job: OpenJob,
  { place, shims }: Extract<Fact, { kind: 'pack fitted' }>,
  signed: Signed,
): OpenJob => {
  const before = job.packs.get(place);
  const packs = new Map(job.packs).set(place, { shims, ...signed });
  const fitted = { ...job, packs };
  const check = job.sheet.engine.pumpTiming?.check;
  if (check === undefined || (before && thicknesses(before.shims) === thicknesses(shims))) return fitted;
  const cells = cellsOf(job.sheet.engine, check.of, place);
  const read = cells.flatMap((cell) => job.sheet.readings.get(cellKey(cell)) ?? []);
  if (read.length === 0) return fitted;
  const apart = setAside(fitted, cells);
  if (before === undefined) return apart;
  const tried = [...(job.packsTried.get(place) ?? []), { ...before, checks: read }];
  return { ...apart, packsTried: new Map(job.packsTried).set(place, tried) };
};
