/** @module Which offers may be made, which may be accepted, and what asks the owner again. */
import { describe, expect, it } from 'vitest';
import { measured, plan } from '../../../test/job/bench.ts';
import { accepting, labour, offer, offeredBench, planA, planB, token } from '../../../test/job/offers.ts';
import { offerStanding } from '../offer.ts';

describe('an offer', () => {
  it('is made of plans that the readings give, and stands as it was made', () => {
    const { open } = offeredBench();
    const { kind: _, ...told } = offer;
    expect(open.offers).toEqual([{ ...told, by: 'Ilse Quarrow', at: expect.any(String) }]);
    expect(open.agreed).toBeUndefined();
  });

  it.each([
    ['a number that is not the next', { number: 2 }, 'is not the next of this job'],
    ['no plan', { plans: [] }, 'one, two or three plans'],
    ['plans out of order', { plans: [planB, planA] }, 'not called A, B, C in order'],
    ['a plan twice', { plans: [planA, { ...planA, name: 'B' }] }, 'the same as plan A'],
    ['a plan without a title', { plans: [{ ...planA, title: ' ' }] }, 'what sets it apart'],
    ['a plan at another price', { plans: [{ ...planA, cents: 4500 }] }, 'not what the choices come to'],
    [
      'labour that was reckoned wrongly',
      { plans: [{ ...planA, labour: labour('14.5', 60_000) }] },
      'does not come to',
    ],
    [
      'labour without its hours',
      { plans: [{ ...planA, labour: [{ says: 'x', cents: 1, rate: 1 }] }] },
      'needs hours',
    ],
    ['another currency', { currency: 'crowns' }, 'the prices are in EUR'],
    ['a day that is over', { validUntil: '2026-03-01' }, '2026-03-01 is over'],
    ['a tax that is none', { taxes: [{ name: 'tax', rate: { text: '', unit: '%' } }] }, 'tax tax'],
    ['no name of the workshop', { shop: { name: '', address: [] } }, 'what the workshop is called'],
    ['a link that can be guessed', { token: 'offer-1' }, 'a link ends in 32 letters'],
  ])('is not made with %s', (_, change, says) => {
    expect(measured().refused({ ...offer, ...change })).toContain(says);
  });

  it('has a link of its own', () => {
    expect(offeredBench().refused({ ...offer, number: 2 })).toContain('its link is that of an offer before');
  });

  it('is not made of a plan that a reading bars', () => {
    const bench = measured();
    bench.read('main.2', '49.900', 'horizontal');
    expect(bench.refused(offer)).toMatch(/^offer, plan A, mains \| .* is not open/);
  });
});

describe('the acceptance of an offer', () => {
  it('chooses its plan and notes who agreed, and by which way', () => {
    const bench = offeredBench();
    bench.done(accepting('B'));
    const { plan: chosen, agreed, offers } = bench.open;
    expect(chosen).toMatchObject({ cents: 22_600, days: 4 });
    expect(chosen?.choices.map(({ option }) => option)).toEqual(planB.choices.map(({ option }) => option));
    expect(agreed).toMatchObject({ name: 'W. Heron', offer: { number: 1, plan: 'B', by: 'link' } });
    expect(offers[0] && offerStanding(offers[0], '2027-01-01')).toBe('accepted');
  });

  it.each([
    [accepting('C'), /it has no plan C \| choose plan A or B/],
    [accepting(''), /no plan of it is chosen/],
    [accepting('A', 'link', 2), /there is no offer 2/],
    [{ ...accepting(), name: ' ' }, /write who agreed/],
  ])('is refused where it makes no sense', (asked, says) => {
    expect(offeredBench().refused(asked)).toMatch(says);
  });

  it('is for once', () => {
    const bench = offeredBench();
    bench.done(accepting('A'));
    expect(bench.refused(accepting('B'))).toContain('plan A of it was accepted on 2026-03-02');
  });

  it('counts on the last day, and not on the day after', () => {
    const bench = offeredBench();
    expect(bench.refused(accepting(), '2026-04-02')).toContain(
      'it was valid until 2026-04-01 | ask for a new',
    );
    expect(bench.ask(accepting(), undefined, '2026-04-01').kind).toBe('answer');
  });

  it('is refused once readings or findings speak against the plan', () => {
    const bench = offeredBench();
    bench.read('main.2', '49.900', 'horizontal');
    expect(bench.refused(accepting('A'))).toContain('does not hold on what was measured and found since');
    bench.done(accepting('B'));
  });

  it('is refused once a later offer has taken its place', () => {
    const bench = offeredBench();
    bench.done({ ...offer, number: 2, plans: [{ ...planB, name: 'A' }], token: token('r') });
    expect(bench.refused(accepting())).toContain('offer 2 has taken its place');
    bench.done(accepting('A', 'note', 2));
    expect(bench.open.plan?.cents).toBe(22_600);
  });

  it('is refused once the shop has chosen another plan, and not where it has chosen one of the offer', () => {
    const one = offeredBench();
    one.done(plan);
    one.done(accepting('B'));
    const other = measured();
    other.done({ ...offer, plans: [{ ...planB, name: 'A' }] });
    other.done(plan);
    expect(other.refused(accepting('A'))).toContain('the shop has chosen a plan anew');
  });

  it('is refused once the owner has agreed to the plan chosen without it', () => {
    const bench = offeredBench();
    bench.done(plan);
    bench.done({ kind: 'note agreement', name: 'W. Heron', how: 'by telephone' });
    expect(bench.refused(accepting('B'))).toContain('agreed to the plan chosen, beside it');
    expect(bench.open.agreed?.offer).toBeUndefined();
  });
});

describe('after the owner agreed', () => {
  it('a plan chosen asks again, and the agreement stays in sight', () => {
    const bench = offeredBench();
    bench.done(accepting('B'));
    bench.done(plan);
    expect(bench.open.agreed).toBeUndefined();
    expect(bench.open.agreedBefore).toMatchObject([
      { name: 'W. Heron', offer: { plan: 'B' }, ended: { why: 'the shop has chosen a plan anew' } },
    ]);
    expect(bench.refused(accepting('B'))).toContain('it no longer stands');
  });

  it('a new offer asks again', () => {
    const bench = offeredBench();
    bench.done(accepting('A'));
    bench.done({ ...offer, number: 2, plans: [planA], token: token('r') });
    expect(bench.open.agreed).toBeUndefined();
    expect(bench.open.agreedBefore).toHaveLength(1);
    expect(bench.open.offers.map(({ superseded }) => superseded?.why)).toEqual([
      'offer 2 has taken its place',
      undefined,
    ]);
    bench.done(accepting('A', 'note', 2));
    expect(bench.open.agreed?.offer).toEqual({ number: 2, plan: 'A', by: 'note' });
  });
});
