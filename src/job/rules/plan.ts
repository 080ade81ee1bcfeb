/** @module May this plan be chosen? */
import { chooseName } from '../../engine/nearest-name.ts';
import { type Trouble, trouble } from '../../journal/trouble.ts';
import { centsTogether } from '../../plan/cost.ts';
import { couplingRows } from '../../plan/coupling-rows.ts';
import { fitRows, hoursTogether } from '../../plan/fit-rows.ts';
import { type Options, optionsOf } from '../../plan/options.ts';
import type { Option } from '../../plan/plan-model.ts';
import type { Slot } from '../../plan/slot.ts';
import { slotsIn } from '../../plan/unopened.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';
import { planQuestionOf } from '../planning.ts';

type Asked = RequestOf<'choose plan'>;

const again = 'plan again from the readings as they stand now';

const listed = (names: readonly string[]): string =>
  names.length > 6 ? `${names.slice(0, 6).join(', ')} and ${names.length - 6} more` : names.join(', ');

/** Each slot decided, once, and nothing else decided. */
const slotTrouble = (job: OpenJob, slots: readonly Slot[], { choices }: Asked): Trouble => {
  const names = slots.map(({ name }) => name);
  const chosen = new Set<string>();
  for (const { slot } of choices) {
    if (!names.includes(slot))
      return trouble(
        `${job.sheet.engine.title} has nothing to decide called “${slot}”`,
        'plan',
        chooseName(slot, names),
      );
    if (chosen.has(slot)) return trouble(`“${slot}” is decided twice`, 'plan', 'choose one option for it');
    chosen.add(slot);
  }
  const left = names.filter((name) => !chosen.has(name));
  return left.length === 0
    ? undefined
    : trouble(
        `${left.length} of ${names.length} are not decided: ${listed(left)}`,
        'plan',
        'choose an option for each',
      );
};

/** An option that is not open, with what bars it where that is known. */
const optionTrouble = ({ options, barred, missing }: Options, { choices }: Asked): Trouble => {
  if (missing.length > 0)
    return trouble(`not everything is measured: ${listed(missing)}`, 'plan', 'measure it first, then plan');
  for (const { slot, option, cents } of choices) {
    const open = options.find((one) => one.slot === slot && one.id === option);
    if (open === undefined) {
      const bars = barred.filter((one) => one.slot === slot).map(({ says }) => says);
      const why = bars.length > 0 ? ` (${bars.join('; ')})` : '';
      return trouble(`“${option}” is not open${why}`, slot, again);
    }
    if (open.cents !== cents) return trouble(`“${option}” has another price`, slot, again);
  }
  return undefined;
};

/** Couplings and fits with one option chosen in each slot: every column is 1. */
const couplingTrouble = (job: OpenJob, slots: readonly Slot[], chosen: readonly Option[]): Trouble => {
  const rows = [...couplingRows(job.sheet.engine, slots, chosen), ...fitRows(chosen, undefined)];
  const broken = rows.find(({ terms, relation, bound }) => {
    const sum = terms.reduce((total, [factor]) => total + factor, 0);
    return relation === '=' ? sum !== bound : relation === '<=' ? sum > bound : sum < bound;
  });
  return broken && trouble(broken.stands, 'plan', again);
};

const sumTrouble = (chosen: readonly Option[], asked: Asked): Trouble => {
  const cents = centsTogether(chosen);
  const days = Math.max(0, ...chosen.map((option) => option.days));
  const hours = hoursTogether(chosen);
  // Two makes of browser may differ in the last digit of a logarithm.
  const sameHours = Math.abs(hours - asked.hours) <= 1e-6 * Math.abs(hours);
  return cents === asked.cents && days === asked.days && sameHours
    ? undefined
    : trouble('the cost, days or hours are not what the choices come to', 'plan', again);
};

/** The options that are chosen, where each is open and they go together; else what stands in the way. */
const chosenOf = (
  job: OpenJob,
  asked: Asked,
): { readonly trouble: Trouble; readonly chosen: readonly Option[] } => {
  const question = planQuestionOf(job);
  const slots = slotsIn(question);
  const wrong = slotTrouble(job, slots, asked);
  if (wrong !== undefined) return { trouble: wrong, chosen: [] };
  const open = optionsOf(question);
  const ids = new Set(asked.choices.map(({ option }) => option));
  const chosen = open.options.filter(({ id }) => ids.has(id));
  return { trouble: optionTrouble(open, asked) ?? couplingTrouble(job, slots, chosen), chosen };
};

/** Whether a plan is open on the readings as they stand, whatever hours it promised before. */
export const planOpenTrouble = (job: OpenJob, asked: Asked): Trouble => chosenOf(job, asked).trouble;

export const choosePlanTrouble = (job: OpenJob, asked: Asked): Trouble => {
  const { trouble: wrong, chosen } = chosenOf(job, asked);
  return wrong ?? sumTrouble(chosen, asked);
};
