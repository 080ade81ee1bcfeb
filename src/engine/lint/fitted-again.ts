/** @module Rule: what the strip takes off is fitted again, once and after it came off; what is fitted came off. */
import type { EngineType, Operation } from '../engine-type.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import { chooseName } from '../nearest-name.ts';
import { workBefore } from '../work-before.ts';

type Handles = 'removes' | 'fits';

interface Handled {
  readonly part: string;
  readonly by: Operation;
  readonly index: number;
}

const handled = ({ operations }: EngineType, how: Handles): readonly Handled[] =>
  [...operations.values()].flatMap((by) => by[how].map((part, index) => ({ part, by, index })));

const at = (how: Handles, { by, index }: Handled) => ['operations', by.name, how, index];

const againstFitting = (engine: EngineType, off: Handled, fitted: readonly Handled[]): readonly Finding[] => {
  const back = fitted.filter(({ part }) => part === off.part);
  if (back.length === 0) {
    const names = fitted.map(({ part }) => part);
    return [
      wrong(
        at('removes', off),
        `${off.part} is taken off by ${off.by.name} and never fitted again`,
        `put ${off.part} under the \`fits\` of the operation that fits it: ${chooseName(off.part, names)}`,
      ),
    ];
  }
  return back.flatMap((one) =>
    workBefore(engine, one.by.name).has(off.by.name)
      ? []
      : [
          wrong(
            at('fits', one),
            `${one.by.name} may be done before ${off.by.name}, which takes ${off.part} off`,
            `put ${off.by.name}, or what comes after it, in the \`after\` of ${one.by.name}`,
          ),
        ],
  );
};

const twice = (all: readonly Handled[], how: Handles): readonly Finding[] =>
  all.flatMap((one, index) => {
    const first = all.find(({ part }) => part === one.part);
    if (first === undefined || all.indexOf(first) === index || first.by === one.by) return [];
    const verb = how === 'removes' ? 'taken off' : 'fitted';
    return [
      doubtful(
        at(how, one),
        `${one.part} is ${verb} by ${first.by.name} and again by ${one.by.name}`,
        'name it where it is done, or give the two parts names of their own',
      ),
    ];
  });

export const fittedAgain = (engine: EngineType): readonly Finding[] => {
  const off = handled(engine, 'removes');
  const fitted = handled(engine, 'fits');
  if (off.length === 0 && fitted.length === 0) return [];
  const taken = new Set(off.map(({ part }) => part));
  return [
    ...off.flatMap((one) => againstFitting(engine, one, fitted)),
    ...fitted.flatMap((one) =>
      taken.has(one.part)
        ? []
        : [
            doubtful(
              at('fits', one),
              `${one.part} is fitted by ${one.by.name}, and nothing takes it off`,
              `put ${one.part} under the \`removes\` of the operation that takes it off`,
            ),
          ],
    ),
    ...twice(off, 'removes'),
    ...twice(fitted, 'fits'),
  ];
};
