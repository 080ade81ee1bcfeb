/** @module What the workshop says of itself: what stands at the head of its offers, and on what terms it works. */
import { blank, type Trouble, trouble } from '../journal/trouble.ts';
import { mostCents, taxOn } from '../quantity/money.ts';
import type { Typed } from '../quantity/typed.ts';

export interface Tax {
  readonly name: string;
  /** In per cent, as typed. */
  readonly rate: Typed;
}

/** Work that costs the same whatever the plan. */
export interface FixedLabour {
  readonly says: string;
  readonly cents: number;
}

export interface WorkshopSays {
  readonly name: string;
  readonly address: readonly string[];
  readonly currency: string;
  /** Each on the sum before tax; none where the shop charges none. */
  readonly taxes: readonly Tax[];
  /** Hundredths an hour; missing where labour is charged by fixed lines alone. */
  readonly labourRate?: number;
  readonly labour: readonly FixedLabour[];
  /** How many days an offer holds. */
  readonly validDays: number;
  readonly terms: string;
}

const isMoney = (cents: number): boolean => cents >= 0 && cents <= mostCents;

/** What is wrong with taxes, the first thing first. */
export const taxesTrouble = (taxes: readonly Tax[]): Trouble => {
  for (const { name, rate } of taxes) {
    const unnamed = blank(name, 'taxes', 'name the tax');
    if (unnamed) return unnamed;
    const tax = taxOn(0, rate);
    if (tax.kind === 'refused') return { ...tax.refusal, where: `tax ${name}` };
  }
  return undefined;
};

export const workshopTrouble = (says: WorkshopSays): Trouble =>
  blank(says.name, 'name', 'write what the workshop is called') ??
  blank(says.currency, 'currency', 'write the currency of the prices, for example EUR') ??
  taxesTrouble(says.taxes) ??
  (says.labourRate === undefined || (says.labourRate >= 0 && says.labourRate <= 10_000_000)
    ? undefined
    : trouble('no hour costs that', 'labour rate', 'give what an hour costs, or leave it out')) ??
  (says.labour.every(({ cents }) => isMoney(cents))
    ? undefined
    : trouble('no work costs that', 'labour lines', 'type the price again')) ??
  (says.labour.some((line) => line.says.trim() === '')
    ? trouble('a line does not say what is done', 'labour lines', 'write it, or take the line out')
    : undefined) ??
  (says.validDays >= 1 && says.validDays <= 366
    ? undefined
    : trouble('an offer does not hold for so many days', 'days an offer holds', 'give 1 to 366 days'));
