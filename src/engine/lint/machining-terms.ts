/** @module Rule: what the machine shop is told can be kept to: bounds in order, a roughness, a crack test that shows cracks. */
import type { Component, EngineType, Machining } from '../engine-type.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import { millimetres } from './every-limits.ts';

const bounded = ['finish', 'fillet', 'chamfer'] as const;

/** A file leaves 25 µm; what is typed in millimetres instead of micrometres is a thousand times more. */
const roughest = 0.05;

const crossed = (name: string, machining: Machining): readonly Finding[] =>
  bounded.flatMap((what) => {
    const { least, greatest } = machining[what];
    if (least === undefined || greatest === undefined || least <= greatest) return [];
    return [
      wrong(
        ['components', name, 'machining', what],
        `the limits of the ${what} cross: least ${millimetres(least)}, greatest ${millimetres(greatest)}`,
        'look both up in the manual; probably they are swapped or a digit is wrong',
      ),
    ];
  });

const tooRough = (name: string, { finish }: Machining): readonly Finding[] =>
  (['least', 'greatest'] as const).flatMap((side) => {
    const Ra = finish[side];
    if (Ra === undefined || (Ra > 0 && Ra <= roughest)) return [];
    return [
      wrong(
        ['components', name, 'machining', 'finish', side],
        `a roughness of ${millimetres(Ra)} is no finish`,
        'give Ra in micrometres, for example `0.4 µm`',
      ),
    ];
  });

/** Magnetic particles gather at cracks of iron and steel alone. */
const blindTest = (engine: EngineType, { name, sizes, machining }: Component): readonly Finding[] => {
  const material = engine.characteristics.get(sizes?.of ?? '')?.material;
  if (material !== 'aluminium' && material !== 'bronze') return [];
  return (['before', 'after'] as const).flatMap((when) =>
    machining?.crackTest[when] === 'magnetic particles'
      ? [
          wrong(
            ['components', name, 'machining', 'crack-test', when],
            `magnetic particles show no crack in ${material}`,
            'ask for dye penetrant',
          ),
        ]
      : [],
  );
};

const neverTold = ({ offers }: EngineType, { name, title }: Component): readonly Finding[] =>
  offers.some(
    ({ component, does }) =>
      component === name && (does === 'machine' || does === 'sleeve' || does === 'build up'),
  )
    ? []
    : [
        doubtful(
          ['components', name, 'machining'],
          `nobody offers to machine ${title}`,
          'add the offer, or take out what the machine shop would be told',
        ),
      ];

const machined = (engine: EngineType): readonly Finding[] =>
  [...engine.components.values()].flatMap((component) => {
    const { name, machining } = component;
    if (machining === undefined) return [];
    return [
      ...crossed(name, machining),
      ...tooRough(name, machining),
      ...blindTest(engine, component),
      ...neverTold(engine, component),
    ];
  });

const neverOrdered = ({ oneUse }: EngineType): readonly Finding[] =>
  [...oneUse.values()].flatMap(({ name, title, disturbedBy, renewedWith }) =>
    disturbedBy.length + renewedWith.length > 0
      ? []
      : [
          doubtful(
            ['one-use', name],
            `nothing calls for new ${title}`,
            'say under `disturbed-by` which operations spoil them, or under `renewed-with` which parts bring them',
          ),
        ],
  );

export const machiningTerms = (engine: EngineType): readonly Finding[] => [
  ...machined(engine),
  ...neverOrdered(engine),
];
