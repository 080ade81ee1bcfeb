/** @module Rule: a run-in can be run: its steps belong to operations of the run, rise before they fall, and no limit is a slip of unit. */
import { amountOf, type Typed, typedText } from '../../quantity/typed.ts';
import { findUnit } from '../../quantity/unit.ts';
import type { EngineType } from '../engine-type.ts';
import type { FilePath } from '../file-path.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import { gaugeNamed, type LimitedGauge } from '../gauge.ts';
import { chooseName } from '../nearest-name.ts';
import type { GaugeLimit, RunIn, RunInStep } from '../run-in.ts';

const stepPath = (at: number): FilePath => ['run-in', 'steps', at];

const dimensionOf = ({ unit }: Typed) => {
  const found = findUnit(unit);
  return found.kind === 'answer' && found.value.dimension === 'torque' ? 'torque' : 'ratio';
};
const amount = (typed: Typed, dimension: 'speed' | 'torque' | 'ratio' | 'time'): number => {
  const found = amountOf(typed, dimension);
  return found.kind === 'answer' ? found.value : Number.NaN;
};
const loadOf = ({ load }: RunInStep): number => amount(load, dimensionOf(load));
const speedOf = ({ speed }: RunInStep): number => amount(speed, 'speed');

const operationsOf = ({ operations }: EngineType, { steps }: RunIn): readonly Finding[] => {
  const order = [...operations.keys()];
  return steps.flatMap(({ title, operation }, at) => {
    const path = [...stepPath(at), 'operation'];
    const known = operations.get(operation);
    if (known === undefined)
      return [wrong(path, `there is no operation ${operation}`, chooseName(operation, operations.keys()))];
    if (known.phase !== 'run')
      return [
        wrong(
          path,
          `${title} is run in ${operation}, which is not of the run`,
          'name an operation of phase run',
        ),
      ];
    const before = steps[at - 1]?.operation;
    return before !== undefined && order.indexOf(before) > order.indexOf(operation)
      ? [
          wrong(
            path,
            `${title} belongs to ${operation}, which is before ${before} of the step before`,
            'put the steps in the order of their operations',
          ),
        ]
      : [];
  });
};

/** More than this is a slip: ISO 3046 knows an overload of a tenth. */
const greatestLoad = 1.1;

const loads = ({ steps }: RunIn): readonly Finding[] =>
  steps.flatMap((step, at) => {
    const path = [...stepPath(at), 'load'];
    const dimension = dimensionOf(step.load);
    const load = loadOf(step);
    if (load < 0) return [wrong(path, `a load of ${typedText(step.load)} is none`, 'give 0 or more')];
    if (dimension === 'ratio' && load > greatestLoad)
      return [
        wrong(
          path,
          `${step.title} asks for ${Math.round(load * 100)} % of full load`,
          'a load is a share of full load, for example `50 %`, up to 110 %',
        ),
      ];
    const first = steps[0];
    return first !== undefined && dimensionOf(first.load) !== dimension
      ? [
          wrong(
            path,
            'loads are written as shares of full load and as torques',
            'write all of them in one way, so that they can be held against one another',
          ),
        ]
      : [];
  });

/** Up to the heaviest step both rise; only behind it may they fall, to let the engine cool. */
const rising = ({ steps }: RunIn): readonly Finding[] => {
  const top = steps.reduce(
    (best, step, at) => (loadOf(step) > loadOf(steps[best] as RunInStep) ? at : best),
    0,
  );
  return steps.slice(0, top + 1).flatMap((step, at) => {
    const before = steps[at - 1];
    if (before === undefined) return [];
    return (
      [
        ['load', loadOf(step), loadOf(before)],
        ['speed', speedOf(step), speedOf(before)],
      ] as const
    ).flatMap(([key, now, then]) =>
      now >= then
        ? []
        : [
            doubtful(
              [...stepPath(at), key],
              `the ${key} of ${step.title} falls below that of ${before.title}, before the heaviest step is run`,
              'look at the order of the steps in the manual: speed and load rise step by step',
            ),
          ],
    );
  });
};

/** What no sound engine is limited to: a figure beyond is most likely in another unit. Common practice, no source. */
const likely: Partial<Readonly<Record<LimitedGauge, readonly [most: number, instead: string]>>> = {
  'oil-pressure': [15e5, 'psi or kPa'],
  'oil-temperature': [150, '°F'],
  'water-temperature': [120, '°F'],
  'water-in-temperature': [120, '°F'],
  'exhaust-temperature': [800, '°F'],
  'crankcase-pressure': [1e4, 'Pa or mmH₂O'],
};

