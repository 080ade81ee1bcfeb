/** @module An offer made of plans as they are solved is one that the job takes. */
import { describe, expect, it } from 'vitest';
import { offerSum } from '../../src/job/offer-sum.ts';
import { makeOffer } from '../../src/job/offering.ts';
import { planQuestionOf } from '../../src/job/planning.ts';
import { planEngine } from '../../src/plan/plan.ts';
import type { WorkshopSays } from '../../src/register/workshop.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import { type Bench, measured } from './bench.ts';
import { token } from './offers.ts';
import { toOrder } from './ordering.ts';

const workshop: WorkshopSays = {
  name: 'Heronsway Bench',
  address: ['Reed Lane 1'],
  currency: 'EUR',
  taxes: [{ name: 'sales tax', rate: { text: '8.875', unit: '%' } }],
  labourRate: 4200,
  labour: [{ says: 'strip and clean', cents: 18_000 }],
  validDays: 30,
  terms: '',
};
const given = { at: '2026-03-02T09:00:00Z', token: token('s') };

/** As the bench chose it. */
const ordered = { 'pumps@pump.2': 'pumps@pump.2:replace:standard:Ashlar Fuel' };

const solved = async (bench: Bench, fixed: Readonly<Record<string, string>> = {}) => {
  const plan = await planEngine(planQuestionOf(bench.open, { fixed }), await highsSolver());
  if (plan.kind !== 'plan') throw new Error(plan.kind);
  return plan;
};

describe('an offer of solved plans', () => {
  it('is taken by the job, says why in the owner’s words, and holds as long as the workshop says', async () => {
    const bench = measured();
    bench.read('main.2', '49.900', 'horizontal');
    const asked = makeOffer(
      bench.open,
      workshop,
      [{ title: 'ground journals', plan: await solved(bench), labourHours: { text: '14.5', unit: 'h' } }],
      given,
    );
    if (asked.kind === 'refused') throw new Error(asked.refusal.what);
    bench.done(asked.value);
    const [offer] = bench.open.offers;
    expect(offer).toMatchObject({ number: 1, validUntil: '2026-04-01', currency: 'EUR' });
    const [plan] = offer?.plans ?? [];
    expect(plan?.choices[0]).toMatchObject({
      what: 'machined, size 0.25',
      why: expect.stringContaining('main journal diameter'),
    });
    // source: worked by hand: 14.5 h × 42.00 = 609.00
    expect(plan?.labour.map(({ cents }) => cents)).toEqual([18_000, 60_900]);
  });

  it('puts several plans side by side', async () => {
    const bench = measured();
    const plans = [
      { title: 'as it is', plan: await solved(bench) },
      { title: 'ground', plan: await solved(bench, { mains: 'mains:machine:0.25:Ashlar Grinding' }) },
    ];
    const asked = makeOffer(bench.open, workshop, plans, { ...given, validDays: 7 });
    if (asked.kind === 'refused') throw new Error(asked.refusal.what);
    bench.done(asked.value);
    expect(bench.open.offers[0]?.plans.map(({ name, cents }) => [name, cents])).toEqual([
      ['A', 0],
      ['B', 22_600],
    ]);
    expect(bench.open.offers[0]?.validUntil).toBe('2026-03-09');
  });

  // source: worked by hand: two lock tabs at each of two main bearings at 0.75 = 3.00; one pump renewed, its gasket 1.20
  it('prices what is used but once by name, and nothing less is taken', async () => {
    const bench = toOrder();
    const asked = makeOffer(
      bench.open,
      workshop,
      [{ title: 'as wanted', plan: await solved(bench, ordered) }],
      given,
    );
    if (asked.kind === 'refused') throw new Error(asked.refusal.what);
    const [plan] = asked.value.plans;
    if (!plan) throw new Error('no plan');
    expect(plan.oneUse).toEqual([
      { says: 'lock tabs of the main caps', count: 4, cents: 300 },
      { says: 'pump gaskets', count: 1, cents: 120 },
    ]);
    const { oneUse: _, ...without } = plan;
    for (const less of [
      without,
      { ...plan, oneUse: plan.oneUse?.map((line) => ({ ...line, cents: 0 })) ?? [] },
    ])
      expect(bench.refused({ ...asked.value, plans: [less] })).toBe(
        'offer, plan A | its gaskets, seals and other one-use items are not those that the plan needs, at their prices | make the offer again from the plan',
      );
    bench.done(asked.value);
    // source: the plan's 321.00, 180.00 of fixed labour, 4.20 for the lines above
    expect(offerSum({ taxes: [] }, plan).net).toBe(50_520);
  });

  it('charges no hours where the workshop has no rate', async () => {
    const bench = measured();
    const { labourRate: _, ...without } = workshop;
    const plans = [{ title: 'x', plan: await solved(bench), labourHours: { text: '2', unit: 'h' } }];
    expect(makeOffer(bench.open, without, plans, given)).toMatchObject({
      refusal: { what: 'the workshop has no labour rate' },
    });
  });
});
