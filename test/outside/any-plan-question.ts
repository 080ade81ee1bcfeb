/** @module Questions to the plan at random: parts of the demonstration engine with other offers, prices, couplings, demands. */
import fc from 'fast-check';
import type { Component, Coupling, EngineType, Offer } from '../../src/engine/engine-type.ts';
import { cellKey, type Reading } from '../../src/measure/reading.ts';
import type { Sheet } from '../../src/measure/sheet.ts';
import { optionsOf } from '../../src/plan/options.ts';
import type { Demands } from '../../src/plan/plan-model.ts';
import type { PlanQuestion } from '../../src/plan/question.ts';
import { hours } from '../../src/quantity/brand.ts';
import { wornAs, wornQuillfeather } from '../engines/worn-quillfeather.ts';
import { type Choices, productSize } from './every-plan.ts';

const { engine } = wornQuillfeather;
const measured = [
  'mains',
  'main-shells',
  'big-ends',
  'big-end-shells',
  'bores',
  'pistons',
  'rings',
  'head',
  'pumps',
];
/** More combinations than this take too long to try one after another. */
const mostCombinations = 1_500;

/** Judged by what is read alone: ovality and clearance take long, and no plan is found another way for them. */
const judgedQuickly: readonly Component[] = [...engine.components.values()].map((component) => ({
  ...component,
  judgedBy: component.judgedBy.filter((name) => engine.characteristics.get(name)?.derived === undefined),
}));

const some = <T>(list: readonly T[], least = 0): fc.Arbitrary<readonly T[]> =>
  fc.subarray([...list], { minLength: least });

/** Masses of new parts, of which neighbours only go together. */
const bands = [
  { least: 0.5, greatest: 0.504 },
  { least: 0.503, greatest: 0.508 },
  { least: 0.511, greatest: 0.515 },
];

/** Prices from so many on; not always lower ones, since nothing says that they must be. */
const breaks: fc.Arbitrary<NonNullable<Offer['quantity']>> = fc
  .subarray([2, 3, 5], { minLength: 1 })
  .chain((from) =>
    fc.tuple(
      ...from.map((count) =>
        fc.record({ from: fc.constant(count), cents: fc.constantFrom(500, 900, 1_800, 3_000) }),
      ),
    ),
  );

/** The same thing by the same supplier is offered once: an engine type that offers it twice is refused. */
const distinct = (offers: fc.Arbitrary<readonly Offer[]>): fc.Arbitrary<readonly Offer[]> =>
  offers.map((each) => [
    ...new Map(
      each.map((offer) => [[offer.component, offer.does, offer.size, offer.supplier].join(':'), offer]),
    ).values(),
  ]);

/** Offers with prices and days from few figures, so that there are ties, and set-ups that are shared. */
const offersFor = (components: readonly Component[]): fc.Arbitrary<readonly Offer[]> => {
  const own = engine.offers.filter(({ component }) => components.some(({ name }) => name === component));
  const setUp = fc.constantFrom(
    { name: 'setting', cents: 4_000 },
    { name: 'transport', cents: 1_500 },
    undefined,
  );
  return some(own, Math.ceil(own.length / 2)).chain((kept) =>
    distinct(
      fc.tuple(
        ...kept.map((offer) =>
          fc
            .record({
              does: fc.constantFrom(
                ...(offer.does === 'machine'
                  ? (['machine', 'machine', 'sleeve', 'build up'] as const)
                  : (['replace', 'replace', 'exchange'] as const)),
              ),
              cents: fc.constantFrom(0, 1_000, 2_000, 2_500, 4_000, 99_999, 999_999_998, 999_999_999),
              days: fc.constantFrom(0, 0.5, 2, 5, 12),
              per: fc.constantFrom('set' as const, 'place' as const),
              setUp,
              life: fc.constantFrom(hours(2_000), hours(9_000), undefined),
              way: fc.constantFrom('one-way', 'another-way', 'third-way', undefined, undefined),
              mass: fc.constantFrom(...bands, undefined),
              quantity: fc.option(breaks, { freq: 2, nil: undefined }),
            })
            .map(({ setUp: shared, life, way, mass, quantity, per, ...terms }): Offer => {
              const { setUp: _, ...bare } = offer;
              return {
                ...bare,
                ...terms,
                per,
                ...(shared && { setUp: shared }),
                ...(life && { life }),
                ...(way && { way }),
                ...(mass && { mass }),
                ...(quantity && per === 'place' && { quantity }),
              };
            }),
        ),
      ),
    ),
  );
};

