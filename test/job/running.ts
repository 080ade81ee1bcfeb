/** @module The invented two-cylinder engine with a run-in, built and started: what is run in tests. */
import type { JobEvent } from '../../src/job/event.ts';
import type { GaugeReading } from '../../src/job/run-fact.ts';
import type { Typed } from '../../src/quantity/typed.ts';
import { agreed, type Bench, mm } from './bench.ts';
import { sparrowbill } from './sparrowbill.ts';

/** Three steps and a cooling one; oil pressure, water and exhaust have limits; a fault restarts all. */
export const plainRunIn = `
run-in:
  source: invented for the tests
  after-fault: restart all
  set-within: 5 %
  read-every: 10
  no-oil-pressure-within: 15 s
  limits:
    oil-pressure: { least: 1.5 bar }
    water-temperature: { greatest: 95 °C }
    exhaust-temperature: { greatest: 550 °C, spread: 50 °C }
  steps:
    - { title: Idle, operation: run-in, speed: 700 rpm, load: 0 %, minutes: 10 }
    - title: Half load
      operation: run-in
      speed: 1500 rpm
      load: 50 %
      minutes: 20
      limits: { oil-pressure: { least: 2 bar, greatest: 5 bar, with-oil-at: 60 °C } }
    - title: Full load
      operation: full-load
      speed: 1500 rpm
      load: 100 %
      minutes: 30
      limits: { water-temperature: { least: 70 °C, greatest: 95 °C } }
      steady: { apart: 10, within: { water-temperature: 2 °C } }
`;

const operations = `
  run-in: { title: Run in by steps, phase: run, after: [first-start] }
  full-load: { title: Prove full load, phase: run, after: [run-in] }`;

export const runningEngine = (runIn = plainRunIn): string =>
  `${sparrowbill.replace(/(\n {2}first-start: .*)/, `$1${operations}`)}${runIn.trimStart()}`;

/** Agreed, built and set; first start is not signed. */
export const built = (runIn?: string): Bench => {
  const bench = agreed(runningEngine(runIn));
  bench.read('pump.1', '59.40');
  bench.read('pump.2', '59.42');
  bench.done({ kind: 'count shims', shims: [{ thickness: mm('0.30'), count: 4 }] });
  for (const operation of ['lift-crankshaft', 'lay-crankshaft', 'fit-pumps'])
    bench.done({ kind: 'do operation', operation, note: '' });
  for (const place of ['pump.1', 'pump.2'])
    bench.done({ kind: 'fit pack', place, shims: [mm('0.30'), mm('0.30')] });
  return bench;
};

/** As `built`, and started. */
export const started = (runIn?: string): Bench => {
  const bench = built(runIn);
  bench.done({ kind: 'do operation', operation: 'first-start', note: '' });
  return bench;
};

const typedOf = (text: string): Typed => {
  const [figure = '', unit = ''] = text.split(' ');
  return { text: figure, unit };
};

const names = {
  oil: 'oil-pressure',
  'oil at': 'oil-temperature',
  water: 'water-temperature',
  speed: 'speed',
  load: 'load',
  crankcase: 'crankcase-pressure',
} as const;

/** `{ speed: '700 rpm', oil: '2.1 bar', exhaust: '180 °C, 190 °C' }`: the exhaust of each cylinder in turn. */
export type Shown = Partial<Record<keyof typeof names | 'exhaust', string>>;

const gaugesShown = (shown: Shown): readonly GaugeReading[] =>
  Object.entries(shown).flatMap(([name, text]): readonly GaugeReading[] =>
    name === 'exhaust'
      ? text.split(', ').map((each, at) => ({
          gauge: 'exhaust-temperature' as const,
          cylinder: at + 1,
          typed: typedOf(each),
        }))
      : [{ gauge: names[name as keyof typeof names], typed: typedOf(text) }],
  );

export const begin = (step: number, after?: string) =>
  ({
    kind: 'begin run step',
    step,
    note: '',
    ...(after !== undefined && { oilPressureAfter: typedOf(after) }),
  }) as const;

export const reading = (step: number, minute: number, shown: Shown) =>
  ({ kind: 'take run reading', step, minute, gauges: gaugesShown(shown), note: '' }) as const;

/** What the gauges show when all is well. */
export const idle: Shown = {
  speed: '700 rpm',
  load: '0 %',
  oil: '2.1 bar',
  water: '52 °C',
  exhaust: '160 °C, 170 °C',
};
export const half: Shown = {
  speed: '1500 rpm',
  load: '50 %',
  oil: '3.2 bar',
  'oil at': '72 °C',
  water: '74 °C',
  exhaust: '330 °C, 345 °C',
};
export const full: Shown = { ...half, load: '100 %', water: '82 °C', exhaust: '460 °C, 480 °C' };

/** Passes the first two steps, and signs their operation. */
export const ranIn = (bench: Bench): JobEvent => {
  bench.done(begin(1, '6 s'));
  bench.done(reading(1, 10, idle));
  bench.done(begin(2));
  bench.done(reading(2, 10, half));
  bench.done(reading(2, 20, half));
  return bench.done({ kind: 'do operation', operation: 'run-in', note: '' });
};
