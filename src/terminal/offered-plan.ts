/** @module A plan to put into an offer, as it is typed: its title, then what is asked of it and the hours of labour. */
import type { PlanToOffer } from '../job/offering.ts';
import type { Planned } from '../plan/plan-model.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { readTyped, type Typed } from '../quantity/typed.ts';
import type { Given } from './command.ts';
import { keyValues } from './given.ts';
import { plain } from './plain.ts';
import { demandOptions, planned } from './planning.ts';
import type { SheetSource } from './sheet-source.ts';

export const planExample = '"longest life: hours-wanted=4400 labour=16h"';

interface Asked {
  readonly title: string;
  readonly given: Given;
  readonly labourHours?: Typed;
}

/** `TITLE` or `TITLE: key=value …`; the keys are the demands that endfloat plan takes as options. */
const readAsked = (text: string, given: Given): Answer<Asked> => {
  const at = text.indexOf(':');
  const title = (at < 0 ? text : text.slice(0, at)).trim();
  const where = `--plan ${plain(title)}`;
  const typed = (at < 0 ? '' : text.slice(at + 1)).split(/\s+/).filter((word) => word !== '');
  const pairs = keyValues(typed, where);
  if (pairs.kind === 'refused') return pairs;
  const { labour, ...demands } = Object.fromEntries(pairs.value);
  const names = demandOptions.map(({ name }) => name);
  const strange = Object.keys(demands).find((name) => !names.includes(name));
  if (title === '' || strange !== undefined)
    return refuse(
      title === '' ? 'the plan has no title' : `there is no key ${plain(strange ?? '')}`,
      where,
      `write for example --plan ${planExample}; the keys are labour, ${names.join(', ')}`,
    );
  const hours = labour === undefined ? undefined : readTyped(labour, 'time');
  if (hours?.kind === 'refused') return { ...hours, refusal: { ...hours.refusal, where } };
  const values = new Map(Object.entries(demands).map(([name, value]) => [name, [value]]));
  return answer({ title, given: { ...given, values }, ...(hours && { labourHours: hours.value }) });
};

export type PlansToOffer =
  | { readonly kind: 'plans'; readonly plans: readonly PlanToOffer[] }
  /** One of them is not to be had. */
  | { readonly kind: 'none'; readonly title: string; readonly found: Exclude<Planned, { kind: 'plan' }> };

/** Solves each plan that was asked for, in order. */
export const plansToOffer = async (
  given: Given,
  source: SheetSource,
  texts: readonly string[],
): Promise<Answer<PlansToOffer>> => {
  const plans: PlanToOffer[] = [];
  for (const text of texts) {
    const asked = readAsked(text, given);
    if (asked.kind === 'refused') return asked;
    const { title, labourHours } = asked.value;
    const found = await planned(asked.value.given, source);
    if (found.kind === 'refused') return found;
    if (found.value.kind !== 'plan') return answer({ kind: 'none', title, found: found.value });
    plans.push({ title, plan: found.value, ...(labourHours && { labourHours }) });
  }
  return answer({ kind: 'plans', plans });
};
