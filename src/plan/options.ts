/** @module Options of every slot: put back, machine to each size that cleans up, replace by each part on offer. */
import type { Bounds, Does, EngineType, Offer } from '../engine/engine-type.ts';
import { eachOf } from '../engine/price.ts';
import { renews } from '../engine/renewal.ts';
import { sizesOffered } from '../engine/sizes-offered.ts';
import { sizesInWords } from '../measure/fitted-size.ts';
import { judge } from '../measure/judge.ts';
import { withFits } from './fit.ts';
import { countedOn, usualLifeOf } from './life.ts';
import { openTo } from './open-to.ts';
import type { Barred, Option } from './plan-model.ts';
import { putBack } from './put-back.ts';
import type { PlanQuestion } from './question.ts';
import { judgingPlaces, type Slot, sizesNow } from './slot.ts';
import { slotsIn, unopenedBar } from './unopened.ts';
import { atPrices } from './what-if.ts';

export interface Options {
  /** In slot order, and in each slot: put back, machine by step, replace by size, then by supplier. */
  readonly options: readonly Option[];
  readonly barred: readonly Barred[];
  /** What must be read first. */
  readonly missing: readonly string[];
}

export const optionId = (slot: Pick<Slot, 'name'>, does: string, size: string, supplier: string): string =>
  [slot.name, does, size, supplier].join(':');

/** No two offers of a component share these words, and so no two share what is paid once or counted together. */
const boughtWords = ({ component }: Slot, { does, size, supplier }: Offer): string =>
  [component.title, does === 'replace' ? size : `${does} ${size}`, supplier].join(', ');

/** A set bought for places that are decided one by one is paid once; else the price is the slot's own. */
const priceOf = (
  engine: EngineType,
  offer: Offer,
  slot: Slot,
): Pick<Option, 'cents' | 'setUps' | 'quantity'> => {
  const setUps = offer.setUp ? [offer.setUp] : [];
  const count = slot.places.length;
  if (offer.per === 'place' && slot.component.together)
    return { cents: eachOf(offer, count) * count, setUps };
  if (offer.per === 'place') {
    const places = engine.placeKinds.get(slot.component.at)?.count ?? 0;
    const off = Array.from(
      { length: places + 1 },
      (_, taken) => taken * (eachOf(offer, taken) - offer.cents),
    );
    const name = `quantity of ${boughtWords(slot, offer)}`;
    return { cents: offer.cents, setUps, ...(offer.quantity && { quantity: { name, cents: off } }) };
  }
  if (slot.component.together) return { cents: offer.cents, setUps };
  const name = `set of ${boughtWords(slot, offer)}`;
  return { cents: 0, setUps: [...setUps, { name, cents: offer.cents }] };
};

/** New or made as new. */
const lasting = ({ component }: Slot, offer: Offer): Pick<Option, 'hours' | 'life'> => {
  const life = usualLifeOf(offer.life === undefined ? component : { life: offer.life });
  return { hours: countedOn(life), life };
};

/** How the reason of an option begins that costs nothing more. */
export const alreadyOrdered = 'already ordered, paid';

const offered = (
  engine: EngineType,
  slot: Slot,
  offer: Offer,
  reason: string,
  ordered: readonly string[] = [],
): Option => {
  const id = optionId(slot, offer.does, offer.size, offer.supplier);
  const isOrdered = ordered.includes(id);
  return {
    id,
    slot: slot.name,
    component: slot.component.name,
    ...(!slot.component.together && slot.places[0] && { place: slot.places[0].id }),
    does: offer.does,
    size: offer.size,
    supplier: offer.supplier,
    ...(isOrdered ? { cents: 0, setUps: [] } : priceOf(engine, offer, slot)),
    ...(offer.way !== undefined && { way: offer.way }),
    ...(offer.mass && { mass: offer.mass }),
    days: offer.days,
    ...lasting(slot, offer),
    newParts: renews(offer.does) ? slot.places.length : 0,
    reason: isOrdered ? `${alreadyOrdered}; ${reason}` : reason,
  };
};

const doings: readonly Does[] = ['machine', 'build up', 'sleeve', 'exchange', 'replace'];

/** Offers in a stable order that does not hang on the order in the file: what is done, size, supplier, price. */
const inOrder = (slot: Slot, offers: readonly Offer[]): readonly Offer[] => {
  const sizes = sizesOffered(slot.component);
  const key = ({ does, size, supplier, cents }: Offer) =>
    [doings.indexOf(does), sizes.indexOf(size), supplier, cents] as const;
  return [...offers].sort((a, b) => {
    const [left, right] = [key(a), key(b)];
    const at = left.findIndex((part, index) => part !== right[index]);
    return at < 0 ? 0 : (left[at] ?? 0) < (right[at] ?? 0) ? -1 : 1;
  });
};

