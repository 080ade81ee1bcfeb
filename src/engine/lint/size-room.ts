/** @module Rule: walls and hardened depths leave room for the steps, hardness and grades lie in order. */
import type { Bounds, Characteristic, Component, EngineType, Layer } from '../engine-type.ts';
import type { FilePath } from '../file-path.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import { millimetres } from './every-limits.ts';

type Sizes = NonNullable<Component['sizes']>;

/** The most that a step takes from one side; none where an end is not given. */
const taken = (of: Characteristic, to: Bounds): number | undefined => {
  const [a, b] =
    of.wears === 'larger' ? [of.limits?.new.least, to.greatest] : [of.limits?.new.greatest, to.least];
  return a === undefined || b === undefined ? undefined : Math.abs(b - a) / 2;
};

const layer = (
  { characteristics }: EngineType,
  sizes: Sizes,
  { of, asMade, least }: Layer,
  path: FilePath,
): readonly Finding[] => {
  if (of === undefined && asMade === undefined)
    return [
      wrong(
        path,
        'how deep it is cannot be told',
        'name the characteristic that measures it, or its depth as made',
      ),
    ];
  if (least < 0)
    return [wrong([...path, 'least'], 'what must be left is below zero', 'give the least, or 0 mm')];
  if (asMade === undefined) return [];
  if (asMade < least)
    return [
      wrong(
        path,
        `it is ${millimetres(asMade)} as made, less than the least of ${millimetres(least)}`,
        'probably they are swapped or a digit is wrong',
      ),
    ];
  const machined = characteristics.get(sizes.of);
  if (of !== undefined || machined === undefined || machined.wears === 'either') return [];
  return sizes.steps.flatMap(({ name, limits }) => {
    const off = taken(machined, limits.new);
    return off === undefined || asMade - off >= least - 1e-9
      ? []
      : [
          doubtful(
            path,
            `step ${name} would leave ${millimetres(asMade - off)}, less than the least of ${millimetres(least)}, and no plan can use it`,
            'compare with the manual, or delete the step',
          ),
        ];
  });
};

const crossed = ({ least, greatest }: Bounds): boolean =>
  least !== undefined && greatest !== undefined && least > greatest;

const hardness = ({ hardness: asked }: Sizes, path: FilePath): readonly Finding[] => {
  if (asked === undefined) return [];
  if (asked.least === undefined && asked.greatest === undefined)
    return [wrong(path, 'a scale without a figure says nothing', 'give the least or the greatest hardness')];
  return crossed(asked)
    ? [wrong(path, 'the hardness limits cross: the least is above the greatest', 'probably they are swapped')]
    : [];
};

const grades = (steps: NonNullable<Component['grades']>['steps'], path: FilePath): readonly Finding[] =>
  steps.flatMap(({ name, when }, index): readonly Finding[] => {
    const here = [...path, 'steps', index, 'when'];
    if (crossed(when))
      return [wrong(here, `the values for grade ${name} cross`, 'probably they are swapped')];
    const before = steps[index - 1];
    if (before === undefined) return [];
    if ((when.greatest ?? Infinity) < (before.when.greatest ?? Infinity))
      return [
        wrong(
          here,
          `grade ${name} is for lower values than grade ${before.name} before it`,
          'list the grades thinnest first',
        ),
      ];
    return (when.least ?? -Infinity) > (before.when.greatest ?? Infinity) + 1e-9
      ? [
          doubtful(
            here,
            `between grades ${before.name} and ${name} there are values without a grade`,
            'compare both with the manual',
          ),
        ]
      : [];
  });

const ofComponent = (engine: EngineType, component: Component): readonly Finding[] => {
  const { name, title, sizes } = component;
  const path = ['components', name, 'sizes'];
  return [
    ...(sizes?.wall ? layer(engine, sizes, sizes.wall, [...path, 'wall']) : []),
    ...(sizes?.case ? layer(engine, sizes, sizes.case, [...path, 'case']) : []),
    ...(sizes ? hardness(sizes, [...path, 'hardness']) : []),
    ...(sizes && component.grades
      ? [
          wrong(
            ['components', name, 'grades'],
            `${title} have sizes to be machined to and grades to be chosen from`,
            'keep one of them',
          ),
        ]
      : []),
    ...(component.grades ? grades(component.grades.steps, ['components', name, 'grades']) : []),
  ];
};

export const sizeRoom = (engine: EngineType): readonly Finding[] =>
  [...engine.components.values()].flatMap((component) => ofComponent(engine, component));
