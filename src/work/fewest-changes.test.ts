/** @module Fewest turns and fetches, held against every order. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyWork, bookOf, changesIn, everyOrder, operation } from '../../test/work/any-work.ts';
import { fewestChanges } from './fewest-changes.ts';
import { precedenceOf } from './precedence.ts';

const weight = ({ turns, fetches }: { readonly turns: number; readonly fetches: number }) =>
  1000 * turns + fetches;

describe('fewest changes', () => {
  it('are those of the best of all orders', () => {
    // source: exhaustive enumeration of the orders
    fc.assert(
      fc.property(anyWork(7, 0.35, 3), (work) => {
        const found = fewestChanges(precedenceOf(bookOf(work)));
        expect(found.proved).toBe(true);
        expect(changesIn(found.order)).toEqual({ turns: found.turns, fetches: found.fetches });
        const least = Math.min(...[...everyOrder(work)].map((order) => weight(changesIn(order))));
        expect(weight(found)).toBe(least);
        expect([...found.order].sort((a, b) => (a.name < b.name ? -1 : 1))).toEqual(
          [...work].sort((a, b) => (a.name < b.name ? -1 : 1)),
        );
      }),
      { numRuns: 150 },
    );
  });

  it('come in an order that can be worked', () => {
    fc.assert(
      fc.property(anyWork(20, 0.15, 12), (work) => {
        const { order } = fewestChanges(precedenceOf(bookOf(work)), 50);
        const done = new Set<string>();
        for (const { name, after } of order) {
          expect(after.filter((one) => !done.has(one))).toEqual([]);
          done.add(name);
        }
        expect(done.size).toBe(work.length);
      }),
      { numRuns: 60 },
    );
  });

  it('name a least that the best of all keeps to, where the search was cut short', () => {
    fc.assert(
      fc.property(anyWork(14, 0.15, 8), fc.integer({ min: 0, max: 5 }), (work, stages) => {
        const precedence = precedenceOf(bookOf(work));
        const cut = fewestChanges(precedence, stages);
        const best = fewestChanges(precedence);
        expect(best.proved).toBe(true);
        expect(weight(cut.atLeast)).toBeLessThanOrEqual(weight(best));
        expect(weight(cut)).toBeGreaterThanOrEqual(weight(best));
        if (cut.proved) expect(weight(cut)).toBe(weight(best));
      }),
      { numRuns: 60 },
    );
  });

  it('are none for no work', () => {
    expect(fewestChanges(precedenceOf(bookOf([])))).toMatchObject({ order: [], turns: 0, proved: true });
  });

  it('count the tools that the last to ask for any did not leave in hand', () => {
    const work = [
      operation('a', { tools: ['puller', 'bar'] }),
      operation('b', { after: ['a'] }),
      operation('c', { after: ['b'], tools: ['bar'] }),
      operation('d', { after: ['c'], tools: ['puller'] }),
    ];
    expect(fewestChanges(precedenceOf(bookOf(work)))).toMatchObject({ turns: 0, fetches: 3, proved: true });
  });
});
