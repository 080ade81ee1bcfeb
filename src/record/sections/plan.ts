/** @module The record's plan: what was decided for each component and why, what it costs, and who agreed. */
import type { Agreement, OpenJob } from '../../job/job.ts';
import { scopeOf } from '../../job/scope.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { moneyText, timeText } from '../figure-text.ts';
import type { RecordSection } from '../record-model.ts';
import { slotTitle } from './named.ts';

/** `T. Orrell, by telephone, to plan B of offer 1; noted by …`. */
export const agreementText = ({ name, how, offer, by, at }: Agreement): string => {
  const to = offer === undefined ? '' : `, to plan ${offer.plan} of offer ${offer.number}`;
  return offer?.by === 'link'
    ? `${name}, ${how}${to}, ${timeText(at)}`
    : `${name}, ${how}${to}; noted by ${by}, ${timeText(at)}`;
};

const heads = ['Component', 'Decided, and why', 'Cost'];

export const planSection = (job: OpenJob): RecordSection => {
  const { plan, agreed, booked } = job;
  const { currency } = booked;
  if (plan === undefined)
    return {
      name: 'plan',
      title: 'Plan',
      says: ['No plan was chosen.'],
      table: { heads, rows: [] },
      derived: true,
    };
  const sum = plan.choices.reduce((total, choice) => total + choice.cents, 0);
  return {
    name: 'plan',
    title: 'Plan',
    says: [
      `Chosen by ${plan.by}, ${timeText(plan.at)}: ${moneyText(plan.cents, currency)} in all, ready in ${formatFigure(plan.days, 0)} days, good for ${formatFigure(plan.hours, 0)} hours more${scopeOf(job).whole ? '' : ', as far as what is decided on here goes'}.`,
      ...(sum === plan.cents
        ? []
        : [
            `The components come to ${moneyText(sum, currency)}, setting up to ${moneyText(plan.cents - sum, currency)}.`,
          ]),
      agreed === undefined ? "The owner's agreement is not noted." : `Agreed by ${agreementText(agreed)}.`,
      ...job.agreedBefore.map(
        (before) =>
          `Agreed before by ${agreementText(before)}; it no longer counts since ${timeText(before.ended.at)}: ${before.ended.why}.`,
      ),
    ],
    table: {
      heads,
      rows: plan.choices.map((choice) => ({
        of: choice.slot,
        cells: [slotTitle(job.sheet.engine, choice.slot), choice.says, moneyText(choice.cents, currency)],
      })),
    },
    derived: true,
  };
};
