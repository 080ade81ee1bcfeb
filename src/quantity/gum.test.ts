/** @module The examples of JCGM 100:2008 come out as printed. */
import { describe, expect, it } from 'vitest';
import { coverageFactor } from './coverage.ts';
import {
  certain,
  combine,
  correlation,
  effectiveFreedom,
  expanded,
  plus,
  propagate,
  standardUncertainty,
  type Uncertain,
  uncertain,
} from './uncertain.ts';

const carried = (f: (values: readonly number[]) => number, ...inputs: readonly Uncertain[]): Uncertain => {
  const through = propagate(f, inputs);
  if (through.kind === 'refused') throw new Error(through.refusal.what);
  return through.value;
};

const mean = (readings: readonly number[]): number =>
  readings.reduce((sum, reading) => sum + reading, 0) / readings.length;

/** The mean of repeats, each repeat an influence by its name: repeats taken together share their names. */
const meanOf = (readings: readonly number[], set: string): Uncertain => {
  const middle = mean(readings);
  const n = readings.length;
  return readings.reduce<Uncertain>(
    (sum, reading, index) =>
      plus(sum, uncertain(0, `${set} ${index}`, (reading - middle) / Math.sqrt(n * (n - 1)), n - 1)),
    certain(middle),
  );
};

describe('an end gauge compared with a standard', () => {
  // source: JCGM 100:2008, H.1, Table H.1; lengths in nm, temperatures in °C; 31.66 nm and 1002.3 nm²
  // recomputed from the unrounded inputs (printed 32 and 1002)
  const standard = uncertain(50_000_623, 'standard', 75 / 3, 18);
  const difference = combine(
    [
      [1, uncertain(0, 'repeat', 13 / Math.sqrt(5), 24)],
      [1, uncertain(0, 'comparator, random', 10 / 2.57, 5)],
      [1, uncertain(0, 'comparator, systematic', 20 / 3, 8)],
    ],
    215,
  );
  const expansion = uncertain(11.5e-6, 'expansion', 2e-6 / Math.sqrt(3));
  const offTwenty = uncertain(-0.1, 'bench temperature', 0.41);
  const expansionApart = uncertain(0, 'expansion apart', 1e-6 / Math.sqrt(3), 50);
  const temperatureApart = uncertain(0, 'temperature apart', 0.05 / Math.sqrt(3), 2);
  const length = carried(
    ([l = 0, d = 0, alpha = 0, theta = 0, dAlpha = 0, dTheta = 0]) =>
      l + d - l * (dAlpha * theta + alpha * dTheta),
    standard,
    difference,
    expansion,
    offTwenty,
    expansionApart,
    temperatureApart,
  );

  it('is 50.000 838 mm long', () => {
    expect((length.value / 1e6).toFixed(6)).toBe('50.000838');
  });

  it('has its parts known as the table says', () => {
    const share = (name: string): number =>
      Math.abs(length.terms.find((term) => term.name === name)?.share ?? 0);
    expect(standardUncertainty(difference).toFixed(1)).toBe('9.7');
    expect(effectiveFreedom(difference)).toBeCloseTo(25.6, 0);
    expect(share('expansion apart').toFixed(1)).toBe('2.9');
    expect(share('temperature apart').toFixed(1)).toBe('16.6');
    expect(share('expansion') + share('bench temperature')).toBeLessThan(1e-3);
  });

  it('is known to 31.66 nm with 16.7 degrees of freedom', () => {
    expect(standardUncertainty(length)).toBeCloseTo(31.66, 2);
    expect(standardUncertainty(length) ** 2).toBeCloseTo(1002.3, 0);
    expect(effectiveFreedom(length).toFixed(1)).toBe('16.7');
  });

  it('is known to the printed 93 nm at 99 % and 68 nm at 95 % where uc is rounded to 32 nm as printed', () => {
    const freedom = effectiveFreedom(length);
    expect(Math.round(coverageFactor(0.99, freedom) * 32)).toBe(93);
    expect(Math.round(coverageFactor(0.95, freedom) * 32)).toBe(68);
    // recomputed with nothing rounded: 2.9208 × 31.66 and 2.1199 × 31.66
    expect(expanded(length, 0.99).toFixed(1)).toBe('92.5');
    expect(expanded(length, 0.95).toFixed(1)).toBe('67.1');
  });
});

