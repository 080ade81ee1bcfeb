/** @module What must be said of an instrument before it is believed. */
import { describe, expect, it } from 'vitest';
import { Shop } from '../../test/register/shop.ts';
import { standing } from './standing.ts';

const mm = (text: string) => ({ text, unit: 'mm' });

describe('what must be said of an instrument', () => {
  const kinds = (shop: Shop, on: string) => standing(shop.instrument(), on).map(({ kind }) => kind);

  it('is that it was never checked, until it is', () => {
    const shop = new Shop();
    expect(kinds(shop, '2026-03-02')).toEqual(['never checked']);
    shop.check('2026-03-02');
    expect(kinds(shop, '2026-03-02')).toEqual([]);
  });

  it('is that it is overdue, from the day after it was due until it is calibrated', () => {
    const shop = new Shop();
    shop.calibrate('2026-03-02', { on: '2026-03-01', due: '2026-09-01' });
    expect(kinds(shop, '2026-09-01T23:59:59Z')).toEqual([]);
    expect(kinds(shop, '2026-09-02T00:00:00Z')).toEqual(['overdue']);
    shop.calibrate('2026-09-03', { on: '2026-09-02', due: '2027-09-01' });
    expect(kinds(shop, '2026-09-03')).toEqual([]);
  });

  it('is that its last check found it out of tolerance, until it is good again', () => {
    const shop = new Shop();
    shop.check('2026-03-02', { showed: mm('0.009'), good: false });
    expect(kinds(shop, '2026-03-02')).toEqual(['out of tolerance']);
    shop.check('2026-03-03');
    expect(kinds(shop, '2026-03-03')).toEqual([]);
  });
});