const couplingsAmong = (components: readonly Component[]): fc.Arbitrary<readonly Coupling[]> => {
  const has = (name: string): boolean => components.some((component) => component.name === name);
  const between = engine.couplings.filter((coupling) => {
    if (coupling.kind === 'same size') return has(coupling.leader) && has(coupling.follower);
    return coupling.kind === 'renew with' && has(coupling.if) && has(coupling.renew);
  });
  const name = fc.constantFrom(...components.map((component) => component.name));
  const two = fc.tuple(name, name).filter(([one, other]) => one !== other);
  const alone = components.filter(({ together }) => !together);
  const made: readonly fc.Arbitrary<Coupling>[] = [
    fc
      .tuple(
        two,
        fc.subarray(['put back', 'machine', 'sleeve', 'build up', 'replace', 'exchange'] as const, {
          minLength: 1,
        }),
      )
      .map(([[first, renew], is]) => ({ kind: 'renew with', if: first, renew, is })),
    two.map(([first, renew]) => ({ kind: 'disturbed', if: first, renew })),
    two.map((pair) => ({ kind: 'matched', components: pair })),
  ];
  const ofAny: readonly fc.Arbitrary<Coupling>[] = [
    fc
      .constantFrom(['one-way', 'another-way'], ['one-way', 'another-way', 'third-way'])
      .map((ways) => ({ kind: 'either or', ways })),
    ...(alone.length === 0
      ? []
      : [
          fc.record({ of: fc.constantFrom(...alone), most: fc.constantFrom(0.006, 0.009) }).map(
            ({ of, most }): Coupling => ({
              kind: 'balance',
              of: of.name,
              most,
              ...(of.name === 'pumps' && { mass: 'pump-mass' }),
            }),
          ),
        ]),
  ];
  const kinds = components.length < 2 ? ofAny : [...made, ...ofAny];
  return fc
    .tuple(
      some(between),
      fc.uniqueArray(fc.oneof(...kinds), { minLength: 1, maxLength: 3, selector: JSON.stringify }),
    )
    .map(([own, more]) => [...own, ...more]);
};

/** With clearances that a new shell on a used journal goes beyond, or comes near to. */
const fittingWithin = (greatest: number): EngineType => ({
  ...engine,
  characteristics: new Map(
    [...engine.characteristics].map(([name, each]) => [
      name,
      each.limits && name.endsWith('clearance')
        ? { ...each, limits: { ...each.limits, goesBack: { ...each.limits.goesBack, greatest } } }
        : each,
    ]),
  ),
});

/** Two of which one follows the size of the other, so that they meet often enough; or whatever else. */
const names: fc.Arbitrary<readonly string[]> = fc
  .tuple(
    fc.constantFrom([], [], ['mains', 'main-shells'], ['big-ends', 'big-end-shells'], ['bores', 'rings']),
    some(measured, 1),
  )
  .map(([together, others]) =>
    together.length === 0 ? others : [...new Set([...together, ...others.slice(0, 2)])],
  );

const engines: fc.Arbitrary<EngineType> = names
  .filter(({ length }) => length <= 4)
  .chain((taken) => {
    const components = judgedQuickly.filter(({ name }) => taken.includes(name));
    return fc
      .record({
        offers: offersFor(components),
        couplings: couplingsAmong(components),
        clearance: fc.constantFrom(undefined, undefined, undefined, 0.09, 0.115),
      })
      .map(({ offers, couplings, clearance }) => ({
        ...(clearance === undefined ? engine : fittingWithin(clearance)),
        components: new Map(components.map((component) => [component.name, component])),
        offers,
        couplings,
      }));
  });

