/** @module One reading of all gauges held against the limits of its step: within, an alarm, or not there yet. */
import { type Gauge, type GaugeName, gaugeNamed, gauges, limitedGauges } from '../../engine/gauge.ts';
import type { GaugeLimit, RunIn, RunInStep } from '../../engine/run-in.ts';
import { formatFigure, tidy } from '../../quantity/figure.ts';
import { amountOf, type Typed, typedText } from '../../quantity/typed.ts';
import { findUnit, stepFromCore, unitOf } from '../../quantity/unit.ts';
import type { GaugeReading } from '../run-fact.ts';

/**
 * `too low` and `too high` are alarms. `not yet`: no harm, and the step is not passed so: the oil still cold, the load
 * not as set.
 */
export type GaugeVerdict = 'within' | 'too low' | 'too high' | 'not yet' | 'no limit';

export interface JudgedGauge extends GaugeReading {
  readonly verdict: GaugeVerdict;
  /** What it is held against, in words: `1.2 bar to 5.5 bar`. */
  readonly limit: string;
  /** Why it is not yet so, in words. */
  readonly why?: string;
}

/** How far apart the cylinders are, where the manual says how far they may be. */
export interface JudgedSpread {
  readonly gauge: GaugeName;
  readonly verdict: 'within' | 'too high';
  readonly spread: string;
  readonly limit: string;
}

export interface JudgedGauges {
  readonly gauges: readonly JudgedGauge[];
  readonly spreads: readonly JudgedSpread[];
}

/** In the core's unit, by what it is a figure of; none where it cannot be read. */
export const gaugeAmount = (gauge: Gauge, typed: Typed | undefined): number | undefined => {
  if (typed === undefined) return undefined;
  for (const dimension of gauge.of) {
    const amount = amountOf(typed, dimension);
    if (amount.kind === 'answer') return amount.value;
  }
  return undefined;
};

/** `1.2 bar to 5.5 bar`, `at least …`, `at most …`. */
const boundsText = ({ printed }: GaugeLimit): string => {
  const [least, greatest, oil] = ['least', 'greatest', 'with-oil-at'].map((key) =>
    printed[key] === undefined ? undefined : typedText(printed[key]),
  );
  const bounds =
    least !== undefined && greatest !== undefined
      ? `${least} to ${greatest}`
      : least !== undefined
        ? `at least ${least}`
        : greatest !== undefined
          ? `at most ${greatest}`
          : '';
  return oil === undefined ? bounds : `${bounds}, oil at ${oil}`;
};

const oilOf = (taken: readonly GaugeReading[]): number | undefined => {
  const [gauge, read] = [gaugeNamed('oil-temperature'), taken.find((one) => one.gauge === 'oil-temperature')];
  return gauge === undefined || read === undefined ? undefined : gaugeAmount(gauge, read.typed);
};

interface Weighed {
  readonly verdict: GaugeVerdict;
  readonly why?: string;
}

const weighed = (
  { of }: Gauge,
  amount: number,
  { least, greatest, withOilAt, printed }: GaugeLimit,
  oil: number | undefined,
): Weighed => {
  const [kind] = of;
  if (least !== undefined && amount < least) {
    if (kind === 'temperature') return { verdict: 'not yet', why: 'let it warm' };
    return kind === 'speed' ? { verdict: 'not yet', why: 'bring the speed up' } : { verdict: 'too low' };
  }
  if (withOilAt !== undefined && (oil === undefined || oil < withOilAt)) {
    const warm = printed['with-oil-at'];
    return {
      verdict: 'not yet',
      why:
        oil === undefined
          ? 'read the oil temperature too'
          : `let the oil warm to ${warm === undefined ? '' : typedText(warm)}`,
    };
  }
  if (greatest === undefined || amount <= greatest) return { verdict: 'within' };
  return kind === 'speed' ? { verdict: 'not yet', why: 'bring the speed down' } : { verdict: 'too high' };
};

/** The greatest that any step asks, of which a share is how far the setting may be off. */
const greatestAsked = ({ steps }: RunIn, key: 'speed' | 'load', gauge: Gauge): number =>
  Math.max(...steps.map((step) => gaugeAmount(gauge, step[key]) ?? 0));

