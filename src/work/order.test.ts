/** @module The order of work: all of it, each after what must come before, the same every time. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quillfeather as readQuillfeather } from '../../test/engines/demo-engines.ts';
import { anyWork, bookOf, everyOrder, operation } from '../../test/work/any-work.ts';
import { orderOf } from './order.ts';
import { precedenceOf } from './precedence.ts';

const quillfeather = readQuillfeather();

const names = (operations: readonly { readonly name: string }[]) => operations.map(({ name }) => name);

describe('the order of work', () => {
  it('is the first of all orders in the sequence of the engine type', () => {
    fc.assert(
      fc.property(anyWork(6), (work) => {
        const [first] = everyOrder(work);
        expect(orderOf(precedenceOf(bookOf(work)))).toEqual(first);
      }),
    );
  });

  it('keeps the order of chosen operations through those left out', () => {
    fc.assert(
      fc.property(anyWork(7), fc.integer({ min: 0, max: 127 }), (work, bits) => {
        const chosen = new Set(names(work.filter((_, at) => (bits >> at) % 2 === 1)));
        const order = names(orderOf(precedenceOf(bookOf(work), ({ name }) => chosen.has(name))));
        expect([...order].sort()).toEqual([...chosen].sort());
        const some = [...everyOrder(work)].map((all) => names(all).filter((name) => chosen.has(name)));
        expect(some).toContainEqual(order);
      }),
      { numRuns: 60 },
    );
  });

  it('leaves out what goes round in a circle, and what waits for it', () => {
    const work = [
      operation('a'),
      operation('b', { after: ['c'] }),
      operation('c', { after: ['b'] }),
      operation('d', { after: ['c', 'a'] }),
    ];
    expect(names(orderOf(precedenceOf(bookOf(work))))).toEqual(['a']);
  });

  it('of the demonstration engine is its own list', () => {
    expect(orderOf(precedenceOf(quillfeather.operations))).toEqual([...quillfeather.operations.values()]);
  });
});
