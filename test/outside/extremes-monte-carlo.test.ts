/** @module Greatest, ovality and taper of sizes with shared errors, held against drawing their errors at random. */
import { describe, expect, it } from 'vitest';
import { greatest, least } from '../../src/measure/extreme.ts';
import { formAtMost, greatestRange } from '../../src/measure/form.ts';
import { jointConformance } from '../../src/measure/joint-conformance.ts';
import { standardUncertainty, type Uncertain } from '../../src/quantity/uncertain.ts';
import { normalBy, seeded } from '../engines/worn-engine.ts';

/*
 * source: the method of JCGM 101:2008: every influence is drawn for itself and the greatest, the range, taken of each
 * draw. 6·10⁴ draws with a fixed seed know a mean to 0.4 % of a deviation, a deviation to 0.3 % and a probability
 * near 0.95 to 0.001, near 0.5 to 0.002; the bounds below are the approximation's own, stated in its papers, and these.
 */
const draws = 60_000;

/** Sizes in µm about their values: one error shared by all, one of each its own. */
const sizesOf = (values: readonly number[], shared: number, own: number): readonly Uncertain[] =>
  values.map((value, index) => ({
    value,
    terms: [
      { name: 'calibration', share: shared, freedom: Infinity },
      { name: `repeat ${index}`, share: own, freedom: Infinity },
    ],
  }));

const drawn = (
  values: readonly number[],
  shared: number,
  own: number,
  of: (sizes: readonly number[]) => number,
): readonly number[] => {
  const random = seeded(1961);
  return Array.from({ length: draws }, () => {
    const common = shared * normalBy(random);
    return of(values.map((value) => value + common + own * normalBy(random)));
  });
};

const mean = (of: readonly number[]) => of.reduce((sum, each) => sum + each, 0) / of.length;
const meanSquareFrom = (of: readonly number[], from: number) =>
  Math.sqrt(mean(of.map((each) => (each - from) ** 2)));
const shareAtMost = (of: readonly number[], limit: number) =>
  of.filter((each) => each <= limit).length / of.length;

const schemes: readonly (readonly [string, readonly number[]])[] = [
  ['six equal sizes', [0, 0, 0, 0, 0, 0]],
  ['two equal sizes', [0, 0]],
  ['one clear of the others', [12, 0, 1, -1]],
  ['sizes that run each other close', [3, 2, 2.5, 0, 1, -4]],
  ['sizes in steps', [0, 1, 2, 3, 4, 5]],
  ['a pair ahead', [5, 5, 0, 0]],
];

const largest = (sizes: readonly number[]) => Math.max(...sizes);

describe('the greatest of several sizes', () => {
  it.each(schemes)('of %s misses its value by as much as is said', (_, values) => {
    for (const shared of [0, 1, 4]) {
      const own = 1.6;
      const got = greatest(sizesOf(values, shared, own), 'greatest');
      const truth = drawn(values, shared, own, largest);
      expect(got.value).toBe(largest(values));
      expect(Math.abs(standardUncertainty(got) / meanSquareFrom(truth, got.value) - 1)).toBeLessThan(0.03);
    }
  });

  it('covers 95 in 100 of them, or more, and not much more', () => {
    for (const [, values] of schemes) {
      const half = 1.96 * standardUncertainty(greatest(sizesOf(values, 3, 1.6), 'greatest'));
      const truth = drawn(values, 3, 1.6, largest);
      const held = truth.filter((each) => Math.abs(each - largest(values)) <= half).length / draws;
      expect(held).toBeGreaterThan(0.94);
      expect(held).toBeLessThan(0.975);
    }
  });

  it('loses what it shares with another part', () => {
    const bore = greatest(sizesOf([3, 2, 2.5], 4, 1.6), 'greatest');
    const shaft = least(
      sizesOf([-3, -2, -2.5], 4, 1.6).map((size, index) => ({
        ...size,
        terms: size.terms.map((term) => ({ ...term, name: term.name.replace(`${index}`, `shaft ${index}`) })),
      })),
      'least',
    );
    const shared = (x: Uncertain) => x.terms.find(({ name }) => name === 'calibration')?.share;
    expect(shared(bore)).toBeCloseTo(4, 9);
    expect(shared(shaft)).toBeCloseTo(4, 9);
  });
});

describe('the chance that all sizes conform', () => {
  it.each(schemes)('of %s is that of the drawn ones', (_, values) => {
    for (const shared of [0, 1, 4]) {
      const truth = drawn(values, shared, 1.6, largest);
      for (const room of [0.5, 2, 4, 8]) {
        const limit = largest(values) + room;
        const got = jointConformance(sizesOf(values, shared, 1.6), { greatest: limit });
        expect(Math.abs(got - shareAtMost(truth, limit))).toBeLessThan(0.006);
      }
    }
  });
});

const groupsOf = <T>(sizes: readonly T[], width: number): readonly (readonly T[])[] =>
  Array.from({ length: sizes.length / width }, (_, group) => sizes.slice(group * width, (group + 1) * width));

const widest = (width: number) => (sizes: readonly number[]) =>
  Math.max(...groupsOf(sizes, width).map((group) => Math.max(...group) - Math.min(...group)));

const forms: readonly (readonly [string, number, readonly number[]])[] = [
  ['ovality of a round journal, two planes × two axes', 2, [0, 0, 0, 0]],
  ['ovality of a worn bore, three planes × two axes', 2, [6, 0, 3, 0, 1, 0]],
  ['ovality along four axes', 4, [0, 2, 1, 0, 0, 1, 3, 2]],
  ['taper of a straight bore, three planes', 3, [0, 0, 0, 0, 0, 0]],
  ['taper of a worn bore, three planes', 3, [8, 3, 0, 7, 4, 1]],
];

describe('the greatest range of several groups', () => {
  it.each(forms)('%s: misses its value by as much as is said', (_, width, values) => {
    const got = greatestRange(groupsOf(sizesOf(values, 4, 1.6), width), 'widest');
    const truth = drawn(values, 4, 1.6, widest(width));
    expect(got.value).toBe(widest(width)(values));
    expect(Math.abs(standardUncertainty(got) / meanSquareFrom(truth, got.value) - 1)).toBeLessThan(0.06);
  });

  it.each(forms)('%s: is in limits as often as is said', (_, width, values) => {
    const truth = drawn(values, 4, 1.6, widest(width));
    const groups = groupsOf(sizesOf(values, 4, 1.6), width);
    for (const room of [0.5, 2, 4, 7]) {
      const limit = widest(width)(values) + room;
      expect(Math.abs(formAtMost(groups, limit) - shareAtMost(truth, limit))).toBeLessThan(0.006);
    }
  });
});
