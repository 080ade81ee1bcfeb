/** @module Rule: every name that an engine type refers to is defined in it. */
import type { Coupling, EngineType } from '../engine-type.ts';
import { operandsOf } from '../expression.ts';
import type { FilePath } from '../file-path.ts';
import { type Finding, wrong } from '../finding.ts';
import { chooseName } from '../nearest-name.ts';
import { sizesOffered } from '../sizes-offered.ts';

interface Reference {
  readonly path: FilePath;
  readonly name: string;
  readonly to: 'place' | 'characteristic' | 'component' | 'operation' | 'fastener' | 'one-use';
}

type Named = readonly (readonly [FilePath, string | undefined])[];

const to = (kind: Reference['to'], named: Named): readonly Reference[] =>
  named.flatMap(([path, name]) => (name === undefined ? [] : [{ path, name, to: kind }]));

const list = (path: FilePath, names: readonly string[]): Named =>
  names.map((name, index) => [[...path, index], name] as const);

const fromCharacteristics = ({ characteristics }: EngineType): readonly Reference[] =>
  [...characteristics.values()].flatMap(({ name, at, derived, inBore }) => {
    const path = ['characteristics', name];
    const operands = derived === undefined ? [] : operandsOf(derived);
    return [
      ...to('place', [[[...path, 'at'], at]]),
      ...to('characteristic', [[[...path, 'in-bore'], inBore]]),
      ...to(
        'characteristic',
        operands.map(({ of }) => [[...path, 'derived'], of] as const),
      ),
    ];
  });

const fromOneUse = ({ oneUse }: EngineType): readonly Reference[] =>
  [...oneUse.values()].flatMap(({ name, at, disturbedBy, renewedWith }) => {
    const path = ['one-use', name];
    return [
      ...to('place', [[[...path, 'at'], at]]),
      ...to('operation', list([...path, 'disturbed-by'], disturbedBy)),
      ...to('component', list([...path, 'renewed-with'], renewedWith)),
    ];
  });

const fromCoupling = (coupling: Coupling, path: FilePath): readonly Reference[] => {
  switch (coupling.kind) {
    case 'same size':
      return to('component', list([...path, 'components'], [coupling.leader, coupling.follower]));
    case 'renew with':
    case 'disturbed':
      return [
        ...to('component', [
          [[...path, 'if'], coupling.if],
          [[...path, 'renew'], coupling.renew],
        ]),
        ...(coupling.kind === 'disturbed' ? to('operation', [[[...path, 'by'], coupling.by]]) : []),
      ];
    case 'matched':
      return to('component', list([...path, 'components'], coupling.components));
    case 'balance':
      return [
        ...to('component', [[[...path, 'of'], coupling.of]]),
        ...to('characteristic', [[[...path, 'mass'], coupling.mass]]),
      ];
    case 'either or':
      return [];
    default:
      return coupling satisfies never;
  }
};

const fromComponents = ({ components, offers, couplings }: EngineType): readonly Reference[] => [
  ...[...components.values()].flatMap(({ name, at, judgedBy, sizes, grades, arrival = [], fitting }) => {
    const path = ['components', name];
    return [
      ...to('place', [[[...path, 'at'], at]]),
      ...to('characteristic', list([...path, 'judged-by'], judgedBy)),
      ...to('characteristic', list([...path, 'arrival'], arrival)),
      ...to('characteristic', [
        [[...path, 'fitting', 'room'], fitting?.room],
        [[...path, 'fitting', 'clearance'], fitting?.clearance],
      ]),
      ...to('characteristic', [
        [[...path, 'sizes', 'of'], sizes?.of],
        [[...path, 'sizes', 'wall', 'of'], sizes?.wall?.of],
        [[...path, 'sizes', 'case', 'of'], sizes?.case?.of],
        [[...path, 'sizes', 'fillet'], sizes?.fillet],
        [[...path, 'grades', 'of'], grades?.of],
      ]),
    ];
  }),
  ...to(
    'component',
    offers.map(({ component }, index) => [['offers', index, 'component'], component] as const),
  ),
  ...couplings.flatMap((coupling, index) => fromCoupling(coupling, ['couplings', index])),
];

const fromWork = ({ fasteners, operations, pumpTiming, valveSetting }: EngineType): readonly Reference[] => [
  ...[...fasteners.values()].flatMap(({ name, at, again, renewedBy }) => [
    ...to('place', [[['fasteners', name, 'at'], at]]),
    ...to('one-use', [[['fasteners', name, 'renewed-by'], renewedBy]]),
    ...to(
      'operation',
      again.flatMap(({ after, by }, index) => [
        [['fasteners', name, 'again', index, 'after'], after] as const,
        [['fasteners', name, 'again', index, 'by'], by] as const,
      ]),
    ),
  ]),
  ...[...operations.values()].flatMap(({ name, at, after, needs, renews, tightens }) => [
    ...to('place', [[['operations', name, 'at'], at]]),
    ...to('operation', list(['operations', name, 'after'], after)),
    ...to('characteristic', list(['operations', name, 'needs'], needs)),
    ...to('one-use', list(['operations', name, 'renews'], renews)),
    ...to('fastener', list(['operations', name, 'tightens'], tightens)),
  ]),
  ...to('place', [[['pump-timing', 'at'], pumpTiming?.at]]),
  ...to('characteristic', [
    [['pump-timing', 'depth'], pumpTiming?.depth],
    [['pump-timing', 'found'], pumpTiming?.found],
    [['pump-timing', 'lift'], pumpTiming?.lift],
    [['pump-timing', 'check', 'characteristic'], pumpTiming?.check?.of],
    ...(['inlet', 'exhaust', 'lift'] as const).map(
      (key) => [['valve-setting', key], valveSetting?.[key]] as const,
    ),
  ]),
];

const words: Readonly<Record<Reference['to'], string>> = {
  place: 'kind of place',
  characteristic: 'characteristic',
  component: 'component',
  operation: 'operation',
  fastener: 'fastener',
  'one-use': 'part used but once',
};

/** Sizes are names too: of the steps or grades of the component that an offer is for. */
const fromOffers = ({ offers, components }: EngineType): readonly Finding[] =>
  offers.flatMap(({ component, size }, index) => {
    const known = sizesOffered(components.get(component));
    if (known.includes(size) || !components.has(component)) return [];
    return [
      wrong(
        ['offers', index, 'size'],
        `${component} has no size ${size}`,
        `use one of ${known.join(', ')}, or add it to its sizes`,
      ),
    ];
  });

export const knownNames = (engine: EngineType): readonly Finding[] => {
  const known: Readonly<Record<Reference['to'], ReadonlyMap<string, unknown>>> = {
    place: engine.placeKinds,
    characteristic: engine.characteristics,
    component: engine.components,
    operation: engine.operations,
    fastener: engine.fasteners,
    'one-use': engine.oneUse,
  };
  const references = [
    ...fromCharacteristics(engine),
    ...fromComponents(engine),
    ...fromOneUse(engine),
    ...fromWork(engine),
  ];
  const unknown = references
    .filter((reference) => !known[reference.to].has(reference.name))
    .slice(0, 50)
    .map(({ path, name, to: kind }) =>
      wrong(path, `there is no ${words[kind]} ${name}`, chooseName(name, known[kind].keys())),
    );
  return [...unknown, ...fromOffers(engine)];
};
