/** @module Everything that the chosen plan and the strip make necessary to order, line by line, ordered already or not. */
import type { Does, EngineType, Offer } from '../../engine/engine-type.ts';
import { eachOf } from '../../engine/price.ts';
import { optionId } from '../../plan/options.ts';
import { type Slot, slotsOf } from '../../plan/slot.ts';
import type { OrderedLine } from '../event.ts';
import type { OpenJob } from '../job.ts';
import { oneUseLineOf, oneUseNeeded } from './one-use.ts';

export interface NeededLine extends OrderedLine {
  readonly supplier: string;
  readonly days: number;
  /** Why it is there, in words. */
  readonly why: readonly string[];
  /** What one costs, and what each costs where several are taken. */
  readonly price: Pick<Offer, 'cents' | 'quantity'>;
  /** What is paid once with it. */
  readonly setUps: readonly { readonly says: string; readonly cents: number }[];
}

const doing: Readonly<Record<Exclude<Does, 'put back'>, (size: string) => string>> = {
  machine: (size) => `machine to ${size}`,
  sleeve: (size) => `sleeve, ${size}`,
  'build up': (size) => `build up to ${size}`,
  replace: (size) => `new, ${size}`,
  exchange: (size) => `reconditioned in exchange, ${size}`,
};

/** `mains machine 0.25 Grindle & Wick`: parts of several places that are bought alike are one line. */
export const lineOf = ({
  component,
  does,
  size,
  supplier,
}: Pick<Offer, 'component' | 'does' | 'size' | 'supplier'>): string =>
  [component, does, size, supplier].join(':');

interface Chosen {
  readonly slot: Slot;
  readonly offer: Offer;
  readonly reason: string;
}

/** The offers that the plan chose; what is put back needs none. */
const chosenOf = ({ sheet, plan }: Pick<OpenJob, 'sheet' | 'plan'>): readonly Chosen[] => {
  const slots = new Map(slotsOf(sheet.engine).map((slot) => [slot.name, slot]));
  return (plan?.choices ?? []).flatMap((choice): readonly Chosen[] => {
    const slot = slots.get(choice.slot);
    const offer = sheet.engine.offers.find(
      (one) =>
        slot !== undefined &&
        one.component === slot.component.name &&
        optionId(slot, one.does, one.size, one.supplier) === choice.option,
    );
    // What was shown when it was chosen, behind what is done: `machine to 0.25, by …: cleans up at …`.
    const reason = choice.says.split(': ').slice(1).join(': ');
    return slot && offer ? [{ slot, offer, reason }] : [];
  });
};

const titled = (engine: EngineType, offer: Offer): string =>
  `${engine.components.get(offer.component)?.title ?? offer.component}: ${doing[offer.does](offer.size)}`;

const offered = (engine: EngineType, alike: readonly [Chosen, ...Chosen[]]): NeededLine => {
  const [{ offer }] = alike;
  const places = alike.flatMap(({ slot }) => slot.places.map(({ id }) => id));
  const count = offer.per === 'set' ? 1 : places.length;
  return {
    line: lineOf(offer),
    says: titled(engine, offer),
    does: offer.does,
    component: offer.component,
    size: offer.size,
    places,
    count,
    cents: eachOf(offer, count) * count,
    price: { cents: offer.cents, ...(offer.quantity && { quantity: offer.quantity }) },
    supplier: offer.supplier,
    days: offer.days,
    // That a new part is new says nothing more.
    why: [
      ...new Set(alike.map(({ reason }) => reason).filter((reason) => reason !== '' && reason !== 'new')),
    ],
    setUps: offer.setUp ? [{ says: offer.setUp.name.replaceAll('-', ' '), cents: offer.setUp.cents }] : [],
  };
};

/** In the order of the engine type: components, then what is used but once. Nothing where no plan is chosen. */
export const neededLines = (
  job: Pick<OpenJob, 'sheet' | 'plan' | 'done' | 'scopes'>,
): readonly NeededLine[] => {
  const { engine } = job.sheet;
  if (job.plan === undefined) return [];
  const chosen = chosenOf(job);
  const alike = Map.groupBy(chosen, ({ offer }) => lineOf(offer));
  return [
    ...[...alike.values()].map((group) => offered(engine, group as [Chosen, ...Chosen[]])),
    ...oneUseNeeded(
      job,
      chosen.map(({ slot, offer }) => ({ slot: slot.name, does: offer.does })),
    ).map(
      ({ item, places, count, cents, why }): NeededLine => ({
        line: oneUseLineOf(item),
        says: item.title,
        places,
        count,
        cents,
        price: { cents: item.cents },
        supplier: item.supplier,
        days: item.days,
        why,
        setUps: [],
      }),
    ),
  ];
};
