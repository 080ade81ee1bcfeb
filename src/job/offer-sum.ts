/** @module What a plan of an offer comes to: its lines, the sum before tax, each tax, the sum to pay. */
import { taxOn } from '../quantity/money.ts';
import type { LabourLine, OfferedPlan, OfferMade } from './offer.ts';

/** A line that costs something, or takes something off. */
interface SumLine {
  readonly says: string;
  readonly cents: number;
}

export interface OfferSum {
  /** Parts and machining, component by component. */
  readonly components: number;
  /** Paid once, less what is taken off for quantities: what the plan costs beside its components. */
  readonly beside: number;
  /** Gaskets, seals and other one-use items. */
  readonly oneUse: number;
  readonly labour: number;
  readonly net: number;
  /** Each on the sum before tax and rounded by itself, half up; none on another. */
  readonly taxes: readonly SumLine[];
  readonly gross: number;
}

const total = (lines: readonly { readonly cents: number }[]): number =>
  lines.reduce((sum, { cents }) => sum + cents, 0);

/**
 * Exact, in hundredths. A tax that cannot be read is none: no offer with such a one is made.
 *
 * The rule of rounding: tax is reckoned on the sum of all lines, not line by line, and rounded once, half up.
 */
export const offerSum = (
  { taxes }: Pick<OfferMade, 'taxes'>,
  {
    choices,
    cents,
    labour,
    oneUse = [],
  }: Pick<OfferedPlan, 'choices' | 'cents' | 'oneUse'> & { readonly labour: readonly LabourLine[] },
): OfferSum => {
  const components = total(choices);
  const net = cents + total(oneUse) + total(labour);
  const taxed = taxes.map(({ name, rate }) => {
    const tax = taxOn(net, rate);
    return { says: `${name} ${rate.text} ${rate.unit}`, cents: tax.kind === 'answer' ? tax.value : 0 };
  });
  return {
    components,
    beside: cents - components,
    oneUse: total(oneUse),
    labour: total(labour),
    net,
    taxes: taxed,
    gross: net + total(taxed),
  };
};
