/** @module The request that books an engine in, from what stands in the form. */
import type { Request } from '../../job/command.ts';
import { type Answer, answer } from '../../quantity/refusal.ts';
import { readTyped } from '../../quantity/typed.ts';

export interface BookInForm {
  readonly engineType: string;
  readonly number: string;
  readonly owner: string;
  readonly plate: string;
  readonly hoursRun: string;
  readonly complaint: string;
  readonly hoursWanted: string;
  readonly daysWanted: string;
  readonly currency: string;
  readonly shop: string;
}

export const blankForm: BookInForm = {
  engineType: '',
  number: '',
  owner: '',
  plate: '',
  hoursRun: '',
  complaint: '',
  hoursWanted: '',
  daysWanted: '',
  currency: 'EUR',
  shop: '',
};

/** Hours are typed bare; `h` is what they are in. */
const hours = (text: string) => readTyped(/[a-z]/i.test(text) ? text : `${text} h`, 'time');

export const bookInRequest = (form: BookInForm): Answer<Request> => {
  const run = hours(form.hoursRun);
  if (run.kind === 'refused') return { ...run, refusal: { ...run.refusal, where: 'hours run' } };
  const wanted = form.hoursWanted.trim() === '' ? undefined : hours(form.hoursWanted);
  if (wanted?.kind === 'refused') return { ...wanted, refusal: { ...wanted.refusal, where: 'hours wanted' } };
  const days = form.daysWanted.trim() === '' ? undefined : Number(form.daysWanted);
  return answer({
    kind: 'book in',
    number: form.number.trim(),
    engineType: form.engineType,
    owner: form.owner.trim(),
    plate: form.plate.trim(),
    hoursRun: run.value,
    complaint: form.complaint.trim(),
    currency: form.currency.trim(),
    // The default of ISO 14253-1.
    conformance: 0.95,
    ...(wanted === undefined ? {} : { hoursWanted: wanted.value }),
    ...(days === undefined ? {} : { daysWanted: days }),
    ...(form.shop.trim() === '' ? {} : { shop: form.shop.trim() }),
  });
};
