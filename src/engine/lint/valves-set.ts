/** @module Rule: valve clearances are read once a valve, have limits and are asked for; their angles and order make sense. */
import { type Radians, toDegrees } from '../../quantity/brand.ts';
import type { Characteristic, EngineType } from '../engine-type.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import { quantityOf } from '../shown-in.ts';
import type { ValveSetting } from '../valve-setting.ts';

const top = 'valve-setting';
const kinds = ['inlet', 'exhaust'] as const;

const ofClearance = (
  { placeKinds, cylinders, operations }: EngineType,
  key: 'inlet' | 'exhaust',
  of: Characteristic,
): readonly Finding[] => {
  const at = [top, key];
  const kind = placeKinds.get(of.at);
  if (kind === undefined) return [];
  if (kind.along !== 'cylinder' || kind.count % cylinders !== 0)
    return [
      wrong(
        at,
        `${of.title} is read at ${kind.title}, which does not stand along the cylinders`,
        `read it at a place of its own, ${cylinders} or a multiple of it along the cylinders, such as the ${key} rockers`,
      ),
    ];
  if (quantityOf(of) !== 'length' || of.derived !== undefined || of.planes.length * of.axes.length > 1)
    return [wrong(at, `${of.title} is not one length a valve`, 'name a clearance read once at each valve')];
  const { least, greatest } = of.limits?.new ?? {};
  return [
    ...(least === undefined || greatest === undefined
      ? [
          wrong(
            ['characteristics', of.name],
            `${of.title} has no least and greatest limit as made`,
            "give both: the manual's clearance with what it may be out, so that it can be proved",
          ),
        ]
      : []),
    ...(operations.size === 0 || [...operations.values()].some(({ needs }) => needs.includes(of.name))
      ? []
      : [
          doubtful(
            at,
            `no operation asks for ${of.title} to be proved`,
            'name it under `needs` of the operation in which the clearances are set',
          ),
        ]),
  ];
};

const keys = {
  inletOpens: 'inlet-opens',
  inletCloses: 'inlet-closes',
  exhaustOpens: 'exhaust-opens',
  exhaustCloses: 'exhaust-closes',
} as const;

const angleWrong = (key: string, angle: Radians, least: number, most: number): readonly Finding[] => {
  const degrees = toDegrees(angle);
  return degrees >= least && degrees <= most
    ? []
    : [
        wrong(
          [top, key],
          `${Number(degrees.toFixed(2))} deg is no angle of a valve's timing`,
          `give it from its own dead centre, ${least} to ${most} deg`,
        ),
      ];
};

const angles = ({ events, rest }: ValveSetting): readonly Finding[] => [
  ...(Object.keys(keys) as (keyof typeof keys)[]).flatMap((event) =>
    angleWrong(keys[event], events[event], -60, 100),
  ),
  ...angleWrong('rest', rest, 0, 60),
];

const ownOrder = ({ order }: ValveSetting, cylinders: number): readonly Finding[] => {
  if (order === undefined) return [];
  const all = Array.from({ length: cylinders }, (_, index) => index + 1);
  return kinds.flatMap((kind) => {
    const set = order.flatMap((position) => position[kind]).toSorted((a, b) => a - b);
    return set.join() === all.join()
      ? []
      : [
          wrong(
            [top, 'order'],
            `the order sets the ${kind} valves of cylinders ${set.join(', ') || 'none'}`,
            `name each cylinder from 1 to ${cylinders} once under ${kind}`,
          ),
        ];
  });
};

export const valvesSet = (engine: EngineType): readonly Finding[] => {
  const { valveSetting: setting, characteristics, cylinders } = engine;
  if (setting === undefined) return [];
  return [
    ...kinds.flatMap((key) => {
      const of = characteristics.get(setting[key]);
      return of === undefined ? [] : ofClearance(engine, key, of);
    }),
    ...angles(setting),
    ...ownOrder(setting, cylinders),
  ];
};
