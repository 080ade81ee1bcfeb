/** @module An offer of two plans for the small engine, as its shop would make it, with figures worked by hand. */
import type { RequestOf } from '../../src/job/command.ts';
import { type Bench, measured, plan } from './bench.ts';

const told = { what: 'goes back as it is', why: 'sound' };
const offered = plan.choices.map((choice) => ({ ...choice, ...told }));
const [, shells, first, second] = offered;
if (!shells || !first || !second) throw new Error('the plan has four choices');

const ground = {
  slot: 'mains',
  option: 'mains:machine:0.25:Ashlar Grinding',
  says: 'machine to 0.25',
  cents: 18_000,
  what: 'machined, size 0.25',
  why: 'to begin with new clearances',
};

export const labour = (hours: string, cents: number) => [
  { says: 'strip and clean', cents: 18_000 },
  { says: 'labour', cents, hours: { text: hours, unit: 'h' }, rate: 4200 },
];

export const planA = {
  name: 'A',
  title: 'cheapest sound plan',
  choices: offered,
  cents: 4600,
  days: 1,
  hours: 6000,
  labour: labour('14.5', 60_900),
};

export const planB = {
  name: 'B',
  title: 'ground journals',
  choices: [ground, shells, first, second],
  cents: 22_600,
  days: 4,
  hours: 6000,
  labour: labour('20', 84_000),
};

export const token = (letter: string): string => letter.repeat(32);

/** Of the day on which `Bench` works, for thirty days. */
export const offer: RequestOf<'make offer'> = {
  kind: 'make offer',
  number: 1,
  shop: { name: 'Heronsway Bench', address: ['Reed Lane 1'] },
  plans: [planA, planB],
  taxes: [
    { name: 'sales tax', rate: { text: '8.875', unit: '%' } },
    { name: 'quay due', rate: { text: '1.5', unit: '%' } },
  ],
  currency: 'EUR',
  validUntil: '2026-04-01',
  terms: 'A third before work begins.',
  token: token('q'),
};

export const accepting = (
  plan = 'A',
  by: 'link' | 'note' = 'link',
  number = 1,
): RequestOf<'note agreement'> => ({
  kind: 'note agreement',
  name: 'W. Heron',
  how: 'at the link of the offer',
  offer: { number, plan, by },
});

/** As `measured`, with the offer made. */
export const offeredBench = (): Bench => {
  const bench = measured();
  bench.done(offer);
  return bench;
};
