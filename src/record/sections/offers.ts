/** @module The record's offers: every plan that the owner was offered, what it came to, and what became of it. */
import type { OpenJob } from '../../job/job.ts';
import type { Offer, OfferedPlan } from '../../job/offer.ts';
import { offerSum } from '../../job/offer-sum.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { moneyText, timeText } from '../figure-text.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';

/** What became of an offer, whatever day it is read. */
export const outcomeText = ({ accepted, superseded, validUntil }: Offer): string => {
  const answered = accepted && `plan ${accepted.plan} accepted ${timeText(accepted.at)}`;
  const ended = superseded && `no longer stands since ${timeText(superseded.at)}: ${superseded.why}`;
  return [answered, ended].filter(Boolean).join('; ') || `not answered; valid until ${validUntil}`;
};

const rowOf = (offer: Offer, plan: OfferedPlan): RecordRow => {
  const sum = offerSum(offer, plan);
  return {
    of: `offer ${offer.number} plan ${plan.name}`,
    cells: [
      `${offer.number}, ${timeText(offer.at)}, ${offer.by}`,
      `${plan.name}: ${plan.title}`,
      moneyText(sum.net, offer.currency),
      sum.taxes.map((tax) => `${tax.says}: ${moneyText(tax.cents, offer.currency)}`).join('; ') || 'none',
      moneyText(sum.gross, offer.currency),
      formatFigure(plan.days, 0),
      formatFigure(plan.hours, 0),
      outcomeText(offer),
    ],
  };
};

/** None where no offer was made. */
export const offerSections = ({ offers }: OpenJob): readonly RecordSection[] =>
  offers.length === 0
    ? []
    : [
        {
          name: 'offers',
          title: 'Offers to the owner',
          says: ['Each tax is reckoned on the sum before tax and rounded to the nearest hundredth, half up.'],
          table: {
            heads: ['Offer', 'Plan', 'Before tax', 'Tax', 'To pay', 'Days', 'Hours', 'What became of it'],
            rows: offers.flatMap((offer) => offer.plans.map((plan) => rowOf(offer, plan))),
          },
          derived: true,
        },
      ];