const offerWords = ({ does, size }: Offer): string => {
  switch (does) {
    case 'machine':
    case 'build up':
    case 'sleeve':
      return `${does} to ${size}`;
    case 'replace':
    case 'exchange':
      return `${does}, ${size}`;
    default:
      return does satisfies never;
  }
};

/** Mass as found, its uncertain side counted, where the component is balanced and it was weighed. */
const massFound = ({ sheet }: PlanQuestion, slot: Slot): Bounds | undefined => {
  const balance = sheet.engine.couplings.find(
    (coupling) => coupling.kind === 'balance' && coupling.of === slot.component.name,
  );
  const of = balance?.kind === 'balance' ? sheet.engine.characteristics.get(balance.mass ?? '') : undefined;
  const [place] = of ? judgingPlaces(sheet.engine, slot, of.at) : [];
  if (!of || place === undefined) return undefined;
  const { value, expanded = 0 } = judge(sheet, of.name, place);
  return value && { least: value.value - expanded, greatest: value.value + expanded };
};

/** The operation that was done and disturbed it, so that a used one no longer goes back. */
const disturbedBy = ({ sheet: { engine }, done = [] }: PlanQuestion, slot: Slot): string | undefined => {
  for (const coupling of engine.couplings) {
    if (coupling.kind !== 'disturbed' || coupling.renew !== slot.component.name) continue;
    if (coupling.by !== undefined && done.includes(coupling.by))
      return engine.operations.get(coupling.by)?.title ?? coupling.by;
  }
  return undefined;
};

const optionsOfSlot = (question: PlanQuestion, slot: Slot): Options => {
  const { component } = slot;
  const options: Option[] = [];
  const barred: Barred[] = [];
  const missing = new Set<string>();
  const bar = (says: string) => barred.push({ slot: slot.name, says });
  const sizes = sizesNow(question.sheet, slot);
  const size = sizesInWords(sizes);
  const several = new Set(sizes.map(([, at]) => at)).size > 1;

  const back = putBack(question, slot);
  const disturbed = disturbedBy(question, slot);
  const mass = massFound(question, slot);
  if (back.kind !== 'barred' && disturbed !== undefined)
    bar(`put back: it is renewed once this is done: ${disturbed}`);
  else if (back.kind === 'not yet known') for (const each of back.missing) missing.add(each);
  else if (back.kind === 'barred') bar(`put back: ${back.says}`);
  else
    options.push({
      id: optionId(slot, 'put back', size, ''),
      slot: slot.name,
      component: component.name,
      ...(!component.together && slot.places[0] && { place: slot.places[0].id }),
      does: 'put back',
      size,
      ...(several && { sizesAt: Object.fromEntries(sizes) }),
      supplier: '',
      cents: 0,
      setUps: [],
      days: 0,
      hours: back.hours,
      life: back.life,
      newParts: 0,
      ...(mass && { mass }),
      reason: several ? `${back.reason}; of several sizes as found: ${size}` : back.reason,
    });

  const offers = inOrder(
    slot,
    question.sheet.engine.offers.filter((offer) => offer.component === component.name),
  );
  for (const offer of offers) {
    const unopened = unopenedBar(question, slot, offer);
    if (unopened !== undefined) {
      bar(`${offerWords(offer)}: ${unopened}`);
      continue;
    }
    const found = openTo(question, slot, offer);
    switch (found.kind) {
      case 'open':
        options.push(offered(question.sheet.engine, slot, offer, found.reason, question.ordered));
        break;
      case 'barred':
        bar(`${offerWords(offer)}: ${found.says}`);
        break;
      case 'not yet known':
        for (const each of found.missing) missing.add(each);
        break;
      case 'idle':
        break;
      default:
        found satisfies never;
    }
  }
  return { options, barred, missing: [...missing] };
};

export const optionsOf = (question: PlanQuestion): Options => {
  const all = slotsIn(question).map((slot) => optionsOfSlot(question, slot));
  return {
    options: atPrices(
      withFits(
        question,
        all.flatMap(({ options }) => options),
      ),
      question.demands.prices,
    ),
    barred: all.flatMap(({ barred }) => barred),
    missing: [...new Set(all.flatMap(({ missing }) => missing))],
  };
};