describe('resistance and reactance measured together', () => {
  // source: JCGM 100:2008, H.2, Tables H.2 to H.4
  const voltage = [5.007, 4.994, 5.005, 4.99, 4.999];
  const current = [19.663, 19.639, 19.64, 19.685, 19.678].map((milliamps) => milliamps / 1000);
  const phase = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];
  const results = (sets: readonly [string, string, string]): readonly Uncertain[] => {
    const inputs = [voltage, current, phase].map((readings, index) => meanOf(readings, sets[index] ?? ''));
    return [
      carried(([v = 0, i = 0, p = 0]) => (v * Math.cos(p)) / i, ...inputs),
      carried(([v = 0, i = 0, p = 0]) => (v * Math.sin(p)) / i, ...inputs),
      carried(([v = 0, i = 0]) => v / i, ...inputs),
    ];
  };
  const means = [voltage, current, phase].map((readings) => meanOf(readings, 'set'));
  const [v, i, p] = means as [Uncertain, Uncertain, Uncertain];
  const [r, x, z] = results(['set', 'set', 'set']) as [Uncertain, Uncertain, Uncertain];

  it('has the printed means, uncertainties and correlations', () => {
    expect(means.map(({ value }) => value)).toEqual([
      expect.closeTo(4.999, 9),
      expect.closeTo(0.019661, 9),
      expect.closeTo(1.04446, 9),
    ]);
    expect(means.map(standardUncertainty)).toEqual([
      expect.closeTo(0.0032, 4),
      expect.closeTo(0.0000095, 7),
      expect.closeTo(0.00075, 5),
    ]);
    expect([correlation(v, i), correlation(v, p), correlation(i, p)].map((c) => c.toFixed(3))).toEqual([
      '-0.355',
      '0.858',
      '-0.645',
    ]);
  });

  it('gives the printed results', () => {
    expect([r.value, x.value, z.value]).toEqual([
      expect.closeTo(127.732, 3),
      expect.closeTo(219.847, 2),
      expect.closeTo(254.26, 3),
    ]);
    expect(standardUncertainty(r)).toBeCloseTo(0.071, 3);
    // printed 0.295, which is of the mean of the sets; first order at the means gives 0.2956
    expect(Math.abs(standardUncertainty(x) - 0.295)).toBeLessThan(0.001);
    expect(standardUncertainty(z)).toBeCloseTo(0.236, 3);
    expect([correlation(r, x), correlation(r, z), correlation(x, z)]).toEqual([
      expect.closeTo(-0.588, 3),
      expect.closeTo(-0.485, 3),
      expect.closeTo(0.993, 2),
    ]);
  });

  it('would come out otherwise with the correlation left out', () => {
    // recomputed, not printed
    const apart = results(['v', 'i', 'p']);
    expect(apart.map((each) => standardUncertainty(each).toFixed(3))).toEqual(['0.195', '0.201', '0.204']);
  });
});

describe('a mean of twenty temperatures', () => {
  // source: JCGM 100:2008, 4.4.3, Table 1
  const readings = [
    96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95,
    101.11, 101.2, 101.57, 101.84, 102.36, 102.72,
  ];

  it('is known to 0.333 °C', () => {
    const middle = meanOf(readings, 'reading');
    expect(middle.value.toFixed(3)).toBe('100.145');
    expect(standardUncertainty(middle).toFixed(3)).toBe('0.333');
    expect((standardUncertainty(middle) * Math.sqrt(20)).toFixed(3)).toBe('1.489');
  });

  it('is known as well from twenty readings that each have the spread', () => {
    const each = readings.map((reading, index) => uncertain(reading, `reading ${index}`, 1.489, 19));
    const middle = combine(each.map((reading) => [1 / 20, reading] as const));
    expect(standardUncertainty(middle).toFixed(3)).toBe('0.333');
  });
});

describe('three independent parts with 10, 5 and 15 repeats', () => {
  // source: JCGM 100:2008, G.4.1: 1.03 %, 19.0 degrees of freedom, t95 2.09, 2.2 %
  const product = combine([
    [1, uncertain(0, 'x1', 0.25, 9)],
    [1, uncertain(0, 'x2', 0.57, 4)],
    [1, uncertain(0, 'x3', 0.82, 14)],
  ]);

  it('have the printed uncertainty', () => {
    expect(standardUncertainty(product).toFixed(2)).toBe('1.03');
    expect(effectiveFreedom(product).toFixed(1)).toBe('19.0');
    expect(expanded(product, 0.95).toFixed(1)).toBe('2.2');
    expect(coverageFactor(0.95, 19).toFixed(2)).toBe('2.09');
  });
});
