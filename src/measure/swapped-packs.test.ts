/** @module What swapped shim packs must be told by. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { swappedPacks } from './swapped-packs.ts';

const pumps = (count: number) => Array.from({ length: count }, (_, index) => `pump.${index + 1}`);

describe('swapped shim packs', () => {
  it('names two pumps whose packs changed places, and the pack that each should have', () => {
    const [swap, ...more] = swappedPacks({
      places: pumps(3),
      needed: [0.62, 0.98, 0.79],
      found: [0.99, 0.6, 0.8],
      tolerance: 0.05,
    });
    expect(more).toEqual([]);
    expect(swap).toMatchObject({ cycle: ['pump.1', 'pump.2'], from: ['pump.2', 'pump.1'] });
    expect(swap?.odds).toBeGreaterThan(100);
  });

  it('names a round of three', () => {
    const [swap] = swappedPacks({
      places: pumps(4),
      needed: [0.6, 1, 1.4, 0.8],
      found: [1.41, 0.6, 1.01, 0.8],
      tolerance: 0.05,
    });
    expect(swap).toMatchObject({
      cycle: ['pump.1', 'pump.2', 'pump.3'],
      from: ['pump.2', 'pump.3', 'pump.1'],
    });
    expect(swap?.odds).toBeGreaterThan(10);
  });

  it.each([
    ['packs sit where they belong', [0.62, 0.98, 0.79], [0.6, 1, 0.8]],
    ['all packs are equal', [0.8, 0.8, 0.8], [0.8, 0.8, 0.8]],
    ['two packs are equal', [0.8, 0.81, 1], [0.8, 0.8, 1]],
  ])('has nothing to say where %s', (_what, needed, found) => {
    expect(swappedPacks({ places: pumps(3), needed, found, tolerance: 0.05 })).toEqual([]);
  });

  it('is not sure where packs differ by less than their tolerance', () => {
    const swaps = swappedPacks({
      places: pumps(2),
      needed: [0.8, 0.84],
      found: [0.84, 0.8],
      tolerance: 0.05,
    });
    for (const { odds } of swaps) expect(odds).toBeLessThan(10);
  });

  it('takes one wild pack for a wrong pack and not for a swap', () => {
    const swaps = swappedPacks({
      places: pumps(3),
      needed: [0.6, 1, 0.8],
      found: [0.6, 1, 1.5],
      tolerance: 0.05,
    });
    expect(swaps.filter(({ odds }) => odds >= 10)).toEqual([]);
  });

  it('says the same whatever the order of the pumps', () => {
    const question = { needed: [0.6, 1, 1.4, 0.8], found: [1.41, 1, 0.61, 0.8] };
    fc.assert(
      fc.property(fc.shuffledSubarray([0, 1, 2, 3], { minLength: 4 }), (order) => {
        const pick = (values: readonly number[]) => order.map((index) => values[index] ?? Number.NaN);
        const [swap] = swappedPacks({
          places: order.map((index) => `pump.${index + 1}`),
          needed: pick(question.needed),
          found: pick(question.found),
          tolerance: 0.05,
        });
        expect([...(swap?.cycle ?? [])].sort()).toEqual(['pump.1', 'pump.3']);
      }),
    );
  });

  it('has nothing to say of one pump, or none', () => {
    expect(swappedPacks({ places: [], needed: [], found: [], tolerance: 0.05 })).toEqual([]);
    expect(swappedPacks({ places: ['pump.1'], needed: [0.6], found: [1.2], tolerance: 0.05 })).toEqual([]);
  });
});
