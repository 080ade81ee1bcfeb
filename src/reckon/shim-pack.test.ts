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

  it('come out the same whatever the order of pumps and of shims', () => {
    fc.assert(
      fc.property(small, fc.array(fc.nat(), { minLength: 10, maxLength: 10 }), (asked, keys) => {
        const shuffled = <T>(list: readonly T[]): readonly T[] =>
          list
            .map((value, at) => ({ value, key: keys[at] ?? 0 }))
            .sort((one, other) => one.key - other.key)
            .map(({ value }) => value);
        const plain = question(asked);
        const turned = { ...plain, needs: shuffled(plain.needs), box: shuffled(plain.box) };
        const byPump = ({ packs }: PackSet) => new Map(packs.map((pack) => [pack.pump, pack]));
        expect(byPump(chosen(turned))).toEqual(byPump(chosen(plain)));
      }),
      { numRuns: 500 },
    );
  });

  it('use no shim that is not in the box, no more than may go in a pack, and add up', () => {
    fc.assert(
      fc.property(small, (asked) => {
        const { packs, shimsUsed } = chosen(question(asked));
        const taken = packs.flatMap(({ shims }) => shims);
        expect(taken).toHaveLength(shimsUsed);
        for (const { thickness, count } of asked.box) {
          expect(taken.filter((shim) => shim === thickness / 100).length).toBeLessThanOrEqual(count);
        }
        packs.forEach(({ shims, thickness, needed, error }, at) => {
          expect(needed).toBe((asked.needs[at] ?? 0) / 100);
          expect(shims.length).toBeLessThanOrEqual(asked.mostShims);
          expect(shims).toEqual([...shims].sort((one, other) => other - one));
          expect(thickness).toBeCloseTo(
            shims.reduce((sum, shim) => sum + shim, 0),
            9,
          );
          expect(error).toBeCloseTo(thickness - needed, 9);
        });
      }),
    );
  });

  it('get no worse as shims are added to the box', () => {
    fc.assert(
      fc.property(small, fc.integer({ min: 1, max: 20 }), (asked, thickness) => {
        const more = { ...asked, box: [...asked.box, { thickness, count: 1 }] };
        const [before, after] = [chosen(question(asked)), chosen(question(more))];
        expect(after.greatestError).toBeLessThanOrEqual(before.greatestError);
      }),
    );
  });

  it('count two entries of one thickness as one', () => {
    const once = { needs: [30, 20], box: [{ thickness: 10, count: 5 }], mostShims: 3 };
    const twice = {
      ...once,
      box: [
        { thickness: 10, count: 2 },
        { thickness: 10, count: 3 },
      ],
    };
    expect(chosen(question(twice))).toEqual(chosen(question(once)));
  });
});

describe('the sign of a shim pack', () => {
  const thick = question({ needs: [10], box: [{ thickness: 12, count: 1 }], mostShims: 1 });

  it('is late for a pack too thick where adding shims retards', () => {
    const [pack] = chosen({ ...thick, rate: degrees(2.6) }).packs;
    expect(pack?.error).toBe(0.02);
    // source: 0.02 mm × 2.6 deg/mm by hand
    expect((pack?.timingError ?? 0) / degrees(1)).toBeCloseTo(-0.052, 12);
  });

  it('is early for the same pack where adding shims advances', () => {
    const [pack] = chosen({ ...thick, rate: degrees(2.6), addingShims: 'advances' }).packs;
    expect((pack?.timingError ?? 0) / degrees(1)).toBeCloseTo(0.052, 12);
  });
});

describe('a box that cannot do what is asked', () => {
  it('still gives the best there is, and names the pump that is out of reach', () => {
    const set = chosen(question({ needs: [50, 10], box: [{ thickness: 10, count: 5 }], mostShims: 3 }));
    expect(set.packs.map(({ thickness }) => thickness)).toEqual([0.3, 0]);
    // By the second rank: pump.2 could be met exactly, and is let 0.1 mm short to keep the cylinders alike.
    expect(set.spread).toBe(0.1);
    expect(set.notes).toContain('pump.1 needs 0.500 mm, and the 3 thickest shims in the box make 0.300 mm');
  });

  it('says that it runs short where one pump takes what another needs', () => {
    const set = chosen(
      question({
        needs: [20, 20],
        box: [
          { thickness: 20, count: 1 },
          { thickness: 15, count: 1 },
        ],
        mostShims: 1,
      }),
    );
    expect(set.greatestError).toBe(0.05);
    expect(set.notes.join()).toContain('the box runs short');
    expect(set.notes.join()).toContain('within 0.000 mm, together they come within 0.050 mm');
  });

  it('leaves a pump without shims where it needs none', () => {
    const set = chosen(question({ needs: [0], box: [{ thickness: 10, count: 1 }], mostShims: 2 }));
    expect(set.packs[0]?.shims).toEqual([]);
    expect(Object.is(set.packs[0]?.timingError, 0)).toBe(true);
  });

  it('owns up where the search was not let run to its end', () => {
    const needs = Array.from({ length: 12 }, (_, at) => 61 + 3 * at);
    const box = [7, 11, 13, 17, 19, 23].map((thickness) => ({ thickness, count: 5 }));
    const set = chosen({ ...question({ needs, box, mostShims: 4 }), effort: 1 });
    expect(set.proved).toBe(false);
    expect(set.notes.join()).toContain('the search reached its bound of effort');
    expect(set.packs).toHaveLength(12);
  });
});

describe('a question about shim packs that makes no sense', () => {
  const sound = question({ needs: [10, 20], box: [{ thickness: 10, count: 3 }], mostShims: 2 });
  const refusals: readonly [string, Partial<ShimQuestion>, string, string][] = [
    ['no pumps', { needs: [] }, 'pumps', 'no pump'],
    ['a negative pack', { needs: [{ pump: 'pump.7', needed: mm(-0.1) }] }, 'pump.7', '-0.100 mm'],
    ['no number', { needs: [{ pump: 'pump.7', needed: mm(Number.NaN) }] }, 'pump.7', 'no usable length'],
    [
      'a pump given twice',
      { needs: [1, 2].map(() => ({ pump: 'pump.1', needed: mm(1) })) },
      'pump.1',
      'twice',
    ],
    ['an empty box', { box: [{ thickness: mm(0.1), count: 0 }] }, 'box', 'no shim'],
    ['a shim of no thickness', { box: [{ thickness: mm(0), count: 2 }] }, 'box', '0 mm'],
    ['a shim as thick as a fist', { box: [{ thickness: mm(100), count: 2 }] }, 'box', '100 mm'],
    ['half a shim', { box: [{ thickness: mm(0.1), count: 0.5 }] }, 'box', '0.5 shims'],
    ['less than no shims', { box: [{ thickness: mm(0.1), count: -1 }] }, 'box', '-1 shims'],
    ['no shims in a pack', { mostShims: 0 }, 'shims in a pack', 'at most 0'],
    ['no rate', { rate: degrees(0) }, 'rate', 'not above 0'],
  ];

  it.each(refusals)('is refused: %s', (_, change, where, what) => {
    const outcome = chooseShims({ ...sound, ...change });
    if (outcome.kind !== 'refused') throw new Error('not refused');
    expect(outcome.refusal.where).toBe(where);
    expect(outcome.refusal.what).toContain(what);
    expect(outcome.refusal.remedy).not.toBe('');
  });
});
