/** @module May this step of the run-in be begun, this reading be taken, this fault be noted and put right? */

import { gaugeNamed } from '../../engine/gauge.ts';
import { chooseName } from '../../engine/nearest-name.ts';
import { badFigure, blank, type Trouble, trouble } from '../../journal/trouble.ts';
import { amountOf, typedText } from '../../quantity/typed.ts';
import { dimensionText } from '../../quantity/unit.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';
import { type RunInStanding, runInStanding } from '../run/run-in-standing.ts';
import type { GaugeReading } from '../run-fact.ts';
import { operationsIn, scopeOf } from '../scope.ts';
import { undone } from '../undone.ts';

/** What must be done before the engine may turn by its own power. */
const notReadyToRun = (job: OpenJob): Trouble => {
  const left = undone(job, ['build', 'set']);
  return left.length === 0
    ? undefined
    : trouble(
        `the engine is not ready to run: ${left.join(', ')}`,
        'run step',
        'finish the build and the settings first',
      );
};

/** What comes before the operation that a step belongs to, first start among it. */
const notYetItsTurn = (job: OpenJob, operation: string): Trouble => {
  const { operations } = job.sheet.engine;
  const left = (scopeOf(job).before.get(operation) ?? []).filter((name) => !job.done.has(name));
  return left.length === 0
    ? undefined
    : trouble(
        left.map((name) => `“${operations.get(name)?.title ?? name}” is not signed`).join('; '),
        'run step',
        'do it first, and sign it',
      );
};

/** May it run at all: the build and the settings are signed, and what stands before the first running. */
export const notStarted = (job: OpenJob): Trouble => {
  const { runIn } = job.sheet.engine;
  const first = runIn?.steps[0]?.operation;
  if (first !== undefined) return notReadyToRun(job) ?? notYetItsTurn(job, first);
  // A gate of the run is the first start: nobody goes round it.
  const gate = operationsIn(job).find((one) => one.gate && one.phase === 'run' && !job.done.has(one.name));
  return (
    notReadyToRun(job) ??
    (gate && trouble(`“${gate.title}” is not signed`, 'run step', 'do it first, and sign it'))
  );
};

const held = ({ alarms, openFaults }: RunInStanding): Trouble => {
  const [alarm] = alarms;
  if (alarm !== undefined)
    return trouble(
      alarm.says,
      'run',
      `${alarm.remedy}; then note the fault, or strike the reading out where the gauge was misread`,
    );
  const fault = openFaults.find(({ stopsRun }) => stopsRun);
  return fault === undefined
    ? undefined
    : trouble(
        `a fault is not put right: ${fault.says}`,
        'run',
        'put it right, and write down what was done, before the engine runs again',
      );
};

export const beginRunStepTrouble = (job: OpenJob, asked: RequestOf<'begin run step'>): Trouble => {
  const { runIn, title } = job.sheet.engine;
  const standing = runInStanding(job);
  if (runIn === undefined)
    return trouble(
      `${title} has no run-in steps`,
      'run step',
      'log what was run as a step with its speed and load',
    );
  const stopped = notReadyToRun(job) ?? held(standing);
  if (stopped) return stopped;
  const { next } = standing;
  if (next === undefined)
    return trouble('every step of the run-in is passed', 'run step', 'nothing is left to run');
  if (asked.step !== next.number)
    return trouble(
      `step ${next.number}, “${next.step.title}”, is next${next.attempt === undefined ? '' : `: ${next.attempt.lacking.join('; ')}`}`,
      `run step ${asked.step}`,
      next.attempt === undefined ? `begin step ${next.number}` : `go on with step ${next.number}`,
    );
  const turn = notYetItsTurn(job, next.step.operation);
  if (turn) return turn;
  if (standing.starts && asked.oilPressureAfter === undefined)
    return trouble(
      'it is not written how long after the start oil pressure showed',
      `run step ${asked.step}`,
      `write the seconds; where none shows within ${runIn.noOilPressureWithin === undefined ? '' : typedText(runIn.noOilPressureWithin)}, stop the engine at once`,
    );
  return badFigure(asked.oilPressureAfter, 'time', `run step ${asked.step}, oil pressure after`, { from: 0 });
};

