/** @module Values with uncertainty follow the laws of linear forms: what is shared adds or cancels. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import {
  certain,
  combine,
  correlation,
  covariance,
  effectiveFreedom,
  expanded,
  minus,
  plus,
  propagate,
  standardUncertainty,
  times,
  type Uncertain,
  uncertain,
} from './uncertain.ts';

const figures = between(-100, 100);
/** Sizes that may share any of five influences. */
const sizes: fc.Arbitrary<Uncertain> = fc
  .tuple(
    figures,
    fc.array(
      fc.record({
        name: fc.constantFrom('a', 'b', 'c', 'd', 'e'),
        share: figures,
        freedom: fc.integer({ min: 1, max: 50 }),
      }),
      { maxLength: 5 },
    ),
  )
  .map(([value, terms]) =>
    terms.reduce<Uncertain>(
      (sum, { name, share, freedom }) => plus(sum, uncertain(0, name, share, freedom)),
      certain(value),
    ),
  );

const close = (a: number, b: number, scale = 1): void => {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-10 * (Math.abs(a) + Math.abs(b) + scale));
};

/** Two forms are one when no value and no share differs. */
const same = (a: Uncertain, b: Uncertain): void => {
  close(a.value, b.value);
  for (const name of ['a', 'b', 'c', 'd', 'e']) {
    const share = (x: Uncertain): number => x.terms.find((term) => term.name === name)?.share ?? 0;
    close(share(a), share(b));
  }
};

describe('an uncertain value', () => {
  it('loses in a difference what both sizes share', () => {
    const journal = plus(uncertain(54.98, 'micrometer', 0.003), uncertain(0, 'repeat journal', 0.001));
    const bore = plus(uncertain(55.03, 'micrometer', 0.003), uncertain(0, 'repeat bore', 0.001));
    const gap = minus(bore, journal);
    expect(gap.terms.map(({ name }) => name)).toEqual(['repeat bore', 'repeat journal']);
    expect(standardUncertainty(gap)).toBeCloseTo(0.001 * Math.SQRT2, 12);
  });

  it('gains in a sum what both sizes share', () => {
    const washer = uncertain(2.3, 'micrometer', 0.003);
    expect(standardUncertainty(plus(washer, washer))).toBe(0.006);
  });

  it('keeps its influences sorted, each once', () => {
    fc.assert(
      fc.property(sizes, sizes, figures, (x, y, factor) => {
        for (const sum of [
          plus(x, y),
          minus(x, y),
          combine([
            [factor, x],
            [2, y],
            [-1, x],
          ]),
        ]) {
          const names = sum.terms.map(({ name }) => name);
          expect(names).toEqual([...new Set(names)].sort());
        }
      }),
    );
  });

  it('adds in any order and grouping', () => {
    fc.assert(
      fc.property(sizes, sizes, sizes, (x, y, z) => {
        same(plus(x, y), plus(y, x));
        same(plus(plus(x, y), z), plus(x, plus(y, z)));
        same(minus(x, y), plus(x, times(y, -1)));
        same(minus(plus(x, y), y), x);
        same(
          combine(
            [
              [1, x],
              [2, y],
              [-3, z],
            ],
            5,
          ),
          plus(minus(plus(x, times(y, 2)), times(z, 3)), certain(5)),
        );
      }),
    );
  });

  it('has no uncertainty against itself', () => {
    fc.assert(
      fc.property(sizes, (x) => {
        expect(minus(x, x)).toEqual(certain(0));
      }),
    );
  });

  it('obeys u²(x + y) = u²(x) + u²(y) + 2 cov(x, y)', () => {
    fc.assert(
      fc.property(sizes, sizes, (x, y) => {
        const sum = standardUncertainty(plus(x, y)) ** 2;
        const parts = standardUncertainty(x) ** 2 + standardUncertainty(y) ** 2;
        close(sum, parts + 2 * covariance(x, y), parts);
        close(covariance(x, y), covariance(y, x));
        close(covariance(x, x), standardUncertainty(x) ** 2);
        expect(Math.abs(correlation(x, y))).toBeLessThanOrEqual(1);
      }),
    );
    expect(correlation(certain(1), uncertain(2, 'a', 1))).toBe(0);
  });

  it('has effective degrees of freedom between the fewest and the sum of its influences', () => {
    fc.assert(
      fc.property(sizes, (x) => {
        fc.pre(standardUncertainty(x) > 0);
        const all = x.terms.map(({ freedom }) => freedom);
        expect(effectiveFreedom(x)).toBeGreaterThanOrEqual(Math.min(...all) * (1 - 1e-9));
        expect(effectiveFreedom(x)).toBeLessThanOrEqual(
          all.reduce((sum, freedom) => sum + freedom) * (1 + 1e-9),
        );
      }),
    );
  });

  it('that is certain is known as well as can be', () => {
    expect(effectiveFreedom(certain(3))).toBe(Infinity);
    expect(effectiveFreedom(uncertain(3, 'a', 1))).toBe(Infinity);
  });

  it('has the degrees of freedom of the one estimate that several influences rest on', () => {
    // source: JCGM 100:2008, G.4.1 holds for independent estimates; of one estimate of spread with 9 degrees of freedom
    // any number of repeats, however weighed, knows no more than those 9
    const repeat = (name: string): Uncertain => ({
      value: 1,
      terms: [{ name, share: 1, freedom: 9, pool: 'micrometer' }],
    });
    const several = combine([
      [1, repeat('a')],
      [-2, repeat('b')],
      [0.5, repeat('c')],
    ]);
    expect(effectiveFreedom(several)).toBeCloseTo(9, 9);
    expect(effectiveFreedom(plus(uncertain(0, 'a', 1, 9), uncertain(0, 'b', 1, 9)))).toBeCloseTo(18, 9);
  });

  it('takes the smaller number of degrees of freedom where two reports of one influence differ', () => {
    expect(plus(uncertain(0, 'a', 1, 9), uncertain(0, 'a', 1, 4)).terms[0]?.freedom).toBe(4);
  });

  it('widens with the probability asked for, and is as wide as normal where all is known', () => {
    expect(expanded(uncertain(1, 'a', 2), 0.95)).toBeCloseTo(3.92, 2);
    expect(expanded(certain(1), 0.95)).toBe(0);
    expect(expanded(uncertain(1, 'a', 1, 4), 0.99)).toBeGreaterThan(expanded(uncertain(1, 'a', 1, 4), 0.95));
  });
});

