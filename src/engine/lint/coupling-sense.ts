/** @module Rule: a coupling couples what can be coupled: two different parts, ways that offers take, masses that can be kept. */
import type { Coupling, EngineType } from '../engine-type.ts';
import type { FilePath } from '../file-path.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import { chooseName } from '../nearest-name.ts';
import { figureText } from '../shown-in.ts';

const withItself = (one: string | undefined, other: string, path: FilePath): readonly Finding[] =>
  one === other
    ? [wrong(path, `${one} is coupled with itself`, 'name the other component, or delete the coupling')]
    : [];

const ways = (
  { offers }: EngineType,
  { ways: named }: Extract<Coupling, { kind: 'either or' }>,
  path: FilePath,
): readonly Finding[] => {
  const taken = new Set(offers.flatMap(({ way }) => (way === undefined ? [] : [way])));
  return named.flatMap((way, index) => {
    if (named.indexOf(way) < index)
      return [wrong([...path, 'ways', index], `${way} stands twice in the list`, 'delete one of them')];
    return taken.has(way)
      ? []
      : [wrong([...path, 'ways', index], `no offer is of the way ${way}`, chooseName(way, taken))];
  });
};

const grams = (mass: number): string => figureText(mass, { unit: 'g', decimals: 1 });

const balance = (
  { components, offers }: EngineType,
  { of, most }: Extract<Coupling, { kind: 'balance' }>,
  path: FilePath,
): readonly Finding[] => [
  ...(most > 0
    ? []
    : [wrong([...path, 'most'], 'no two parts have the very same mass', 'give how far they may be apart')]),
  ...(components.get(of)?.together
    ? [
        wrong(
          [...path, 'of'],
          `${components.get(of)?.title} are one whole, and there is nothing to balance`,
          'name a component that is decided place by place',
        ),
      ]
    : []),
  ...offers.flatMap(({ component, mass }, index) => {
    if (component !== of || mass?.least === undefined || mass.greatest === undefined) return [];
    const width = mass.greatest - mass.least;
    return width <= most + 1e-9
      ? []
      : [
          wrong(
            ['offers', index, 'mass'],
            `masses offered lie up to ${grams(width)} apart, and ${grams(most)} is the most`,
            'compare both with the manual, or have the set weighed',
          ),
        ];
  }),
];

const ofCoupling = (engine: EngineType, coupling: Coupling, path: FilePath): readonly Finding[] => {
  switch (coupling.kind) {
    case 'same size':
      return withItself(coupling.leader, coupling.follower, path);
    case 'renew with':
      return withItself(coupling.if, coupling.renew, path);
    case 'disturbed':
      return (coupling.if === undefined) === (coupling.by === undefined)
        ? [
            wrong(
              path,
              'it must say what disturbs: a component or an operation, and not both',
              'write `if` with the component, or `by` with the operation; for both make two couplings',
            ),
          ]
        : withItself(coupling.if, coupling.renew, path);
    case 'matched':
      return withItself(...coupling.components, path);
    case 'either or':
      return ways(engine, coupling, path);
    case 'balance':
      return balance(engine, coupling, path);
    default:
      return coupling satisfies never;
  }
};

/** A way that nothing excludes is a name without a meaning. */
const idleWays = ({ offers, couplings }: EngineType): readonly Finding[] => {
  const named = new Set(
    couplings.flatMap((coupling) => (coupling.kind === 'either or' ? coupling.ways : [])),
  );
  return offers.flatMap(({ way }, index) =>
    way === undefined || named.has(way)
      ? []
      : [
          doubtful(
            ['offers', index, 'way'],
            `no coupling excludes the way ${way}`,
            'name it in an either-or coupling, or delete it',
          ),
        ],
  );
};

export const couplingSense = (engine: EngineType): readonly Finding[] => [
  ...engine.couplings.flatMap((coupling, index) => ofCoupling(engine, coupling, ['couplings', index])),
  ...idleWays(engine),
];