const badGauge = ({ gauge: name, cylinder, typed }: GaugeReading, cylinders: number): Trouble => {
  const gauge = gaugeNamed(name);
  if (gauge === undefined) return trouble(`there is no gauge ${name}`, 'run reading', 'take it out');
  const where = cylinder === undefined ? gauge.title : `${gauge.title}, cylinder ${cylinder}`;
  if (gauge.each === true ? cylinder === undefined || cylinder > cylinders : cylinder !== undefined)
    return gauge.each === true
      ? trouble('it is not said of which cylinder', where, `give a cylinder from 1 to ${cylinders}`)
      : trouble('it is read once, and a cylinder is given', where, 'leave the cylinder out');
  const amounts = gauge.of.map((dimension) => amountOf(typed, dimension));
  if (amounts.some(({ kind }) => kind === 'answer')) {
    const cold = amounts.some((one) => one.kind === 'answer' && one.value < 0);
    return cold && !gauge.name.endsWith('temperature') && gauge.name !== 'crankcase-pressure'
      ? trouble(`${typedText(typed)} is less than 0`, where, 'type it again')
      : undefined;
  }
  const [refused] = amounts.flatMap((one) => (one.kind === 'refused' ? [one.refusal] : []));
  return refused === undefined
    ? undefined
    : {
        ...refused,
        where,
        remedy: gauge.of.length > 1 ? `give ${gauge.of.map(dimensionText).join(' or ')}` : refused.remedy,
      };
};

export const takeRunReadingTrouble = (job: OpenJob, asked: RequestOf<'take run reading'>): Trouble => {
  const standing = runInStanding(job);
  const { inHand } = standing;
  const where = `run step ${asked.step}`;
  const stopped = held(standing);
  if (stopped) return stopped;
  if (inHand === undefined || inHand.number !== asked.step)
    return trouble(
      inHand === undefined ? 'no step is begun' : `step ${inHand.number}, “${inHand.step.title}”, is in hand`,
      where,
      inHand === undefined
        ? 'begin the step when speed and load are set'
        : `take the reading in step ${inHand.number}`,
    );
  const last = inHand.readings.filter(({ struckOut }) => struckOut === undefined).at(-1);
  if (last !== undefined && asked.minute <= last.told.minute)
    return trouble(
      `the last reading was taken at minute ${last.told.minute}`,
      `${where}, minute`,
      'give the minutes since the step was begun, more than those of the last reading',
    );
  const twice = asked.gauges.find((one, at) =>
    asked.gauges.some(
      (other, before) => before < at && other.gauge === one.gauge && other.cylinder === one.cylinder,
    ),
  );
  if (twice !== undefined)
    return trouble(
      `${gaugeNamed(twice.gauge)?.title ?? twice.gauge} stands in it twice`,
      where,
      'give each gauge once',
    );
  for (const one of asked.gauges) {
    const bad = badGauge(one, job.sheet.engine.cylinders);
    if (bad) return bad;
  }
  return undefined;
};

export const strikeOutRunReadingTrouble = (
  job: OpenJob,
  asked: RequestOf<'strike out run reading'>,
): Trouble => {
  const { inHand } = runInStanding(job);
  const reading = inHand?.readings.find(({ id }) => id === asked.reading);
  if (reading === undefined)
    return trouble(
      'it is no reading of the step in hand',
      'strike out',
      'only what was read in the step in hand can be struck out',
    );
  if (reading.struckOut !== undefined)
    return trouble('it is struck out already', 'strike out', 'nothing is left to do');
  return blank(asked.why, 'strike out', 'write why it does not count, for example which gauge was misread');
};

export const noteFaultTrouble = (job: OpenJob, asked: RequestOf<'note fault'>): Trouble => {
  const { places, title } = job.sheet.engine;
  if (asked.place !== undefined && !places.has(asked.place))
    return trouble(`${title} has no place “${asked.place}”`, 'fault', chooseName(asked.place, places.keys()));
  const { alarms } = runInStanding(job);
  if (alarms.length > 0 && !asked.stopsRun)
    return trouble(
      'an alarm stands, and a fault that does not bear on the run does not answer it',
      'fault',
      'note what was found as bearing on the run, or strike the reading out where the gauge was misread',
    );
  return blank(asked.says, 'fault', 'write what was found');
};

export const putFaultRightTrouble = (job: OpenJob, asked: RequestOf<'put fault right'>): Trouble => {
  const fault = runInStanding(job).faults.find(({ id }) => id === asked.fault);
  if (fault === undefined)
    return trouble('there is no such fault', 'fault', 'name one of those that are noted');
  if (fault.putRight !== undefined)
    return trouble(
      `it was put right by ${fault.putRight.by}`,
      fault.says,
      'note it anew where it has come back',
    );
  return blank(asked.done, 'fault', 'write what was done about it');
};
