/** @module Rule: nothing stands twice where it can stand only once: places' titles, planes, steps, offers, couplings. */
import type { Coupling, EngineType } from '../engine-type.ts';
import type { FilePath } from '../file-path.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';

type Entry = readonly [path: FilePath, key: string];

const repeated = (
  entries: readonly Entry[],
  say: (key: string) => readonly [what: string, remedy: string],
  make = wrong,
): readonly Finding[] => {
  const seen = new Set<string>();
  return entries.flatMap(([path, key]) => {
    if (!seen.has(key)) {
      seen.add(key);
      return [];
    }
    return [make(path, ...say(key))];
  });
};

const list = (path: FilePath, keys: readonly string[]): readonly Entry[] =>
  keys.map((key, index) => [[...path, index], key] as const);

const couplingKey = (coupling: Coupling): string => {
  switch (coupling.kind) {
    case 'same size':
      return `${coupling.leader} and ${coupling.follower}`;
    case 'renew with':
      return `${coupling.if}, renewing ${coupling.renew}`;
    case 'disturbed':
      return `${coupling.if ?? coupling.by}, disturbing ${coupling.renew}`;
    case 'matched':
      return `${[...coupling.components].sort().join(' and ')}, matched`;
    case 'either or':
      return `either ${[...coupling.ways].sort().join(' or ')}`;
    case 'balance':
      return `balance of ${coupling.of}`;
    default:
      return coupling satisfies never;
  }
};

const inLists = ({ characteristics, components, operations }: EngineType): readonly Finding[] => {
  const say = (key: string) => [`${key} stands twice in the list`, 'delete one of them'] as const;
  return [
    ...[...characteristics.values()].flatMap(({ name, planes, axes }) => [
      ...repeated(list(['characteristics', name, 'scheme', 'planes'], planes), say),
      ...repeated(list(['characteristics', name, 'scheme', 'axes'], axes), say),
    ]),
    ...[...components.values()].flatMap(({ name, judgedBy }) =>
      repeated(list(['components', name, 'judged-by'], judgedBy), say),
    ),
    ...[...operations.values()].flatMap((operation) =>
      (['after', 'needs', 'removes', 'fits', 'covers', 'tightens', 'tools'] as const).flatMap((key) =>
        repeated(list(['operations', operation.name, key], operation[key]), say),
      ),
    ),
  ];
};

const steps = ({ components }: EngineType): readonly Finding[] =>
  [...components.values()].flatMap(({ name, sizes, grades }) => {
    const path = ['components', name, 'sizes', 'steps'];
    const standard: Entry = [path, 'standard'];
    const names = (sizes?.steps ?? []).map((step, index): Entry => [[...path, index, 'name'], step.name]);
    const gradePath = ['components', name, 'grades', 'steps'];
    const ofGrades = (grades?.steps ?? []).map(
      (grade, index): Entry => [[...gradePath, index, 'name'], grade.name],
    );
    return repeated([standard, ...names, ...ofGrades], (key) => [
      `the size ${key} is there already`,
      'give each step and grade its own name; the size as made is called standard',
    ]);
  });

export const noDuplicates = (engine: EngineType): readonly Finding[] => [
  ...repeated(
    [...engine.placeKinds.values()].map(({ name, title }): Entry => [['places', name, 'title'], title]),
    (key) => [
      `two kinds of place are called ${key}`,
      'give each a title of its own, so that it can be read aloud',
    ],
  ),
  ...repeated(
    [...engine.characteristics.values()].map(
      ({ name, title }): Entry => [['characteristics', name, 'title'], title],
    ),
    (key) => [
      `two characteristics are called ${key}`,
      'give each a title of its own, so that it can be read aloud',
    ],
  ),
  ...inLists(engine),
  ...steps(engine),
  ...repeated(
    engine.offers.map(
      ({ component, does, size, supplier }, index): Entry => [
        ['offers', index],
        `${component}, ${does}, ${size}, ${supplier}`,
      ],
    ),
    (key) => [`the same offer stands twice: ${key}`, 'keep the one that is valid'],
  ),
  ...repeated(
    engine.couplings.map((coupling, index): Entry => [['couplings', index], couplingKey(coupling)]),
    (key) => [`the same coupling stands twice: ${key}`, 'delete one of them'],
    doubtful,
  ),
];
