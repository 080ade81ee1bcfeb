/** @module Whether an offer is open for a slot: why it is sound, or what bars it, or what must be read first. */
import type { Offer } from '../engine/engine-type.ts';
import { formatFigure } from '../quantity/figure.ts';
import { type CleanUp, cleansUp } from './clean-up.ts';
import { gradeChosen } from './grade.ts';
import { crackBar, filletBar, heatBar, timesBar } from './grinding-bars.ts';
import { layerBar } from './layer-left.ts';
import type { PlanQuestion } from './question.ts';
import { type Slot, sizesNow } from './slot.ts';

/** Open, barred, not yet known; or no offer for this slot at all, as one back to a size already passed. */
type OpenTo = CleanUp | { readonly kind: 'idle' };

const barred = (says: string): OpenTo => ({ kind: 'barred', says });
const open = (reason: string): OpenTo => ({ kind: 'open', reason });

const machining = (question: PlanQuestion, slot: Slot, { size }: Offer): OpenTo => {
  const steps = slot.component.sizes?.steps ?? [];
  const at = steps.findIndex(({ name }) => name === size);
  const step = steps[at];
  const sizes = sizesNow(question.sheet, slot);
  const passed = sizes.filter(([, now]) => steps.findIndex(({ name }) => name === now) >= at);
  if (!step || passed.length === sizes.length) return { kind: 'idle' };
  const [first] = passed;
  if (first) return barred(`${first[0]} stands at ${first[1]} already`);
  const furthest = Math.max(...sizes.map(([, now]) => steps.findIndex(({ name }) => name === now)));
  const bar =
    crackBar(question, slot) ??
    heatBar(question, slot) ??
    timesBar(slot, furthest, steps[furthest]?.name ?? 'standard') ??
    filletBar(question, slot) ??
    layerBar(question, slot, 'wall', step.limits.new) ??
    layerBar(question, slot, 'case', step.limits.new);
  return bar === undefined ? cleansUp(question, slot, step) : barred(bar);
};

const sleeving = (question: PlanQuestion, slot: Slot, { size, boredTo }: Offer): OpenTo => {
  const bar =
    crackBar(question, slot) ??
    (boredTo === undefined
      ? undefined
      : layerBar(question, slot, 'wall', { least: boredTo, greatest: boredTo }));
  return bar === undefined ? open(`sleeved back to ${size}`) : barred(bar);
};

const exchanging = (question: PlanQuestion, slot: Slot, { deposit }: Offer): OpenTo => {
  if (slot.component.stays)
    return barred('each stays in its own place, and one from another engine does not do');
  const crack = deposit === undefined ? undefined : crackBar(question, slot);
  if (crack !== undefined) return barred(`${crack}, and the old one is not taken for the deposit`);
  return open(
    deposit === undefined
      ? 'reconditioned'
      : `reconditioned; a deposit of ${formatFigure(deposit / 100, 2)} comes back with the old one`,
  );
};

const byDoing = (question: PlanQuestion, slot: Slot, offer: Offer): OpenTo => {
  switch (offer.does) {
    case 'machine':
      return machining(question, slot, offer);
    case 'sleeve':
      return sleeving(question, slot, offer);
    case 'build up': {
      const crack = crackBar(question, slot);
      return crack === undefined ? open(`built up to ${offer.size}`) : barred(crack);
    }
    case 'exchange':
      return exchanging(question, slot, offer);
    case 'replace':
      return open('new');
    default:
      return offer.does satisfies never;
  }
};

export const openTo = (question: PlanQuestion, slot: Slot, offer: Offer): OpenTo => {
  const done = byDoing(question, slot, offer);
  const { grades } = slot.component;
  if (done.kind !== 'open' || !grades) return done;
  const chosen = gradeChosen(question, slot, grades);
  switch (chosen.kind) {
    case 'grade':
      return chosen.name === offer.size ? open(`${done.reason}; ${chosen.reason}`) : barred(chosen.reason);
    case 'none':
      return barred(chosen.says);
    case 'not yet known':
      return open(`${done.reason}; ${chosen.says}`);
    default:
      return chosen satisfies never;
  }
};
