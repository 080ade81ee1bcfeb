/** @module What the workshop says of itself: kept as last described, refused where it makes no sense. */
import { describe, expect, it } from 'vitest';
import { Shop } from '../../test/register/shop.ts';
import type { WorkshopSays } from './workshop.ts';

const says: WorkshopSays = {
  name: 'Heronsway Bench',
  address: ['Reed Lane 1'],
  currency: 'EUR',
  taxes: [{ name: 'sales tax', rate: { text: '8.875', unit: '%' } }],
  labourRate: 4200,
  labour: [{ says: 'strip and clean', cents: 18_000 }],
  validDays: 30,
  terms: 'a third before work begins',
};
const describing = (change: Partial<WorkshopSays> = {}) =>
  ({ kind: 'describe workshop', workshop: { ...says, ...change } }) as const;

describe('the workshop', () => {
  it('is as it was last described, with who and when; its instruments stay', () => {
    const shop = new Shop();
    expect(shop.register.workshop).toBeUndefined();
    shop.done('2026-03-02', describing());
    shop.done('2026-03-03', describing({ validDays: 14 }));
    expect(shop.register.workshop).toEqual({
      ...says,
      validDays: 14,
      by: 'Ilse Quarrow',
      at: '2026-03-03T12:00:00Z',
    });
    expect(shop.register.instruments.size).toBe(1);
  });

  it.each([
    [{ name: ' ' }, 'name | nothing is written'],
    [{ currency: '' }, 'currency | nothing is written'],
    [{ taxes: [{ name: '', rate: { text: '19', unit: '%' } }] }, 'taxes | nothing is written'],
    [{ taxes: [{ name: 'tax', rate: { text: '119', unit: '%' } }] }, 'tax tax | 119 % is no rate of tax'],
    [{ taxes: [{ name: 'tax', rate: { text: '19', unit: 'mm' } }] }, 'tax tax |'],
    [{ labourRate: 10_000_001 }, 'labour rate | no hour costs that'],
    [{ labour: [{ says: '', cents: 1 }] }, 'labour lines | a line does not say what is done'],
    [{ validDays: 0 }, 'days an offer holds | an offer does not hold'],
  ])('is not described with %j', (change, refusal) => {
    expect(new Shop().refused('2026-03-02', describing(change))).toContain(refusal);
  });
});
