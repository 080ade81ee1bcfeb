/** @module Whether a used part may go back, with the hours it has left, or why not. */
import { figureText, shownIn } from '../engine/shown-in.ts';
import type { Judged } from '../measure/verdict-model.ts';
import type { Hours } from '../quantity/brand.ts';
import { lifeBySize } from './hours-left.ts';
import { judgedOf } from './judged-by.ts';
import {
  countedOn,
  countedOnShare,
  hoursLasting,
  type Life,
  lasts,
  promised,
  shortestOf,
  usualLifeOf,
} from './life.ts';
import type { PlanQuestion } from './question.ts';
import type { Slot } from './slot.ts';

export type PutBack =
  | { readonly kind: 'open'; readonly life: Life; readonly hours: Hours; readonly reason: string }
  | { readonly kind: 'barred'; readonly says: string }
  | { readonly kind: 'not yet known'; readonly missing: readonly string[] };

const titled = ({ sheet }: PlanQuestion, { characteristic, place }: Judged): string =>
  `${sheet.engine.characteristics.get(characteristic)?.title ?? characteristic} at ${place}`;

const valueText = ({ sheet }: PlanQuestion, { value, characteristic }: Judged): string =>
  value ? ` (${figureText(value.value, shownIn(sheet.engine.characteristics.get(characteristic)))})` : '';

/** At such multiples of the least hours counted on it is looked whether a life is anywhere the shortest. */
const compared = [0.25, 0.5, 1, 2, 4];

/** Without the lives that are nowhere the shortest of all. */
const bindingOf = (lives: readonly Life[], about: number): readonly Life[] => {
  if (lives.length === 1) return lives;
  const left = new Set<Life>();
  for (const multiple of compared) {
    const shares = lives.map((life) => lasts(life, about * multiple));
    const least = Math.min(...shares);
    for (const [index, life] of lives.entries()) if ((shares[index] ?? 1) <= least + 1e-9) left.add(life);
  }
  return lives.filter((life) => left.has(life));
};

/** How long it lasts by all judged values, and which of them lasts least. */
const shortest = (question: PlanQuestion, slot: Slot, judged: readonly Judged[]) => {
  let least: { readonly hours: Hours; readonly judged: Judged } | undefined;
  const lives: Life[] = [];
  for (const each of judged) {
    const characteristic = question.sheet.engine.characteristics.get(each.characteristic);
    if (!characteristic || !each.value || !each.limits) continue;
    const run = question.hoursRun;
    const of = titled(question, each);
    const life = lifeBySize(each.value, each.limits, characteristic.wears, run, slot.component, of);
    lives.push(life);
    if (least && lasts(life, least.hours) > countedOnShare) continue;
    const left = hoursLasting(life, countedOnShare);
    if (!least || left < least.hours) least = { hours: left, judged: each };
  }
  return least && { ...least, life: shortestOf(bindingOf(lives, Math.max(1, least.hours))) };
};

/**
 * One characteristic outside or unsure bars it, as does a finding; what is not read yet leaves it open.
 * Nothing judged at all means that nothing speaks against it: it is put back for the life of a new one.
 */
export const putBack = (question: PlanQuestion, slot: Slot): PutBack => {
  const { component } = slot;
  if (!component.putBack) return { kind: 'barred', says: 'a used one is never put back' };
  const found = question.findings.find(
    ({ component: name, place, mayGoBack }) =>
      !mayGoBack && name === component.name && slot.places.some(({ id }) => id === place),
  );
  if (found) return { kind: 'barred', says: `found at ${found.place}: ${found.says}` };
  const judged = judgedOf(question.sheet, slot).filter(
    ({ verdict, characteristic, place }) =>
      verdict !== 'not yet known' || question.leftOut?.judgements.has(`${characteristic}|${place}`) !== true,
  );
  for (const verdict of ['outside', 'not yet known', 'unsure'] as const) {
    const such = judged.filter((each) => each.verdict === verdict);
    const first = such[0];
    if (!first) continue;
    if (verdict === 'not yet known') {
      return { kind: 'not yet known', missing: such.map((each) => titled(question, each)) };
    }
    return { kind: 'barred', says: `${titled(question, first)} is ${verdict}${valueText(question, first)}` };
  }
  const least = shortest(question, slot, judged);
  if (!least) {
    const life = usualLifeOf(component);
    return { kind: 'open', life, hours: countedOn(life), reason: 'nothing speaks against it' };
  }
  return {
    kind: 'open',
    life: least.life,
    hours: promised(least.hours),
    reason: `all within limits; ${titled(question, least.judged)}${valueText(question, least.judged)} has the least left`,
  };
};
