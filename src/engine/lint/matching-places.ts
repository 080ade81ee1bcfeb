/** @module Rule: what a component is judged by, sized by or follows is at the same places as the component. */
import type { EngineType } from '../engine-type.ts';
import type { FilePath } from '../file-path.ts';
import { type Finding, wrong } from '../finding.ts';

const countAt = ({ placeKinds }: EngineType, kind: string | undefined): number | undefined =>
  placeKinds.get(kind ?? '')?.count;

const judged = (engine: EngineType): readonly Finding[] =>
  [...engine.components.values()].flatMap(({ name, title, at, judgedBy, arrival = [], sizes, fitting }) => {
    const here = countAt(engine, at);
    const named: readonly (readonly [FilePath, string])[] = [
      ...judgedBy.map((of, index) => [['components', name, 'judged-by', index], of] as const),
      ...arrival.map((of, index) => [['components', name, 'arrival', index], of] as const),
      ...(sizes === undefined ? [] : [[['components', name, 'sizes', 'of'], sizes.of] as const]),
      ...(fitting === undefined
        ? []
        : (['room', 'clearance'] as const).map(
            (key) => [['components', name, 'fitting', key], fitting[key]] as const,
          )),
      ...[
        sizes?.wall?.of && (['wall', 'of', sizes.wall.of] as const),
        sizes?.case?.of && (['case', 'of', sizes.case.of] as const),
      ].flatMap((layer) =>
        layer ? [[['components', name, 'sizes', layer[0], layer[1]], layer[2]] as const] : [],
      ),
      ...(sizes?.fillet === undefined
        ? []
        : [[['components', name, 'sizes', 'fillet'], sizes.fillet] as const]),
    ];
    return named.flatMap(([path, of]) => {
      const characteristic = engine.characteristics.get(of);
      const there = countAt(engine, characteristic?.at);
      if (here === undefined || there === undefined || there === here || there === 1) return [];
      return [
        wrong(
          path,
          `${title} sit at ${here} places, ${characteristic?.title} is taken at ${there}`,
          'name a characteristic of the same places',
        ),
      ];
    });
  });

/** The follower may sit at fewer places only where the leader is one piece for all. */
const followers = (engine: EngineType): readonly Finding[] =>
  engine.couplings.flatMap((coupling, index) => {
    if (coupling.kind !== 'same size') return [];
    const leader = engine.components.get(coupling.leader);
    const follower = engine.components.get(coupling.follower);
    const a = countAt(engine, leader?.at);
    const b = countAt(engine, follower?.at);
    if (leader === undefined || a === undefined || b === undefined || a === b || leader.together) return [];
    return [
      wrong(
        ['couplings', index, 'components'],
        `${coupling.leader} sit at ${a} places, ${coupling.follower} at ${b}: which follows which cannot be said`,
        'let both sit at the same places, or let the first be done together',
      ),
    ];
  });

export const matchingPlaces = (engine: EngineType): readonly Finding[] => [
  ...judged(engine),
  ...followers(engine),
];
