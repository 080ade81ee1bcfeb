/** @module Options of every slot: put back, machine to each size that cleans up, replace by each part on offer. */
import type { Offer } from '../engine/engine-type.ts';
import { cleansUp } from './clean-up.ts';
import { countedOn, usualLifeOf } from './life.ts';
import type { Barred, Option, SetUp } from './plan-model.ts';
import { putBack } from './put-back.ts';
import type { PlanQuestion } from './question.ts';
import { type Slot, slotsOf } from './slot.ts';
import { atPrices } from './what-if.ts';

export interface Options {
  /** In slot order, and in each slot: put back, machine by step, replace by size, then by supplier. */
  readonly options: readonly Option[];
  readonly barred: readonly Barred[];
  /** What must be read first. */
  readonly missing: readonly string[];
}

/** The size at which a slot stands: as found, else as its leader was found, else as made. */
const sizeNow = ({ sheet }: PlanQuestion, component: string): string => {
  const own = sheet.sizesFound.get(component);
  if (own !== undefined) return own;
  const leader = sheet.engine.couplings.find(
    (each) => each.kind === 'same size' && each.follower === component,
  );
  return (leader?.kind === 'same size' && sheet.sizesFound.get(leader.leader)) || 'standard';
};

export const optionId = (
  slot: Pick<Slot, 'name'>,
  does: string,
  size: string,
  supplier: string,
): string => [slot.name, does, size, supplier].join(':');

/** A set bought for places that are decided one by one is paid once; else the price is the slot's own. */
const priceOf = (offer: Offer, slot: Slot): { readonly cents: number; readonly setUps: readonly SetUp[] } => {
  const setUps = offer.setUp ? [offer.setUp] : [];
  if (offer.per === 'place') return { cents: offer.cents * slot.places.length, setUps };
  if (slot.component.together) return { cents: offer.cents, setUps };
  const name = `set of ${slot.component.title}, ${offer.size}, ${offer.supplier}`;
  return { cents: 0, setUps: [...setUps, { name, cents: offer.cents }] };
};

/** New or made as new. */
const lasting = ({ component }: Slot): Pick<Option, 'hours' | 'life'> => {
  const life = usualLifeOf(component);
  return { hours: countedOn(life), life };
};

const offered = (slot: Slot, offer: Offer, reason: string): Option => ({
  id: optionId(slot, offer.does, offer.size, offer.supplier),
  slot: slot.name,
  component: slot.component.name,
  ...(!slot.component.together && slot.places[0] && { place: slot.places[0].id }),
  does: offer.does,
  size: offer.size,
  supplier: offer.supplier,
  ...priceOf(offer, slot),
  days: offer.days,
  ...lasting(slot),
  newParts: offer.does === 'replace' ? slot.places.length : 0,
  reason,
});

/** Offers in a stable order that does not hang on the order in the file: by size step, then supplier, then price. */
const inOrder = (slot: Slot, offers: readonly Offer[]): readonly Offer[] => {
  const steps = ['standard', ...(slot.component.sizes?.steps.map(({ name }) => name) ?? [])];
  const key = ({ size, supplier, cents }: Offer) => [steps.indexOf(size), supplier, cents] as const;
  return [...offers].sort((a, b) => {
    const [left, right] = [key(a), key(b)];
    const at = left.findIndex((part, index) => part !== right[index]);
    return at < 0 ? 0 : (left[at] ?? 0) < (right[at] ?? 0) ? -1 : 1;
  });
};

const optionsOfSlot = (question: PlanQuestion, slot: Slot): Options => {
  const { component } = slot;
  const options: Option[] = [];
  const barred: Barred[] = [];
  const missing = new Set<string>();
  const bar = (says: string) => barred.push({ slot: slot.name, says });
  const size = sizeNow(question, component.name);

  const back = putBack(question, slot);
  if (back.kind === 'not yet known') for (const each of back.missing) missing.add(each);
  else if (back.kind === 'barred') bar(`put back: ${back.says}`);
  else
    options.push({
      id: optionId(slot, 'put back', size, ''),
      slot: slot.name,
      component: component.name,
      ...(!component.together && slot.places[0] && { place: slot.places[0].id }),
      does: 'put back',
      size,
      supplier: '',
      cents: 0,
      setUps: [],
      days: 0,
      hours: countedOn(back.life),
      life: back.life,
      newParts: 0,
      reason: back.reason,
    });

  const steps = component.sizes?.steps ?? [];
  const now = steps.findIndex(({ name }) => name === size);
  const cracked = question.findings.find(
    (finding) =>
      finding.cracked &&
      finding.component === component.name &&
      slot.places.some(({ id }) => id === finding.place),
  );
  const offers = inOrder(
    slot,
    question.sheet.engine.offers.filter((offer) => offer.component === component.name),
  );
  for (const offer of offers.filter(({ does }) => does === 'machine')) {
    const at = steps.findIndex(({ name }) => name === offer.size);
    const step = steps[at];
    if (!step || at <= now) continue;
    const words = `machine to ${offer.size}`;
    if (cracked) {
      bar(`${words}: cracked at ${cracked.place}`);
      continue;
    }
    const clean = cleansUp(question, slot, step);
    if (clean.kind === 'open') options.push(offered(slot, offer, clean.reason));
    else if (clean.kind === 'barred') bar(`${words}: ${clean.says}`);
    else for (const each of clean.missing) missing.add(each);
  }
  for (const offer of offers.filter(({ does }) => does === 'replace')) {
    options.push(offered(slot, offer, 'new'));
  }
  return { options, barred, missing: [...missing] };
};

export const optionsOf = (question: PlanQuestion): Options => {
  const all = slotsOf(question.sheet.engine).map((slot) => optionsOfSlot(question, slot));
  return {
    options: atPrices(
      all.flatMap(({ options }) => options),
      question.demands.prices,
    ),
    barred: all.flatMap(({ barred }) => barred),
    missing: [...new Set(all.flatMap(({ missing }) => missing))],
  };
};
