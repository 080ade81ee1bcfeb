/** @module Shim packs against an exhaustive search, and the laws that they keep. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degrees, mm } from '../quantity/brand.ts';
import { type BoxShim, chooseShims, type PackNeed, type PackSet, type ShimQuestion } from './shim-pack.ts';

/** Small questions in hundredths of a millimetre. */
interface Small {
  readonly needs: readonly number[];
  readonly box: readonly { readonly thickness: number; readonly count: number }[];
  readonly mostShims: number;
}

const question = ({ needs, box, mostShims }: Small): ShimQuestion => ({
  needs: needs.map((needed, at): PackNeed => ({ pump: `pump.${at + 1}`, needed: mm(needed / 100) })),
  box: box.map(({ thickness, count }): BoxShim => ({ thickness: mm(thickness / 100), count })),
  mostShims,
  rate: degrees(1),
  addingShims: 'retards',
});

const chosen = (asked: ShimQuestion): PackSet => {
  const outcome = chooseShims(asked);
  if (outcome.kind === 'refused') throw new Error(outcome.refusal.what);
  return outcome.value;
};

/** Every way to serve every pump, tried one after another. */
const exhaustive = ({ needs, box, mostShims }: Small): readonly number[] => {
  let best: readonly number[] = [Infinity];
  const left = box.map(({ count }) => count);
  const less = (one: readonly number[], other: readonly number[]): boolean => {
    const at = one.findIndex((value, place) => value !== other[place]);
    return at >= 0 && (one[at] ?? 0) < (other[at] ?? 0);
  };
  const fill = (pump: number, errors: readonly number[], shims: number): void => {
    if (pump === needs.length) {
      const sizes = errors.map(Math.abs);
      const rank = [
        Math.max(...sizes),
        Math.max(...errors) - Math.min(...errors),
        shims,
        sizes.reduce((sum, size) => sum + size, 0),
      ];
      if (less(rank, best)) best = rank;
      return;
    }
    const stack = (from: number, room: number, sum: number): void => {
      if (from === box.length) {
        fill(pump + 1, [...errors, sum - (needs[pump] ?? 0)], shims + mostShims - room);
        return;
      }
      const had = left[from] ?? 0;
      for (let taken = 0; taken <= Math.min(room, had); taken += 1) {
        left[from] = had - taken;
        stack(from + 1, room - taken, sum + taken * (box[from]?.thickness ?? 0));
      }
      left[from] = had;
    };
    stack(0, mostShims, 0);
  };
  fill(0, [], 0);
  return best;
};

const ranksOf = ({ packs, greatestError, spread, shimsUsed }: PackSet): readonly number[] => [
  Math.round(greatestError * 100),
  Math.round(spread * 100),
  shimsUsed,
  Math.round(packs.reduce((sum, { error }) => sum + Math.abs(error), 0) * 100),
];

const small = fc.record({
  needs: fc.array(fc.integer({ min: 0, max: 40 }), { minLength: 1, maxLength: 4 }),
  box: fc
    .uniqueArray(
      fc.record({ thickness: fc.integer({ min: 1, max: 20 }), count: fc.integer({ min: 0, max: 3 }) }),
      {
        minLength: 1,
        maxLength: 4,
        selector: ({ thickness }) => thickness,
      },
    )
    .filter((box) => box.some(({ count }) => count > 0)),
  mostShims: fc.integer({ min: 1, max: 3 }),
});

describe('shim packs for all pumps together', () => {
  it('are as good as the best of all sets that there are, rank by rank', () => {
    // source: exhaustive enumeration, above
    fc.assert(
      fc.property(small, (asked) => {
        const set = chosen(question(asked));
        expect(set.proved).toBe(true);
        expect(ranksOf(set)).toEqual(exhaustive(asked));
      }),
      { numRuns: 3000 },
    );
  });
});
