/** @module Finding a cycle. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findCycle } from './cycle.ts';

const graph = (edges: readonly (readonly [string, readonly string[]])[]) => new Map(edges);

describe('a cycle', () => {
  it('is named from its first name round to it again', () => {
    const found = findCycle(
      graph([
        ['a', ['b']],
        ['b', ['c']],
        ['c', ['d', 'b']],
        ['d', []],
      ]),
    );
    expect(found).toEqual(['b', 'c', 'b']);
  });

  it('may be a name that waits for itself', () => {
    expect(findCycle(graph([['a', ['a']]]))).toEqual(['a', 'a']);
  });

  it('is not seen where two ways lead to the same thing', () => {
    expect(
      findCycle(
        graph([
          ['a', ['b', 'c']],
          ['b', ['d']],
          ['c', ['d']],
          ['d', []],
        ]),
      ),
    ).toBeUndefined();
  });

  it('leads nowhere through a name that is not there', () => {
    expect(findCycle(graph([['a', ['nobody']]]))).toBeUndefined();
  });

  it('is found exactly when the names cannot be put in an order, and each of its steps is there', () => {
    const edges = fc.array(fc.tuple(fc.nat(7), fc.nat(7)), { maxLength: 20 });
    fc.assert(
      fc.property(edges, (pairs) => {
        const after = new Map(Array.from({ length: 8 }, (_, node) => [String(node), [] as string[]]));
        for (const [from, to] of pairs) after.get(String(from))?.push(String(to));
        const found = findCycle(after);
        const left = new Map(after);
        for (let before = -1; before !== left.size; ) {
          before = left.size;
          for (const [name, names] of left) if (!names.some((next) => left.has(next))) left.delete(name);
        }
        expect(found === undefined).toBe(left.size === 0);
        for (const [index, name] of (found ?? []).slice(1).entries()) {
          expect(after.get(found?.[index] ?? '')).toContain(name);
        }
        if (found !== undefined) expect(found[0]).toBe(found.at(-1));
      }),
    );
  });
});
