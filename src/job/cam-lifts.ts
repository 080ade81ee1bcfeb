/** @module Lifts of the cams, compared over the cylinders: how far each lies below the highest and below what was made. */
import { judge } from '../measure/judge.ts';
import { placesOf } from '../measure/scheme.ts';
import type { Verdict } from '../measure/verdict-model.ts';
import { type Millimetres, mm } from '../quantity/brand.ts';
import type { OpenJob } from './job.ts';

export interface CamLift {
  readonly place: string;
  readonly title: string;
  readonly number: number;
  readonly lift?: Millimetres;
  /** 0 for the highest. */
  readonly belowHighest?: Millimetres;
  /** Below the least that it is made with; 0 where it is not. */
  readonly belowAsMade?: Millimetres;
  readonly verdict: Verdict;
}

export interface CamLifts {
  readonly title: string;
  readonly lifts: readonly CamLift[];
}

/**
 * The lifts of one kind of cam.
 *
 * @param of  the characteristic that holds the lift
 * @returns lengths in mm; what is not read yet is left out; undefined where the engine type has no such characteristic
 * @source  common practice, no source: lobes of one shaft are compared with one another
 */
export const camLiftsOf = (job: OpenJob, of: string): CamLifts | undefined => {
  const known = job.sheet.engine.characteristics.get(of);
  if (known === undefined) return undefined;
  const judged = placesOf(job.sheet.engine, known).map((at) => ({ at, judged: judge(job.sheet, of, at.id) }));
  const highest = Math.max(...judged.flatMap((one) => one.judged.value?.value ?? []));
  const least = known.limits?.new.least;
  const title = known.title;
  return {
    title,
    lifts: judged.map(({ at: { id, title: at, number }, judged: { value, verdict } }) => ({
      place: id,
      title: at,
      number,
      verdict,
      ...(value && {
        lift: mm(value.value),
        belowHighest: mm(highest - value.value),
        ...(least !== undefined && { belowAsMade: mm(Math.max(0, least - value.value)) }),
      }),
    })),
  };
};

/** Those of the pumps' cams, as far as any is read. */
export const pumpCamLifts = (job: OpenJob): CamLifts | undefined => {
  const of = job.sheet.engine.pumpTiming?.lift;
  const lifts = of === undefined ? undefined : camLiftsOf(job, of);
  return lifts?.lifts.some(({ lift }) => lift !== undefined) ? lifts : undefined;
};
