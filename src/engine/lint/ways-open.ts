/** @module Rule: for each component something can be done, and each offer can be taken. */
import type { Component, EngineType } from '../engine-type.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import { renews } from '../renewal.ts';

const nothingOpen = ({ offers }: EngineType, { name, title, putBack }: Component): readonly Finding[] =>
  putBack || offers.some(({ component }) => component === name)
    ? []
    : [
        wrong(
          ['components', name],
          `nothing can be done with ${title}: they may not go back and nobody offers them`,
          'add an offer, or let them be put back',
        ),
      ];

const judgedByNothing = ({ characteristics }: EngineType, component: Component): readonly Finding[] =>
  component.judgedBy.flatMap((of, index) => {
    const characteristic = characteristics.get(of);
    if (characteristic === undefined || characteristic.limits !== undefined) return [];
    return [
      wrong(
        ['components', component.name, 'judged-by', index],
        `${component.title} are judged by ${characteristic.title}, which has no limits`,
        `give ${of} its limits, or take it from the list`,
      ),
    ];
  });

const stepsWithoutOffer = ({ offers }: EngineType, { name, title, sizes }: Component): readonly Finding[] =>
  (sizes?.steps ?? []).flatMap((step, index) =>
    offers.some(({ component, size }) => component === name && size === step.name)
      ? []
      : [
          doubtful(
            ['components', name, 'sizes', 'steps', index],
            `nobody offers ${title} in ${step.name}`,
            'add the offer, or no plan can use the step',
          ),
        ],
  );

const figures = ({ name, title, life, lifeMiddle, sizes }: Component): readonly Finding[] => [
  ...(life > 0
    ? []
    : [
        wrong(
          ['components', name, 'life'],
          `the life of ${title} is not above zero`,
          'give the hours expected',
        ),
      ]),
  ...(lifeMiddle === undefined || lifeMiddle > life
    ? []
    : [
        wrong(
          ['components', name, 'life', 'usual'],
          `half of ${title} outlast no more hours than nine in ten do`,
          'give as usual the hours that half outlast, or leave them out',
        ),
      ]),
  ...((sizes?.cleanUp ?? 0) >= 0
    ? []
    : [
        wrong(
          ['components', name, 'sizes', 'clean-up'],
          `the clean-up of ${title} is below zero`,
          'give what must be left to take off, or 0 mm',
        ),
      ]),
];

const offersTaken = ({ components, offers }: EngineType): readonly Finding[] =>
  offers.flatMap(({ component, does, size }, index) => {
    const of = components.get(component);
    if (of === undefined || does !== 'machine') return [];
    if (of.sizes === undefined) {
      const remedy = 'give the component its sizes, or let the offer replace';
      return [wrong(['offers', index, 'does'], `${of.title} have no sizes to be machined to`, remedy)];
    }
    if (size !== 'standard') return [];
    const remedy = `name one of ${of.sizes.steps.map(({ name }) => name).join(', ')}`;
    return [
      wrong(['offers', index, 'size'], `${of.title} cannot be machined back to the size as made`, remedy),
    ];
  });

const renewals = ({ components, offers, couplings }: EngineType): readonly Finding[] =>
  couplings.flatMap((coupling, index) => {
    if (coupling.kind !== 'renew with' && coupling.kind !== 'disturbed') return [];
    if (!components.has(coupling.renew)) return [];
    const offered = offers.some(({ component, does }) => component === coupling.renew && renews(does));
    if (offered) return [];
    const leader = coupling.if ?? (coupling.kind === 'disturbed' ? coupling.by : '');
    const what = `${coupling.renew} are to be renewed with ${leader}, and nobody offers them`;
    return [wrong(['couplings', index, 'renew'], what, 'add an offer that replaces them')];
  });

export const waysOpen = (engine: EngineType): readonly Finding[] => [
  ...[...engine.components.values()].flatMap((component) => [
    ...nothingOpen(engine, component),
    ...judgedByNothing(engine, component),
    ...stepsWithoutOffer(engine, component),
    ...figures(component),
  ]),
  ...offersTaken(engine),
  ...renewals(engine),
];
