/** @module Orders of tightening against the star patterns of flanges, and what must hold of any order. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { reckonByName } from './list.ts';
import { type Bolt, tightenOrder } from './tighten-order.ts';

const ring = (count: number): readonly Bolt[] =>
  Array.from({ length: count }, (_, at) => ({
    name: String(at + 1),
    x: 100 * Math.cos((2 * Math.PI * at) / count),
    y: 100 * Math.sin((2 * Math.PI * at) / count),
  }));

const ask = (texts: Readonly<Record<string, string>>) =>
  reckonByName('tighten-order', { bolts: 'A 0 0, B 90 0, C 45 0', ...texts });

describe('the order of tightening', () => {
  // source: ASME PCC-1, star patterns of flanges, from memory
  it.each([
    [4, '1 3 2 4'],
    [8, '1 5 3 7 2 6 4 8'],
    [12, '1 7 4 10 2 8 5 11 3 9 6 12'],
  ])('crosswise on a ring of %d is the star of the flange', (count, star) => {
    const names = tightenOrder(ring(count), 'crosswise').map(({ name }) => name);
    expect(names.join(' ')).toBe(star);
    const astray = names.filter((name, at) => name !== star.split(' ')[at]).length;
    outsideCheck(
      'tighten-order',
      'ASME PCC-1, star patterns of 4, 8 and 12 bolts, from memory',
      'bolts out of place',
      0,
    )(astray, 0);
  });

  const bolts = fc
    .uniqueArray(fc.tuple(fc.integer({ min: 0, max: 30 }), fc.integer({ min: 0, max: 9 })), {
      minLength: 1,
      maxLength: 30,
      selector: ([x, y]) => `${x} ${y}`,
    })
    .map((places) => places.map(([x, y], at) => ({ name: `b${at}`, x: 10 * x, y: 10 * y })));

  it('takes every bolt once, whichever way', () => {
    fc.assert(
      fc.property(bolts, fc.constantFrom('centre out', 'crosswise', 'spiral'), (given, way) => {
        expect(new Set(tightenOrder(given, way as 'spiral'))).toEqual(new Set(given));
        expect(tightenOrder(given, way as 'spiral')).toHaveLength(given.length);
      }),
    );
  });

  it('from the centre goes outwards only', () => {
    fc.assert(
      fc.property(bolts, (given) => {
        const middle = { x: 0, y: 0 };
        for (const bolt of given) {
          middle.x += bolt.x / given.length;
          middle.y += bolt.y / given.length;
        }
        const far = tightenOrder(given, 'centre out').map(({ x, y }) =>
          Math.hypot(x - middle.x, y - middle.y),
        );
        for (const [at, each] of far.entries())
          expect(each).toBeGreaterThanOrEqual((far[at - 1] ?? 0) - 1e-5);
      }),
    );
  });

  it('is the maker’s own where that is given, and slackens backwards', () => {
    const { results } = known(ask({ maker: 'B A C' }));
    expect(results.tighten?.value).toBe('B A C');
    expect(results.slacken?.value).toBe('C A B');
    expect(known(ask({})).results.tighten?.value).toBe('C A B');
  });

  it.each([
    [{ maker: 'B A' }, 'maker'],
    [{ maker: 'B A C C' }, 'maker'],
    [{ bolts: 'A 0' }, 'bolts'],
    [{ bolts: 'A 0 0, A 9 0' }, 'bolts'],
    [{ bolts: '' }, 'bolts'],
    [{ way: 'at random' }, 'way=at random'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});
