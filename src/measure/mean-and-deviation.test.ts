/** @module Means and deviations against published figures, among them such as lose their digits in a plain sum. */
import { describe, expect, it } from 'vitest';
import { meanAndDeviation, pooledDeviation } from './mean-and-deviation.ts';

/** How many digits are right, as the certificates of NIST are compared. */
const digits = (got: number, certified: number) => -Math.log10(Math.abs(got - certified) / certified);

const inPairs = (start: number, low: number, high: number) => [
  start,
  ...Array.from({ length: 1000 }, (_, index) => (index % 2 === 0 ? low : high)),
];

describe('mean and standard deviation', () => {
  it.each([
    // source: NIST StRD, univariate, NumAcc1 to NumAcc4: certified mean and standard deviation
    ['NumAcc1', [10000001, 10000003, 10000002], 10000002, 1, 15],
    ['NumAcc2', inPairs(1.2, 1.1, 1.3), 1.2, 0.1, 14],
    // 1000000.1 as a double is off by 3e-11 and 10000000.1 by 4e-10: no sum over doubles can know more of 0.1
    ['NumAcc3', inPairs(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1, 9],
    ['NumAcc4', inPairs(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1, 8],
  ])('of %s have all the digits that doubles can hold', (_, readings, mean, deviation, held) => {
    const got = meanAndDeviation(readings);
    expect(digits(got.mean, mean)).toBeGreaterThan(14);
    expect(digits(got.deviation, deviation)).toBeGreaterThanOrEqual(held);
    expect(got.freedom).toBe(readings.length - 1);
  });

  it('give the temperatures of the guide', () => {
    // source: JCGM 100:2008, 4.4.3, table 1: mean 100.145 °C, s 1.489 °C, s of the mean 0.333 °C
    const temperatures = [
      96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95,
      101.11, 101.2, 101.57, 101.84, 102.36, 102.72,
    ];
    const { mean, deviation, freedom } = meanAndDeviation(temperatures);
    expect(mean).toBeCloseTo(100.145, 3);
    expect(deviation).toBeCloseTo(1.489, 3);
    expect(deviation / Math.sqrt(20)).toBeCloseTo(0.333, 3);
    expect(freedom).toBe(19);
  });

  it('of one reading leave nothing to estimate from, and of none are a mistake', () => {
    expect(meanAndDeviation([5])).toEqual({ mean: 5, deviation: 0, freedom: 0 });
    expect(() => meanAndDeviation([])).toThrow(RangeError);
  });
});

describe('pooled standard deviation', () => {
  it('gives the voltages of the guide, over ten days', () => {
    // source: JCGM 100:2008, H.5.2.3: ten days of five readings, pooled 85 µV with 40 degrees of freedom; of the daily
    // means 57 µV; F = 5 · 57² / 85² = 2.25
    const daily = [60, 77, 111, 101, 67, 93, 80, 73, 88, 86].map((deviation) => ({ deviation, freedom: 4 }));
    const pooled = pooledDeviation(daily);
    expect(pooled.deviation).toBeCloseTo(85, 0);
    expect(pooled.freedom).toBe(40);
    const means = [172, 116, 13, 144, 106, 31, 60, 125, 163, 41].map((microvolts) => 10 + microvolts * 1e-6);
    const ofMeans = meanAndDeviation(means);
    expect(ofMeans.mean).toBeCloseTo(10.000097, 6);
    expect(ofMeans.deviation * 1e6).toBeCloseTo(57, 0);
    expect((5 * (ofMeans.deviation * 1e6) ** 2) / pooled.deviation ** 2).toBeCloseTo(2.25, 1);
  });

  it('gives the gauge study of the handbook, five wafers', () => {
    // source: NIST/SEMATECH e-Handbook 2.4.4.4: sums of squares with 60 degrees of freedom each, pooled s 0.10290
    const wafers = [0.48115, 0.69209, 0.48483, 1.21752, 0.30076].map((squares) => ({
      deviation: Math.sqrt(squares / 60),
      freedom: 60,
    }));
    expect(pooledDeviation(wafers).deviation).toBeCloseTo(0.1029, 4);
    expect(pooledDeviation(wafers).freedom).toBe(300);
  });

  it('of groups of one is nothing', () => {
    expect(pooledDeviation([{ deviation: 0, freedom: 0 }])).toEqual({ deviation: 0, freedom: 0 });
  });
});
