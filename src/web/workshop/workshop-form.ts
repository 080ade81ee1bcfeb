/** @module What stands in the form of the workshop, and what is asked of the register by it. */
import { centsText, readCents } from '../../quantity/money.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import { readTyped } from '../../quantity/typed.ts';
import type { RegisterRequest } from '../../register/command.ts';
import type { FixedLabour, Tax, WorkshopSays } from '../../register/workshop.ts';

/** A name with its figure, as typed. */
export interface Pair {
  /** Of the line, while it stands in the form. */
  readonly key: number;
  readonly name: string;
  readonly figure: string;
}

export interface WorkshopForm {
  readonly name: string;
  readonly address: string;
  readonly currency: string;
  readonly taxes: readonly Pair[];
  readonly labourRate: string;
  readonly labour: readonly Pair[];
  readonly validDays: string;
  readonly terms: string;
}

const pairs = (all: readonly { readonly name: string; readonly figure: string }[]): readonly Pair[] =>
  all.map((one, key) => ({ ...one, key }));

export const formOf = (says: WorkshopSays | undefined): WorkshopForm => ({
  name: says?.name ?? '',
  address: says?.address.join('\n') ?? '',
  currency: says?.currency ?? '',
  taxes: pairs(says?.taxes.map(({ name, rate }) => ({ name, figure: rate.text })) ?? []),
  labourRate: says?.labourRate === undefined ? '' : centsText(says.labourRate),
  labour: pairs(says?.labour.map((line) => ({ name: line.says, figure: centsText(line.cents) })) ?? []),
  validDays: String(says?.validDays ?? 30),
  terms: says?.terms ?? '',
});

/** Lines in which nothing is typed are none. */
const typedPairs = (all: readonly Pair[]): readonly Pair[] =>
  all.filter(({ name, figure }) => name.trim() !== '' || figure.trim() !== '');

const at = <T>(where: string, read: Answer<T>): Answer<T> =>
  read.kind === 'refused' ? { ...read, refusal: { ...read.refusal, where } } : read;

const taxesOf = (form: WorkshopForm): Answer<readonly Tax[]> => {
  const taxes: Tax[] = [];
  for (const { name, figure } of typedPairs(form.taxes)) {
    const rate = at(`tax ${name}`, readTyped(/%$/.test(figure.trim()) ? figure : `${figure} %`, 'ratio'));
    if (rate.kind === 'refused') return rate;
    taxes.push({ name: name.trim(), rate: rate.value });
  }
  return answer(taxes);
};

const labourOf = (form: WorkshopForm): Answer<readonly FixedLabour[]> => {
  const lines: FixedLabour[] = [];
  for (const { name, figure } of typedPairs(form.labour)) {
    const cents = at(`labour, ${name}`, readCents(figure));
    if (cents.kind === 'refused') return cents;
    lines.push({ says: name.trim(), cents: cents.value });
  }
  return answer(lines);
};

export const describeRequest = (form: WorkshopForm): Answer<RegisterRequest> => {
  const taxes = taxesOf(form);
  if (taxes.kind === 'refused') return taxes;
  const labour = labourOf(form);
  if (labour.kind === 'refused') return labour;
  const rate = form.labourRate.trim() === '' ? undefined : at('labour rate', readCents(form.labourRate));
  if (rate?.kind === 'refused') return rate;
  if (!/^\d{1,3}$/.test(form.validDays.trim()))
    return refuse('it is no number of days', 'days an offer holds', 'type a whole number, for example 30');
  return answer({
    kind: 'describe workshop',
    workshop: {
      name: form.name.trim(),
      address: form.address
        .split('\n')
        .map((line) => line.trim())
        .filter((line) => line !== ''),
      currency: form.currency.trim(),
      taxes: taxes.value,
      ...(rate === undefined ? {} : { labourRate: rate.value }),
      labour: labour.value,
      validDays: Number(form.validDays),
      terms: form.terms.trim(),
    },
  });
};
