/** @module May this plan be chosen, and may the owner's agreement be noted? */
import { chooseName } from '../../engine/nearest-name.ts';
import { slotsOf } from '../../plan/slot.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';
import { blank, type Trouble, trouble } from './trouble.ts';

export const choosePlanTrouble = (job: OpenJob, { choices }: RequestOf<'choose plan'>): Trouble => {
  const slots = slotsOf(job.sheet.engine).map(({ name }) => name);
  const chosen = new Set<string>();
  for (const { slot, option } of choices) {
    if (!slots.includes(slot))
      return trouble(
        `${job.sheet.engine.title} has nothing to decide called “${slot}”`,
        'plan',
        chooseName(slot, slots),
      );
    if (chosen.has(slot)) return trouble(`“${slot}” is decided twice`, 'plan', 'choose one option for it');
    if (!option.startsWith(`${slot}:`))
      return trouble(
        `the option “${option}” does not belong to ${slot}`,
        'plan',
        'choose one that the plan shows there',
      );
    chosen.add(slot);
  }
  const left = slots.filter((slot) => !chosen.has(slot));
  return left.length === 0
    ? undefined
    : trouble(
        `${left.length} of ${slots.length} are not decided: ${left.slice(0, 6).join(', ')}${left.length > 6 ? ' …' : ''}`,
        'plan',
        'choose an option for each',
      );
};

export const noteAgreementTrouble = (job: OpenJob, asked: RequestOf<'note agreement'>): Trouble =>
  job.plan === undefined
    ? trouble('there is no plan to agree to', 'agreement', 'choose a plan first')
    : blank(asked.name, 'agreement', 'write who agreed');
