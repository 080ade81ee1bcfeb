/** @module Rule: the order of work can be worked: no operation waits for itself, and strip comes before build. */
import { findCycle } from '../cycle.ts';
import type { EngineType, Operation } from '../engine-type.ts';
import { type Finding, wrong } from '../finding.ts';

const phases: readonly Operation['phase'][] = ['strip', 'build', 'set', 'run'];

const cycle = ({ operations }: EngineType): readonly Finding[] => {
  const found = findCycle(new Map([...operations.values()].map(({ name, after }) => [name, after])));
  if (found === undefined) return [];
  return [
    wrong(
      ['operations', found[0] ?? '', 'after'],
      `the operations go round in a circle: ${found.join(' after ')}`,
      'take one of them out of the other’s `after`',
    ),
  ];
};

const phaseOrder = ({ operations }: EngineType): readonly Finding[] =>
  [...operations.values()].flatMap(({ name, phase, after }) =>
    after.flatMap((earlier, index) => {
      const before = operations.get(earlier);
      if (before === undefined || phases.indexOf(before.phase) <= phases.indexOf(phase)) return [];
      return [
        wrong(
          ['operations', name, 'after', index],
          `${name} (${phase}) is to come after ${earlier} (${before.phase})`,
          `phases come in the order ${phases.join(', ')}: mend the phase of one of them`,
        ),
      ];
    }),
  );

export const orderOfWork = (engine: EngineType): readonly Finding[] => [
  ...cycle(engine),
  ...phaseOrder(engine),
];
