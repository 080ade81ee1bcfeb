/** @module What is ordered comes to what the plan costs, to the hundredth, whatever is chosen. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { orderListOf } from '../../src/job/order/order-list.ts';
import { centsTogether } from '../../src/plan/cost.ts';
import { hours } from '../../src/quantity/brand.ts';
import { cases } from '../outside/any-plan-question.ts';

describe('the order list of a plan', () => {
  it('comes to what the plan costs beside one-use items, set-ups and quantities counted', () => {
    fc.assert(
      fc.property(cases, fc.infiniteStream(fc.nat()), ({ question, bySlot }, picks) => {
        const chosen = bySlot.flatMap((options) => options[(picks.next().value ?? 0) % options.length] ?? []);
        const lists = orderListOf({
          sheet: question.sheet,
          done: new Map(),
          scopes: [],
          orders: new Map(),
          plan: {
            choices: chosen.map(({ slot, id, reason, cents }) => ({ slot, option: id, says: reason, cents })),
            cents: 0,
            days: 0,
            hours: hours(0),
            by: 'Odo Ferrick',
            at: '2026-03-02T08:00:00Z',
            ordersBefore: 0,
          },
        });
        const once = lists
          .flatMap(({ lines }) => lines)
          .reduce((sum, { component, leftCents }) => sum + (component === undefined ? leftCents : 0), 0);
        expect(lists.reduce((sum, { cents }) => sum + cents, -once)).toBe(centsTogether(chosen));
      }),
    );
  });
});
