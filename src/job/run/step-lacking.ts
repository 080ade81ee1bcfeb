/** @module What a step of the run-in lacks to be passed: minutes, gauges, limits, temperatures at rest. */
import { type Gauge, gaugeNamed, gauges, limitedGauges } from '../../engine/gauge.ts';
import type { RunIn, RunInStep } from '../../engine/run-in.ts';
import { formatFigure, tidy } from '../../quantity/figure.ts';
import { type Typed, typedText } from '../../quantity/typed.ts';
import { stepFromCore, unitOf } from '../../quantity/unit.ts';
import { restOf } from '../../reckon/steady.ts';
import { timeProved } from '../../reckon/time-proved.ts';
import { gaugeTitle } from './alarm.ts';
import { gaugeAmount } from './judged-reading.ts';
import type { TakenReading } from './taken-reading.ts';

interface StepProof {
  readonly minutes: number;
  readonly left: number;
  readonly lacking: readonly string[];
}

/** One gauge to be read, of one cylinder where each has its own. */
export interface GaugePoint {
  readonly gauge: Gauge;
  readonly cylinder?: number;
}

/** A gauge as often as it is there. */
export const pointsOf = (gauge: Gauge, cylinders: number): readonly GaugePoint[] =>
  gauge.each === true
    ? Array.from({ length: cylinders }, (_, at) => ({ gauge, cylinder: at + 1 }))
    : [{ gauge }];

export const pointTitle = ({ gauge, cylinder }: GaugePoint): string =>
  gaugeTitle({ gauge: gauge.name, ...(cylinder !== undefined && { cylinder }) });

/** What the reading that a step is passed by must hold: speed, load, and each gauge with a limit. */
export const gaugesWanted = (step: RunInStep, cylinders: number): readonly GaugePoint[] =>
  gauges.flatMap((gauge) => {
    const limited = limitedGauges.find((name) => name === gauge.name);
    const steady = [...(step.steady?.within.keys() ?? [])].some((name) => name === gauge.name);
    const set = gauge.name === 'speed' || gauge.name === 'load';
    const oil =
      gauge.name === 'oil-temperature' &&
      [...step.limits.values()].some(({ withOilAt }) => withOilAt !== undefined);
    return set || steady || oil || (limited !== undefined && step.limits.has(limited))
      ? pointsOf(gauge, cylinders)
      : [];
  });

const readAt = ({ told }: TakenReading, { gauge, cylinder }: GaugePoint) =>
  told.gauges.find((one) => one.gauge === gauge.name && one.cylinder === cylinder);

const notRead = (step: RunInStep, cylinders: number, last: TakenReading): readonly string[] => {
  const missing = gaugesWanted(step, cylinders).filter((point) => readAt(last, point) === undefined);
  return missing.length === 0 ? [] : [`the last reading lacks ${missing.map(pointTitle).join(', ')}`];
};

const notYet = ({ judged }: TakenReading): readonly string[] =>
  judged.gauges.flatMap((one) =>
    one.verdict === 'not yet'
      ? [`${gaugeTitle(one)} ${typedText(one.typed)}: ${one.why ?? `it is to be ${one.limit}`}`]
      : [],
  );

const differenceText = (difference: number, printed: Typed): string => {
  const unit = unitOf(printed.unit, 'temperature');
  return unit.kind === 'refused'
    ? ''
    : `${formatFigure(tidy(stepFromCore(difference, unit.value)), 1)} ${printed.unit}`;
};

const notSteady = (
  { steady }: RunInStep,
  cylinders: number,
  readings: readonly TakenReading[],
): readonly string[] => {
  if (steady === undefined) return [];
  return [...steady.within].flatMap(([name, { amount: within, printed }]) => {
    const gauge = gaugeNamed(name);
    if (gauge === undefined) return [];
    return pointsOf(gauge, cylinders).flatMap((point) => {
      const values = readings.flatMap((reading) => {
        const value = gaugeAmount(gauge, readAt(reading, point)?.typed);
        return value === undefined ? [] : [{ minute: reading.told.minute, value }];
      });
      const { counted, spread } = restOf(values, steady.apart);
      if (counted < 3)
        return [
          `${pointTitle(point)} is to be steady: ${3 - counted} more reading${counted === 2 ? '' : 's'}, ${steady.apart} min apart`,
        ];
      // What is left of a difference by changing its unit is no difference.
      return spread <= within + 1e-9
        ? []
        : [
            `${pointTitle(point)} is not steady yet: the last three lie ${differenceText(spread, printed)} apart, at most ${typedText(printed)}`,
          ];
    });
  });
};

/** Readings that count, in their order; what they prove of the step, and what is lacking beside alarms. */
export const stepLacking = (
  { readEvery }: RunIn,
  step: RunInStep,
  cylinders: number,
  readings: readonly TakenReading[],
): StepProof => {
  const minutes = timeProved(
    readings.map(({ told }) => told.minute),
    readEvery,
  );
  const left = Math.max(0, step.minutes - minutes);
  const last = readings.at(-1);
  const every = readEvery === undefined ? '' : `, a reading every ${readEvery} min`;
  return {
    minutes,
    left,
    lacking: [
      ...(left > 0 ? [`${Number(left.toFixed(1))} min to go${every}`] : []),
      ...(last === undefined
        ? ['no reading is taken']
        : [...notRead(step, cylinders, last), ...notYet(last)]),
      ...notSteady(step, cylinders, readings),
    ],
  };
};
