/** @module Rule: a fitting can be reckoned: lengths, a clearance with a middle to aim at, halves that are told apart. */

import type { Component, EngineType } from '../engine-type.ts';
import { type Finding, wrong } from '../finding.ts';
import { quantityOf } from '../shown-in.ts';

const noLength = (engine: EngineType, { name, fitting }: Component): readonly Finding[] =>
  (['room', 'clearance'] as const).flatMap((key) => {
    const of = engine.characteristics.get(fitting?.[key] ?? '');
    return of === undefined || quantityOf(of) === 'length'
      ? []
      : [wrong(['components', name, 'fitting', key], `${of.title} is no length`, 'name a length')];
  });

const noMiddle = (engine: EngineType, { name, fitting }: Component): readonly Finding[] => {
  const of = engine.characteristics.get(fitting?.clearance ?? '');
  if (of === undefined) return [];
  const { least, greatest } = of.limits?.new ?? {};
  return least !== undefined && greatest !== undefined && least < greatest
    ? []
    : [
        wrong(
          ['components', name, 'fitting', 'clearance'],
          `${of.title} has no least and greatest limit as made, so no middle to fit to`,
          'give it both limits as made',
        ),
      ];
};

const oneHalf = ({ name, fitting }: Component): readonly Finding[] => {
  const [one, two] = fitting?.takes ?? [];
  return one === undefined || one === '' || one !== two
    ? []
    : [
        wrong(
          ['components', name, 'fitting', 'halves'],
          `both halves are called ${one}`,
          'call them apart, such as upper and lower, or write parts: 2 where they are alike',
        ),
      ];
};

export const fittingTerms = (engine: EngineType): readonly Finding[] =>
  [...engine.components.values()].flatMap((component) => [
    ...noLength(engine, component),
    ...noMiddle(engine, component),
    ...oneHalf(component),
  ]);