describe('uncertainty carried through a function', () => {
  const through = (f: (values: readonly number[]) => number, ...inputs: readonly Uncertain[]): Uncertain => {
    const carried = propagate(f, inputs);
    if (carried.kind === 'refused') throw new Error(carried.refusal.what);
    return carried.value;
  };

  it('is the linear form itself where the function is linear', () => {
    fc.assert(
      fc.property(sizes, sizes, (x, y) => {
        same(
          through(([a = 0, b = 0]) => 3 * a - 2 * b + 1, x, y),
          combine(
            [
              [3, x],
              [-2, y],
            ],
            1,
          ),
        );
      }),
    );
  });

  it('knows the slopes of a product and a quotient, and what they share', () => {
    const x = uncertain(3, 'gauge', 0.1);
    const y = plus(uncertain(4, 'gauge', 0.1), uncertain(0, 'repeat', 0.2));
    same(
      through(([a = 0, b = 0]) => a * b, x, y),
      {
        value: 12,
        terms: combine([
          [4, x],
          [3, y],
        ]).terms,
      },
    );
    same(
      through(([a = 0, b = 0]) => a / b, x, x),
      certain(1),
    );
  });

  it('finds the slope at nought and next to an edge', () => {
    expect(standardUncertainty(through(([a = 0]) => Math.sin(a), uncertain(0, 'a', 0.5)))).toBeCloseTo(
      0.5,
      9,
    );
    expect(standardUncertainty(through(([a = 0]) => Math.sqrt(a), uncertain(1e-4, 'a', 1)))).toBeCloseTo(
      50,
      5,
    );
  });

  it('is refused where the function has no value, or no slope', () => {
    expect(propagate(([a = 0]) => Math.log(a), [uncertain(-1, 'a', 0.1)]).kind).toBe('refused');
    expect(propagate(([a = 0]) => Math.sqrt(a), [uncertain(0, 'a', 0.1)]).kind).toBe('refused');
    expect(propagate(([a = 0]) => Math.sqrt(a), [certain(0)])).toEqual({ kind: 'answer', value: certain(0) });
  });
});
