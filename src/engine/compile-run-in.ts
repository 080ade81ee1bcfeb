/** @module The run-in put together from its file: each step with every limit that holds in it, in the core's units. */
import type { z } from 'zod';
import { amountOf, type Typed, unitTyped } from '../quantity/typed.ts';
import { unitsOf } from '../quantity/unit.ts';
import { type FigureKind, gaugeKind } from './figure-field.ts';
import { type FigureReader, readFigure } from './figure-reader.ts';
import type { FilePath } from './file-path.ts';
import { type LimitedGauge, limitedGauges, steadyGauges } from './gauge.ts';
import { given } from './given.ts';
import type { GaugeLimit, RunIn, RunInStep, Steady } from './run-in.ts';
import type { runInFile } from './run-in-file.ts';

type RunInFile = z.infer<typeof runInFile>;
type StepFile = RunInFile['steps'][number];
type LimitsFile = NonNullable<RunInFile['limits']>;

/** A difference of temperatures: 9 °F are 5 °C of difference. */
const differenceOf = (typed: Typed): number => {
  const [amount, zero] = [amountOf(typed, 'temperature'), amountOf({ ...typed, text: '0' }, 'temperature')];
  return amount.kind === 'answer' && zero.kind === 'answer' ? amount.value - zero.value : Number.NaN;
};

const limitOf = (
  reader: FigureReader,
  file: NonNullable<LimitsFile[LimitedGauge]>,
  gauge: LimitedGauge,
  path: FilePath,
): GaugeLimit => {
  const printed: Record<string, Typed> = {};
  const read = (key: keyof typeof file, kind: FigureKind, amountFrom?: (typed: Typed) => number) => {
    const text = file[key];
    if (text === undefined) return undefined;
    const { typed, amount } = readFigure(reader, text, kind, [...path, key]);
    printed[key] = typed;
    return amountFrom === undefined ? amount : amountFrom(typed);
  };
  const kind = gaugeKind(gauge);
  return {
    ...given('least', read('least', kind)),
    ...given('greatest', read('greatest', kind)),
    ...given('withOilAt', read('with-oil-at', 'temperature')),
    ...given('spread', read('spread', 'temperature', differenceOf)),
    printed,
  };
};

const limitsOf = (reader: FigureReader, file: LimitsFile | undefined, path: FilePath) =>
  limitedGauges.flatMap((gauge) => {
    const limit = file?.[gauge];
    return limit === undefined ? [] : [[gauge, limitOf(reader, limit, gauge, [...path, gauge])] as const];
  });

const steadyOf = (reader: FigureReader, file: NonNullable<StepFile['steady']>, path: FilePath): Steady => ({
  apart: file.apart,
  within: new Map(
    steadyGauges.flatMap((gauge) => {
      const text = file.within[gauge];
      if (text === undefined) return [];
      const { typed } = readFigure(reader, text, 'temperature', [...path, 'within', gauge]);
      return [[gauge, { amount: differenceOf(typed), printed: typed }] as const];
    }),
  ),
});

/** A load is a torque where it is written in one, else a share of full load. */
const loadOf = (reader: FigureReader, text: string, path: FilePath): Typed => {
  const unit = unitTyped(text.replace(/\(.*\)$/, '').trim());
  const torque = unit !== '' && !unitsOf('ratio').includes(unit) && unit !== 'percent';
  return readFigure(reader, text, torque ? 'torque' : 'ratio', path).typed;
};

const stepOf = (
  reader: FigureReader,
  file: StepFile,
  everywhere: readonly (readonly [LimitedGauge, GaugeLimit])[],
  path: FilePath,
): RunInStep => ({
  title: file.title,
  operation: file.operation,
  speed: readFigure(reader, file.speed, 'speed', [...path, 'speed']).typed,
  load: loadOf(reader, file.load, [...path, 'load']),
  minutes: file.minutes,
  limits: new Map([...everywhere, ...limitsOf(reader, file.limits, [...path, 'limits'])]),
  ...given('steady', file.steady && steadyOf(reader, file.steady, [...path, 'steady'])),
});

export const runInOf = (reader: FigureReader, file: RunInFile): RunIn => {
  const path = ['run-in'];
  const everywhere = limitsOf(reader, file.limits, [...path, 'limits']);
  const within = file['no-oil-pressure-within'];
  return {
    steps: file.steps.map((step, at) => stepOf(reader, step, everywhere, [...path, 'steps', at])),
    setWithin: readFigure(reader, file['set-within'], 'ratio', [...path, 'set-within']).amount,
    afterFault: file['after-fault'],
    limits: new Map(everywhere),
    ...given('readEvery', file['read-every']),
    ...given(
      'noOilPressureWithin',
      within === undefined
        ? undefined
        : readFigure(reader, within, 'time', [...path, 'no-oil-pressure-within']).typed,
    ),
    ...given('source', file.source),
  };
};
