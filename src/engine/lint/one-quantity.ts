/** @module Rule: what is added, taken off or machined is of one kind: forces are not taken from lengths. */
import { dimensionText } from '../../quantity/unit.ts';
import type { Characteristic, EngineType } from '../engine-type.ts';
import { operandsOf } from '../expression.ts';
import { type Finding, wrong } from '../finding.ts';
import { quantityOf } from '../shown-in.ts';

const ofDerived = ({ characteristics }: EngineType, of: Characteristic): readonly Finding[] => {
  if (of.derived === undefined) return [];
  const operands = operandsOf(of.derived).flatMap(({ of: name }) => characteristics.get(name) ?? []);
  const [first] = operands;
  if (first === undefined) return [];
  const path = ['characteristics', of.name, 'derived'];
  const other = operands.find((one) => quantityOf(one) !== quantityOf(first));
  if (other !== undefined) {
    return [
      wrong(
        path,
        `${first.title} is a ${dimensionText(quantityOf(first))} and ${other.title} a ${dimensionText(quantityOf(other))}`,
        'compute from characteristics of one kind; a number may stand before any of them as a factor',
      ),
    ];
  }
  const made = quantityOf(first);
  return made === quantityOf(of)
    ? []
    : [
        wrong(
          path,
          `${of.title} is computed from ${first.title}, a ${dimensionText(made)}, and is said to be a ${dimensionText(quantityOf(of))}`,
          made === 'length' ? 'delete its `quantity`' : `write \`quantity: ${made}\``,
        ),
      ];
};

/** What is machined to a size, and what shims make up for, is a length. */
const mustBeLengths = ({ characteristics, components, pumpTiming }: EngineType): readonly Finding[] =>
  [
    ...[...components.values()].flatMap(({ name, sizes }) =>
      sizes === undefined
        ? []
        : [
            { path: ['components', name, 'sizes', 'of'], of: sizes.of },
            ...(['wall', 'case'] as const).flatMap((layer) => {
              const of = sizes[layer]?.of;
              return of === undefined ? [] : [{ path: ['components', name, 'sizes', layer, 'of'], of }];
            }),
          ],
    ),
    ...(pumpTiming === undefined
      ? []
      : [
          { path: ['pump-timing', 'depth'], of: pumpTiming.depth },
          ...(['found', 'lift'] as const).flatMap((key) => {
            const of = pumpTiming[key];
            return of === undefined ? [] : [{ path: ['pump-timing', key], of }];
          }),
        ]),
  ].flatMap(({ path, of }) => {
    const named = characteristics.get(of);
    return named === undefined || quantityOf(named) === 'length'
      ? []
      : [
          wrong(
            path,
            `a length is wanted, and ${named.title} is a ${dimensionText(quantityOf(named))}`,
            'name a characteristic that is a length',
          ),
        ];
  });

const mustBeMasses = ({ characteristics, couplings }: EngineType): readonly Finding[] =>
  couplings.flatMap((coupling, index) => {
    const named = coupling.kind === 'balance' ? characteristics.get(coupling.mass ?? '') : undefined;
    return named === undefined || quantityOf(named) === 'mass'
      ? []
      : [
          wrong(
            ['couplings', index, 'mass'],
            `a mass is wanted, and ${named.title} is a ${dimensionText(quantityOf(named))}`,
            'name a characteristic with `quantity: mass`',
          ),
        ];
  });

export const oneQuantity = (engine: EngineType): readonly Finding[] => [
  ...[...engine.characteristics.values()].flatMap((of) => ofDerived(engine, of)),
  ...mustBeLengths(engine),
  ...mustBeMasses(engine),
];
