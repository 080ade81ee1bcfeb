/** @module One reading of all gauges as it was taken: what it comes to by the limits of its step, and whether it still counts. */
import type { RunIn, RunInStep } from '../../engine/run-in.ts';
import type { Signed } from '../../journal/event.ts';
import type { RunEvent } from '../job.ts';
import { type Alarm, alarmsIn } from './alarm.ts';
import { type JudgedGauges, judgeGauges } from './judged-reading.ts';

type Told = Extract<RunEvent, { readonly kind: 'run reading taken' }>;

export type StruckReadings = ReadonlyMap<string, Signed & { readonly why: string }>;

export interface TakenReading extends Signed {
  readonly id: string;
  readonly told: Told;
  readonly judged: JudgedGauges;
  readonly alarms: readonly Alarm[];
  readonly struckOut?: Signed & { readonly why: string };
}

export const takenReading = (
  runIn: RunIn,
  step: RunInStep,
  told: Told,
  struck: StruckReadings,
): TakenReading => {
  const judged = judgeGauges(runIn, step, told.gauges);
  const struckOut = struck.get(told.id);
  return {
    id: told.id,
    told,
    by: told.by,
    at: told.at,
    judged,
    alarms: alarmsIn(judged),
    ...(struckOut && { struckOut }),
  };
};
