/** @module Reaching a place: the least that must come off, and what it brings with it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quillfeather as readQuillfeather } from '../../test/engines/demo-engines.ts';
import { known } from '../../test/known.ts';
import { anyWork, bookOf } from '../../test/work/any-work.ts';
import { reach } from './reach.ts';

const quillfeather = readQuillfeather();

const names = (operations: readonly { readonly name: string }[]) => operations.map(({ name }) => name);

const pump = { name: 'pump', title: 'pump', count: 1, along: 'engine', drawn: 'pump' } as const;
const bare = {
  placeKinds: new Map([['pump', pump]]),
  places: new Map(),
  oneUse: new Map(),
  components: new Map(),
  couplings: [],
  fasteners: new Map(),
};

describe('the strip that reaches a place', () => {
  it('is the smallest of all sets of operations that can be done and lay it open', () => {
    // source: exhaustive enumeration of the sets
    fc.assert(
      fc.property(anyWork(8), fc.integer({ min: 1, max: 255 }), (work, bits) => {
        const book = work.map((one, at) => ((bits >> at) % 2 === 1 ? { ...one, at: 'pump' } : one));
        fc.pre(book.some(({ at }) => at === 'pump'));
        const found = known(reach({ ...bare, operations: bookOf(book) }, 'pump'));
        const sets = Array.from({ length: 2 ** book.length }, (_, set) =>
          book.filter((__, at) => (set >> at) % 2 === 1),
        ).filter(
          (set) =>
            set.some(({ at }) => at === 'pump') &&
            set.every(({ after }) => after.every((one) => names(set).includes(one))),
        );
        expect(sets.map((set) => names(set).sort())).toContainEqual(names(found.strip).sort());
        expect(found.strip).toHaveLength(Math.min(...sets.map(({ length }) => length)));
      }),
    );
  });

  it('takes off no more than the pumps for a pump, and sets the timing again', () => {
    const found = known(reach(quillfeather, 'pump.2'));
    expect(found.title).toBe('fuel pump 2');
    expect(names(found.strip).at(-1)).toBe('lift-pumps');
    expect(found.off).toEqual(['manifold', 'pump']);
    expect(found.spoilt.map(({ item, count }) => [item.name, count])).toEqual([['manifold-gaskets', 2]]);
    expect(names(found.again).slice(0, 5)).toEqual([
      'find-top-dead-centre',
      'fit-pumps',
      'check-spill',
      'prove-stop',
      'balance-pumps',
    ]);
    expect(found.prove).toEqual(['pump-depth', 'spill-angle']);
  });

  it('goes through head, sump, pistons, gears and flywheel to a main bearing', () => {
    const found = known(reach(quillfeather, 'main.2'));
    expect(found.strip).toHaveLength(13);
    expect(names(found.strip)).not.toContain('strip-valves');
    expect(found.renew.map(({ name }) => name)).toEqual(['head-gasket']);
    expect(found.spoilt).toContainEqual({ item: quillfeather.oneUse.get('main-lock-tabs'), count: 8 });
    expect(names(found.again)).not.toContain('fit-valves');
    expect(found.prove).toContain('end-float');
  });

  it('opens what is hidden by what was fitted over it', () => {
    expect(known(reach(quillfeather, 'bore.3')).off).toContain('piston');
  });

  it('counts what is done already', () => {
    const done = new Set(['isolate-and-drain', 'lift-onto-stand', 'mark-parts', 'strip-manifolds']);
    expect(names(known(reach(quillfeather, 'injector', done)).strip)).toEqual(['draw-injectors']);
    const all = new Set(quillfeather.operations.keys());
    expect(known(reach(quillfeather, 'injector', all))).toMatchObject({ strip: [], again: [], spoilt: [] });
  });

  it('refuses a place that is not there, and one that nothing lays open', () => {
    expect(reach(quillfeather, 'pmup.2')).toMatchObject({
      refusal: { what: 'there is no place pmup.2', remedy: 'write pump.2, if that is what is meant' },
    });
    expect(reach({ ...bare, operations: new Map() }, 'pump')).toMatchObject({
      refusal: { what: 'no operation of the strip takes pump off or lays it open' },
    });
  });
});
