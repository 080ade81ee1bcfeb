/** @module What each gauge showed over the run, with its limits step by step: what a trend is drawn from. */
import { type Gauge, gauges, limitedGauges } from '../../engine/gauge.ts';
import type { GaugeLimit } from '../../engine/run-in.ts';
import { findUnit, fromCore, type Unit } from '../../quantity/unit.ts';
import type { OpenJob } from '../job.ts';
import type { Attempt } from './attempt.ts';
import { gaugeAmount } from './judged-reading.ts';
import { type GaugePoint, pointsOf } from './step-lacking.ts';

export interface TrendStretch {
  /** Minutes of running, from the first step begun. */
  readonly from: number;
  readonly to: number;
  readonly step: number;
  readonly title: string;
  readonly least?: number;
  readonly greatest?: number;
  /** Whether it counts no longer. */
  readonly ended: boolean;
}

export interface Trend {
  readonly gauge: Gauge;
  /** In which the figures are. */
  readonly unit: string;
  readonly lines: readonly {
    readonly cylinder?: number;
    readonly points: readonly (readonly [minute: number, value: number])[];
  }[];
  readonly stretches: readonly TrendStretch[];
}

interface Stretch {
  readonly attempt: Attempt;
  readonly from: number;
  readonly to: number;
}

const stretchesOf = (attempts: readonly Attempt[]): readonly Stretch[] => {
  let from = 0;
  return attempts.map((attempt) => {
    const to = from + Math.max(1, ...attempt.readings.map(({ told }) => told.minute));
    const stretch = { attempt, from, to };
    from = to;
    return stretch;
  });
};

/** The unit in which it was read last, of the gauge's first kind. */
const unitRead = (gauge: Gauge, attempts: readonly Attempt[]): Unit | undefined => {
  const typed = attempts
    .flatMap(({ readings }) => readings.flatMap(({ told }) => told.gauges))
    .findLast((one) => one.gauge === gauge.name)?.typed;
  const unit = typed && findUnit(typed.unit);
  return unit?.kind === 'answer' && unit.value.dimension === gauge.of[0] ? unit.value : undefined;
};

const pointsRead = (
  { gauge, cylinder }: GaugePoint,
  unit: Unit,
  stretches: readonly Stretch[],
): readonly (readonly [number, number])[] =>
  stretches.flatMap(({ attempt, from }) =>
    attempt.readings.flatMap(({ told, struckOut }) => {
      const read = told.gauges.find((one) => one.gauge === gauge.name && one.cylinder === cylinder);
      const value = gaugeAmount(gauge, read?.typed);
      return value === undefined || struckOut !== undefined
        ? []
        : [[from + told.minute, fromCore(value, unit)] as const];
    }),
  );

const limitOf = (gauge: Gauge, { step }: Attempt): GaugeLimit | undefined => {
  const name = limitedGauges.find((one) => one === gauge.name);
  return name && step.limits.get(name);
};

/** A trend of each gauge that was read twice at least and has a limit, in the order of the gauges. */
export const trendsOf = (job: OpenJob, attempts: readonly Attempt[]): readonly Trend[] => {
  const stretches = stretchesOf(attempts);
  return gauges.flatMap((gauge): readonly Trend[] => {
    const unit = unitRead(gauge, attempts);
    if (unit === undefined || !attempts.some((attempt) => limitOf(gauge, attempt) !== undefined)) return [];
    const lines = pointsOf(gauge, job.sheet.engine.cylinders)
      .map(({ cylinder }) => ({
        ...(cylinder !== undefined && { cylinder }),
        points: pointsRead({ gauge, ...(cylinder !== undefined && { cylinder }) }, unit, stretches),
      }))
      .filter(({ points }) => points.length > 1);
    if (lines.length === 0) return [];
    return [
      {
        gauge,
        unit: unit.symbol,
        lines,
        stretches: stretches.map(({ attempt, from, to }) => {
          const { least, greatest } = limitOf(gauge, attempt) ?? {};
          return {
            from,
            to,
            step: attempt.number,
            title: attempt.step.title,
            ended: attempt.ended !== undefined,
            ...(least !== undefined && { least: fromCore(least, unit) }),
            ...(greatest !== undefined && { greatest: fromCore(greatest, unit) }),
          };
        }),
      },
    ];
  });
};
