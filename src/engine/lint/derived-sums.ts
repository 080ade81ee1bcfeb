/** @module Rule: a derived characteristic can be computed: no circle, places that match, one value from many cells. */
import { findCycle } from '../cycle.ts';
import type { Characteristic, EngineType } from '../engine-type.ts';
import { type Operand, operandsOf } from '../expression.ts';
import { type Finding, wrong } from '../finding.ts';

const cycle = ({ characteristics }: EngineType): readonly Finding[] => {
  const graph = new Map(
    [...characteristics.values()].map(({ name, derived }) => [
      name,
      derived === undefined ? [] : operandsOf(derived).map(({ of }) => of),
    ]),
  );
  const found = findCycle(graph);
  if (found === undefined) return [];
  return [
    wrong(
      ['characteristics', found[0] ?? '', 'derived'],
      `this is computed from itself: ${found.join(' from ')}`,
      'let one of them be measured',
    ),
  ];
};

/** Why an operand does not come to one value, and what to do. */
const formOf = (
  operand: Operand,
  { title, planes, axes, derived }: Characteristic,
): readonly [what: string, remedy: string] | undefined => {
  if (operand.kind === 'reading' && planes.length * axes.length > 1) {
    return [
      `${title} has ${planes.length * axes.length} readings at each place`,
      `say which counts: { least: ${operand.of} }, { greatest: ${operand.of} } or { mean: ${operand.of} }`,
    ];
  }
  const range =
    operand.kind === 'range over axes' ? axes : operand.kind === 'range over planes' ? planes : undefined;
  if (range !== undefined && (range.length < 2 || derived !== undefined)) {
    const over = operand.kind === 'range over axes' ? 'axes' : 'planes';
    return [`${title} is not taken over several ${over}`, `give its scheme at least two ${over}`];
  }
  return undefined;
};

const operand = (engine: EngineType, of: Characteristic, named: Operand): readonly Finding[] => {
  const from = engine.characteristics.get(named.of);
  if (from === undefined) return [];
  const path = ['characteristics', of.name, 'derived'];
  const form = formOf(named, from);
  const here = engine.placeKinds.get(of.at);
  const there = engine.placeKinds.get(from.at);
  const over = named.kind === 'range over places' || named.kind === 'range over neighbours';
  if (over && there?.count === 1) {
    return [
      wrong(path, `${from.title} is taken at one place alone`, 'name a characteristic of several places'),
    ];
  }
  const match =
    here === undefined ||
    there === undefined ||
    there.count === here.count ||
    there.count === 1 ||
    named.kind === 'range over places'
      ? []
      : [
          wrong(
            path,
            `${from.title} is taken at ${there.count} places (${there.title}), ${of.title} at ${here.count} (${here.title})`,
            'compute from characteristics of the same places, or of one place for the engine',
          ),
        ];
  return form === undefined ? match : [wrong(path, ...form), ...match];
};

const measuredToo = ({
  name,
  title,
  derived,
  planes,
  axes,
  instrument,
}: Characteristic): readonly Finding[] =>
  derived === undefined || (planes.length * axes.length === 1 && instrument === undefined)
    ? []
    : [
        wrong(
          ['characteristics', name, 'derived'],
          `${title} is computed and measured at once`,
          'delete `derived`, or delete its scheme and instrument',
        ),
      ];

export const derivedSums = (engine: EngineType): readonly Finding[] => [
  ...cycle(engine),
  ...[...engine.characteristics.values()].flatMap((of) => [
    ...measuredToo(of),
    ...(of.derived === undefined
      ? []
      : operandsOf(of.derived).flatMap((named) => operand(engine, of, named))),
  ]),
];