const limitFindings = (gauge: LimitedGauge, limit: GaugeLimit, path: FilePath): readonly Finding[] => {
  const title = gaugeNamed(gauge)?.title ?? gauge;
  const { least, greatest, spread, withOilAt, printed } = limit;
  const [most, instead] = likely[gauge] ?? [];
  const shown = (key: string) => (printed[key] === undefined ? '' : typedText(printed[key]));
  return [
    ...(least !== undefined && greatest !== undefined && least > greatest
      ? [
          wrong(
            path,
            `the limits of ${title} cross: least ${shown('least')}, greatest ${shown('greatest')}`,
            'look both up in the manual; probably they are swapped or a digit is wrong',
          ),
        ]
      : []),
    ...(['least', 'greatest'] as const).flatMap((key) => {
      const bound = limit[key];
      return bound !== undefined && most !== undefined && bound > most
        ? [
            doubtful(
              [...path, key],
              `${shown(key)} is much for ${title}`,
              `look at its unit in the manual: it may be printed in ${instead}`,
            ),
          ]
        : [];
    }),
    ...(spread !== undefined && gaugeNamed(gauge)?.each !== true
      ? [
          wrong(
            [...path, 'spread'],
            `${title} is read once, so that nothing can lie apart`,
            'give a spread to the exhaust alone',
          ),
        ]
      : []),
    ...(withOilAt !== undefined && !gauge.endsWith('-pressure')
      ? [
          wrong(
            [...path, 'with-oil-at'],
            `${title} does not depend on how warm the oil is`,
            'give it to a pressure alone',
          ),
        ]
      : []),
  ];
};

const limitsIn = ({ steps, limits: everywhere }: RunIn): readonly Finding[] => [
  ...[...everywhere].flatMap(([gauge, limit]) => limitFindings(gauge, limit, ['run-in', 'limits', gauge])),
  ...steps.flatMap(({ limits }, at) =>
    [...limits].flatMap(([gauge, limit]) =>
      limit === everywhere.get(gauge) ? [] : limitFindings(gauge, limit, [...stepPath(at), 'limits', gauge]),
    ),
  ),
];

const steadiness = ({ steps }: RunIn): readonly Finding[] =>
  steps.flatMap(({ title, minutes, steady }, at) => [
    ...(steady !== undefined && steady.within.size === 0
      ? [
          wrong(
            [...stepPath(at), 'steady', 'within'],
            `${title} does not say what is to be steady`,
            'name a temperature and how far three readings of it may lie apart',
          ),
        ]
      : []),
    ...[...(steady?.within ?? [])].flatMap(([gauge, { amount: within, printed }]) =>
      within > 0
        ? []
        : [
            wrong(
              [...stepPath(at), 'steady', 'within', gauge],
              `${typedText(printed)} is no room to lie apart in`,
              'give a difference above 0, for example `3 °C`',
            ),
          ],
    ),
    ...(steady !== undefined && steady.apart * 2 > minutes
      ? [
          doubtful(
            [...stepPath(at), 'steady', 'apart'],
            `three readings ${steady.apart} minutes apart take longer than the ${minutes} minutes of ${title}`,
            'look both up in the manual',
          ),
        ]
      : []),
  ]);

/** A wider one would let a step pass at the setting of the next. */
const widest = 0.2;

const setting = ({ setWithin }: RunIn): readonly Finding[] =>
  setWithin > 0 && setWithin <= widest
    ? []
    : [
        wrong(
          ['run-in', 'set-within'],
          `speed and load within ${Number((setWithin * 100).toPrecision(6))} % of what is asked is no setting`,
          'give a share above 0, up to `20 %`, for example `5 %`',
        ),
      ];

const oilPressure = ({ noOilPressureWithin: within }: RunIn): readonly Finding[] =>
  within === undefined || (amount(within, 'time') > 0 && amount(within, 'time') * 3600 <= 60)
    ? []
    : [
        doubtful(
          ['run-in', 'no-oil-pressure-within'],
          `${typedText(within)} without oil pressure is not what a bearing stands`,
          'look it up in the manual: it is some seconds',
        ),
      ];

export const runInSense = (engine: EngineType): readonly Finding[] => {
  const { runIn } = engine;
  if (runIn === undefined) return [];
  return [
    ...operationsOf(engine, runIn),
    ...loads(runIn),
    ...rising(runIn),
    ...limitsIn(runIn),
    ...steadiness(runIn),
    ...setting(runIn),
    ...oilPressure(runIn),
  ];
};
