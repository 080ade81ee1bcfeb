/** @module What is left to work on, and what can be done while parts are away. */
import { describe, expect, it } from 'vitest';
import { agreed } from '../../test/job/bench.ts';
import { bookedToReach, strip } from '../../test/job/partial.ts';
import { orderListOf, placeOrder } from './order/order-list.ts';
import { openNowOf, workLeft } from './work-left.ts';

const names = (operations: readonly { readonly name: string }[]) => operations.map(({ name }) => name);

describe('what is left of a job', () => {
  it('is what its scope takes in and nobody has signed', () => {
    const told = bookedToReach(['pump.1']);
    expect(names(workLeft(told.job(), ['strip']).operations).at(-1)).toBe('lift-pumps');
    strip(told);
    expect(workLeft(told.job(), ['strip']).operations).toEqual([]);
  });

  it('waits for what was ordered and is not here, and goes on with the rest', () => {
    const bench = agreed();
    bench.done({ kind: 'do operation', operation: 'lift-crankshaft', note: '' });
    expect(names(openNowOf(bench.open, ['build', 'set']).open)).toContain('lay-crankshaft');
    for (const [at, list] of orderListOf(bench.open).entries()) {
      const order = placeOrder(list, { order: `O-${at + 1}`, due: '2026-03-09', note: '' });
      if (order.lines.length > 0) bench.done(order);
    }
    const { open, waiting } = openNowOf(bench.open, ['build', 'set']);
    expect(names(open)).not.toContain('lay-crankshaft');
    expect(waiting).toMatchObject([{ operation: { name: 'lay-crankshaft' }, away: ['main'] }]);
  });
});
