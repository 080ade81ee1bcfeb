/** @module The run so far: each time that a step was begun, with its readings, its alarms and what became of it. */
import type { RunIn, RunInStep } from '../../engine/run-in.ts';
import { workBefore } from '../../engine/work-before.ts';
import type { Signed } from '../../journal/event.ts';
import { amountOf, typedText } from '../../quantity/typed.ts';
import type { OpenJob, RunEvent } from '../job.ts';
import type { Alarm } from './alarm.ts';
import { stepLacking } from './step-lacking.ts';
import { type TakenReading, takenReading } from './taken-reading.ts';

type Begun = Extract<RunEvent, { readonly kind: 'run step begun' }>;

export interface Fault extends Signed {
  readonly id: string;
  readonly says: string;
  readonly place?: string;
  readonly stopsRun: boolean;
  /** The alarms that it answers. */
  readonly alarms: readonly Alarm[];
  readonly putRight?: Signed & { readonly done: string };
}

export interface Attempt {
  /** From 1. */
  readonly number: number;
  readonly step: RunInStep;
  readonly begun: Begun;
  /** Of the start itself: no oil pressure in time. */
  readonly startAlarms: readonly Alarm[];
  /** Struck out ones too. */
  readonly readings: readonly TakenReading[];
  /** Minutes proved, and minutes to go. */
  readonly minutes: number;
  readonly left: number;
  /** What it lacks to be passed, in words; empty where it is. */
  readonly lacking: readonly string[];
  /** What ended it without its being passed, or took it down after it was. */
  readonly ended?: Signed & { readonly says: string };
  readonly passed: boolean;
}

/** Alarms that nobody has answered: of the start, and of readings that are not struck out. */
export const openAlarms = ({ startAlarms, readings, ended }: Attempt): readonly Alarm[] =>
  ended !== undefined
    ? []
    : [
        ...startAlarms,
        ...readings.flatMap(({ alarms, struckOut }) => (struckOut === undefined ? alarms : [])),
      ];

const startAlarmsOf = ({ noOilPressureWithin: within }: RunIn, begun: Begun): readonly Alarm[] => {
  if (within === undefined || begun.oilPressureAfter === undefined) return [];
  const [most, took] = [amountOf(within, 'time'), amountOf(begun.oilPressureAfter, 'time')];
  if (most.kind === 'refused' || took.kind === 'refused' || took.value <= most.value) return [];
  return [
    {
      says: `no oil pressure within ${typedText(within)} of the start: it took ${typedText(begun.oilPressureAfter)}`,
      remedy: 'stop the engine at once; prime the oil again and find out why before it is started',
      stop: true,
    },
  ];
};

/** An attempt as its readings make it, as far as nothing has ended it. */
const weighedAttempt = (
  runIn: RunIn,
  cylinders: number,
  attempt: Pick<Attempt, 'number' | 'step' | 'begun'>,
  readings: readonly TakenReading[],
): Attempt => {
  const counting = readings.filter(({ struckOut }) => struckOut === undefined);
  const startAlarms = startAlarmsOf(runIn, attempt.begun);
  const found = stepLacking(runIn, attempt.step, cylinders, counting);
  const alarmed = [...startAlarms, ...counting.flatMap(({ alarms }) => alarms)];
  const lacking = [...alarmed.map(({ says }) => says), ...found.lacking];
  return { ...attempt, ...found, startAlarms, readings, lacking, passed: lacking.length === 0 };
};

export interface Run {
  readonly attempts: readonly Attempt[];
  readonly faults: readonly Fault[];
}

/** Those attempts no longer count; what has ended before stays ended as it was. */
const ending = (
  attempts: readonly Attempt[],
  which: (one: Attempt) => boolean,
  ended: NonNullable<Attempt['ended']>,
): readonly Attempt[] =>
  attempts.map((one) => (one.ended === undefined && which(one) ? { ...one, ended, passed: false } : one));

const signedOf = ({ by, at }: Signed): Signed => ({ by, at });

/** The run as it went, from what was noted; a step that the engine type does not have is left out. */
export const runOf = (job: OpenJob): Run => {
  const { runIn, cylinders } = job.sheet.engine;
  const struck = new Map(
    job.running.flatMap((event) =>
      event.kind === 'run reading struck out'
        ? [[event.reading, { why: event.why, ...signedOf(event) }] as const]
        : [],
    ),
  );
  const right = new Map(
    job.running.flatMap((event) =>
      event.kind === 'fault put right'
        ? [[event.fault, { done: event.done, ...signedOf(event) }] as const]
        : [],
    ),
  );
  let attempts: readonly Attempt[] = [];
  let faults: readonly Fault[] = [];
  for (const event of job.running) {
    switch (event.kind) {
      case 'run step begun': {
        const step = runIn?.steps[event.step - 1];
        if (runIn === undefined || step === undefined) break;
        const before = ending(attempts, (one) => !one.passed || one.number === event.step, {
          says: 'it was begun again',
          ...signedOf(event),
        });
        const attempt = { number: event.step, step, begun: event };
        attempts = [...before, weighedAttempt(runIn, cylinders, attempt, [])];
        break;
      }
      case 'run reading taken': {
        const last = attempts.at(-1);
        if (runIn === undefined || last === undefined || last.number !== event.step) break;
        const reading = takenReading(runIn, last.step, event, struck);
        const now = weighedAttempt(runIn, cylinders, last, [...last.readings, reading]);
        attempts = [
          ...attempts.slice(0, -1),
          last.ended === undefined ? now : { ...now, ended: last.ended, passed: false },
        ];
        break;
      }
      case 'fault noted': {
        const { id, says, place, stopsRun } = event;
        const putRight = right.get(id);
        const last = attempts.at(-1);
        const fault: Fault = {
          id,
          says,
          ...(place !== undefined && { place }),
          stopsRun,
          alarms: stopsRun && last !== undefined ? openAlarms(last) : [],
          ...signedOf(event),
          ...(putRight && { putRight }),
        };
        faults = [...faults, fault];
        if (stopsRun)
          attempts = ending(attempts, (one) => runIn?.afterFault === 'restart all' || one === last, {
            says,
            ...signedOf(event),
          });
        break;
      }
      case 'operation reopened': {
        const { operations } = job.sheet.engine;
        const title = operations.get(event.operation)?.title ?? event.operation;
        attempts = ending(
          attempts,
          ({ step: { operation } }) =>
            operation === event.operation || workBefore(job.sheet.engine, operation).has(event.operation),
          { says: `“${title}” was opened again: ${event.why}`, ...signedOf(event) },
        );
        break;
      }
      case 'run reading struck out':
      case 'fault put right':
        break;
      default:
        event satisfies never;
    }
  }
  return { attempts, faults };
};