/** Speed and load against what the step asks. */
const asSet = (runIn: RunIn, step: RunInStep, gauge: Gauge, typed: Typed): Weighed => {
  const key = gauge.name === 'load' ? 'load' : 'speed';
  const asked = step[key];
  const unit = findUnit(typed.unit);
  const sameKind = unit.kind === 'answer' && unitOf(asked.unit, unit.value.dimension).kind === 'answer';
  if (!sameKind) return { verdict: 'not yet', why: `read it as ${typedText(asked)} is written` };
  const off = (gaugeAmount(gauge, typed) ?? 0) - (gaugeAmount(gauge, asked) ?? 0);
  // One part in a thousand million: what is left of a figure by changing its unit.
  const room = runIn.setWithin * greatestAsked(runIn, key, gauge) * (1 + 1e-9);
  if (Math.abs(off) <= room) return { verdict: 'within' };
  return { verdict: 'not yet', why: `set ${typedText(asked)}` };
};

const settingText = (runIn: RunIn, step: RunInStep, gauge: Gauge): string => {
  const asked = gauge.name === 'load' ? step.load : step.speed;
  const unit = findUnit(asked.unit);
  const room = runIn.setWithin * greatestAsked(runIn, gauge.name === 'load' ? 'load' : 'speed', gauge);
  const shown = unit.kind === 'answer' ? tidy(stepFromCore(room, unit.value)) : 0;
  return `${typedText(asked)} ± ${Number(shown.toPrecision(3))} ${asked.unit === '1' ? '' : asked.unit}`.trim();
};

const judgeOne = (
  runIn: RunIn,
  step: RunInStep,
  read: GaugeReading,
  oil: number | undefined,
): JudgedGauge => {
  const gauge = gaugeNamed(read.gauge);
  const amount = gauge && gaugeAmount(gauge, read.typed);
  if (gauge === undefined || amount === undefined)
    return { ...read, verdict: 'not yet', limit: '', why: 'it cannot be read: take it again' };
  const name = limitedGauges.find((one) => one === read.gauge);
  const limit = name && step.limits.get(name);
  const set = gauge.name === 'speed' || gauge.name === 'load';
  const held = limit === undefined ? undefined : weighed(gauge, amount, limit, oil);
  if (held !== undefined && limit !== undefined && held.verdict !== 'within')
    return { ...read, ...held, limit: boundsText(limit) };
  if (set && limit === undefined)
    return { ...read, ...asSet(runIn, step, gauge, read.typed), limit: settingText(runIn, step, gauge) };
  return limit === undefined || boundsText(limit) === ''
    ? { ...read, verdict: 'no limit', limit: '' }
    : { ...read, verdict: 'within', limit: boundsText(limit) };
};

/** A difference of temperatures in the unit that the limit is printed in. */
const spreadText = (spread: number, printed: Typed): string => {
  const unit = unitOf(printed.unit, 'temperature');
  return unit.kind === 'refused'
    ? ''
    : `${formatFigure(tidy(stepFromCore(spread, unit.value)), 0)} ${printed.unit}`;
};

const spreadsOf = (step: RunInStep, taken: readonly GaugeReading[]): readonly JudgedSpread[] =>
  gauges.flatMap((gauge) => {
    const name = limitedGauges.find((one) => one === gauge.name);
    const limit = name && step.limits.get(name);
    const printed = limit?.printed.spread;
    const amounts = taken
      .filter((one) => one.gauge === gauge.name)
      .flatMap(({ typed }) => gaugeAmount(gauge, typed) ?? []);
    if (limit?.spread === undefined || printed === undefined || amounts.length < 2) return [];
    const spread = Math.max(...amounts) - Math.min(...amounts);
    return [
      {
        gauge: gauge.name,
        verdict: spread > limit.spread ? ('too high' as const) : ('within' as const),
        spread: spreadText(spread, printed),
        limit: `at most ${typedText(printed)} apart`,
      },
    ];
  });

/**
 * What each gauge of one reading comes to by the limits of its step. A pressure below its least and anything above its
 * greatest is an alarm; a temperature that is not up yet, a greatest pressure while the oil is cold, a speed or load
 * that is not as set only keep the step from being passed.
 */
export const judgeGauges = (runIn: RunIn, step: RunInStep, taken: readonly GaugeReading[]): JudgedGauges => ({
  gauges: taken.map((read) => judgeOne(runIn, step, read, oilOf(taken))),
  spreads: spreadsOf(step, taken),
});

/** What one gauge is held against in a step, in words; '' where it has no limit there. */
export const limitText = (runIn: RunIn, step: RunInStep, gauge: Gauge): string => {
  const name = limitedGauges.find((one) => one === gauge.name);
  const limit = name && step.limits.get(name);
  if (limit === undefined)
    return gauge.name === 'speed' || gauge.name === 'load' ? settingText(runIn, step, gauge) : '';
  const spread = limit.printed.spread;
  return [boundsText(limit), ...(spread === undefined ? [] : [`at most ${typedText(spread)} apart`])]
    .filter((text) => text !== '')
    .join(', ');
};