/** Each wanted half the time, and all of them only every other time, so that there are about as many plans as conflicts. */
const demands: fc.Arbitrary<Demands> = fc
  .record({
    hours: fc.constantFrom(undefined, undefined, undefined, 1_000, 5_000, 7_000),
    days: fc.constantFrom(undefined, undefined, undefined, 0, 2, 5),
    cents: fc.constantFrom(undefined, undefined, undefined, 3_000, 8_000, 20_000),
    withoutSuppliers: fc.constantFrom(
      undefined,
      undefined,
      undefined,
      ['Tump Lane Engine Parts'],
      ["Pellow's Boring Mill"],
    ),
  })
  .map((wanted) => Object.fromEntries(Object.entries(wanted).filter(([, figure]) => figure !== undefined)))
  .chain((wanted) => fc.constantFrom({}, wanted));

/** The fuel pumps weighed: two go together, the third is heavier. */
export const weighed = (own: EngineType): Sheet => {
  const sheet = wornAs(own);
  const readings = ['502', '505', '513'].map((text, index): Reading => {
    const cell = { place: `pump.${index + 1}`, characteristic: 'pump-mass', plane: '', axis: '' };
    return { id: `weighed ${index + 1}`, cell, typed: { text, unit: 'g' }, instrument: 'pan-scales' };
  });
  const gram = { text: '0.1', unit: 'g' };
  return {
    ...sheet,
    engine: {
      ...own,
      characteristics: new Map(own.characteristics).set('pump-mass', {
        name: 'pump-mass',
        title: 'mass of the fuel pump',
        at: 'pump',
        quantity: 'mass',
        planes: [''],
        axes: [''],
        wears: 'either',
      }),
    },
    instruments: new Map(sheet.instruments).set('pan-scales', {
      name: 'pan-scales',
      kind: 'scales',
      range: { least: { text: '0', unit: 'g' }, greatest: { text: '5000', unit: 'g' } },
      resolution: gram,
      permissibleError: gram,
      repeatability: gram,
      zero: { text: '0', unit: 'g' },
    }),
    readings: new Map([...sheet.readings, ...readings.map((each) => [cellKey(each.cell), [each]] as const)]),
  };
};

export interface Case {
  readonly question: PlanQuestion;
  readonly bySlot: readonly Choices[];
}

export const cases: fc.Arbitrary<Case> = fc
  .record({ engineType: engines, demands, fix: fc.option(fc.nat(), { freq: 4, nil: undefined }) })
  .map(({ engineType, demands: wanted, fix }) => {
    const sheet = weighed(engineType);
    const plain: PlanQuestion = { sheet, findings: [], hoursRun: hours(6_000), demands: wanted };
    const { options } = optionsOf(plain);
    const fixed = fix === undefined ? undefined : options[fix % options.length];
    return {
      // The whole question would be pages long.
      [fc.toStringMethod]: () => JSON.stringify({ options, couplings: engineType.couplings, wanted, fixed }),
      question: fixed ? { ...plain, demands: { ...wanted, fixed: { [fixed.slot]: fixed.id } } } : plain,
      bySlot: [...Map.groupBy(options, ({ slot }) => slot).values()],
    };
  })
  .filter(({ bySlot }) => bySlot.length > 0 && productSize(bySlot) <= mostCombinations);

/** A slot without any option is a conflict of its own, which the combinations do not see. */
export const isWhole = ({ question, bySlot }: Case): boolean => {
  const slots = [...question.sheet.engine.components.values()].reduce(
    (sum, { together, at }) => sum + (together ? 1 : (question.sheet.engine.placeKinds.get(at)?.count ?? 0)),
    0,
  );
  return bySlot.length === slots;
};
