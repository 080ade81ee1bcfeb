/** @module Demands changed one at a time: nothing else moves, and what is let go of leaves no trace. */
import { describe, expect, it } from 'vitest';
import type { Demands } from './plan-model.ts';
import { demanding, fixedTo, leavingOut, pricedAt } from './what-if.ts';

const asked: Demands = {
  hours: 4_000,
  fixed: { mains: 'mains:put back' },
  withoutSuppliers: ['Tump Lane'],
  prices: { a: 100 },
};

describe('demands', () => {
  it('are changed one at a time', () => {
    expect(demanding(asked, { days: 6 })).toEqual({ ...asked, days: 6 });
    expect(fixedTo(asked, { bores: 'bores:sleeve' }).fixed).toEqual({
      mains: 'mains:put back',
      bores: 'bores:sleeve',
    });
    expect(fixedTo(asked, { mains: 'mains:machine' }).fixed).toEqual({ mains: 'mains:machine' });
    expect(leavingOut(asked, 'Oddy', true).withoutSuppliers).toEqual(['Tump Lane', 'Oddy']);
    expect(leavingOut(asked, 'Tump Lane', true).withoutSuppliers).toEqual(['Tump Lane']);
    expect(pricedAt(asked, ['b', 'c'], 250).prices).toEqual({ a: 100, b: 250, c: 250 });
  });

  it('are let go of without a trace', () => {
    const none = pricedAt(
      leavingOut(fixedTo(asked, { mains: undefined }), 'Tump Lane', false),
      ['a'],
      undefined,
    );
    expect(none).toEqual({ hours: 4_000 });
    expect(demanding(none, { hours: undefined })).toEqual({});
  });
});
