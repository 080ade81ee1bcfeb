/** @module Checks of the way from a reading to a size. */
import { describe, expect, it } from 'vitest';
import { micrometer, reading, typed } from '../../test/engines/small-engine.ts';
import { minus, standardUncertainty } from '../quantity/uncertain.ts';
import type { Reading } from './reading.ts';
import { sizeOf } from './size.ts';

const front = 'main.1 main-journal-diameter front vertical';
const rear = 'main.1 main-journal-diameter rear vertical';

const size = (taken: Reading, instrument = micrometer) => {
  const read = sizeOf(taken, instrument);
  if (read.kind === 'refused') throw new Error(read.refusal.what);
  return read.value;
};

const shareOf = (taken: Reading, name: string, instrument = micrometer) =>
  size(taken, instrument).terms.find((term) => term.name === name)?.share;

describe('size of a reading', () => {
  it('takes off what the instrument showed on its zero', () => {
    // source: a micrometer with zero error +0.04 that shows 5.72 has read 5.68 (workshop practice, seen in public pages)
    const off = { ...micrometer, zero: typed('+0.04') };
    expect(size(reading(front, typed('5.72')), off).value).toBeCloseTo(5.68, 12);
    const short = { ...micrometer, zero: typed('-0.002') };
    expect(size(reading(front, typed('54.980')), short).value).toBeCloseTo(54.982, 12);
  });

  it('reads inches', () => {
    // source: 1 in = 25.4 mm exactly (international yard, 1959)
    expect(size(reading(front, typed('2.1646', 'in'))).value).toBeCloseTo(54.98084, 9);
  });

  it('names each influence with its standard uncertainty', () => {
    // source: JCGM 100:2008, 4.3.7 and F.2.2.1: half-width over the root of three
    const taken = reading(front, typed('54.980'));
    expect(shareOf(taken, 'calibration of mic-50-75')).toBeCloseTo(0.005 / Math.sqrt(3), 12);
    expect(shareOf(taken, `resolution r:${front}`)).toBeCloseTo(0.0005 / Math.sqrt(3), 12);
    expect(shareOf(taken, `repeat r:${front}`)).toBe(0.0015);
    expect(shareOf(taken, 'zero of mic-50-75')).toBeCloseTo(Math.hypot(0.0015, 0.0005 / Math.sqrt(3)), 12);
    // 1 °C on 100 mm of steel is 1.15 µm
    expect(shareOf(taken, 'temperature of main.1 main-journal-diameter')).toBeCloseTo(
      (54.98e-5 * 1.15) / Math.sqrt(3),
      8,
    );
  });

  it('believes a coarse figure no further than its last digit', () => {
    expect(shareOf(reading(front, typed('54.98')), `resolution r:${front}`)).toBeCloseTo(
      0.005 / Math.sqrt(3),
      12,
    );
    // A finer figure than the scale gives was guessed between its lines.
    expect(shareOf(reading(front, typed('54.98025')), `resolution r:${front}`)).toBeCloseTo(
      0.0005 / Math.sqrt(3),
      12,
    );
  });

  it('knows less of an instrument whose zero was never checked', () => {
    const { zero: _unchecked, ...never } = micrometer;
    const taken = reading(front, typed('54.980'));
    expect(size(taken, never).value).toBe(54.98);
    expect(standardUncertainty(size(taken, never))).toBeGreaterThan(standardUncertainty(size(taken)));
  });

  it('knows less of a part away from 20 °C, and does not move it', () => {
    const warm = { ...reading(front, typed('54.980')), temperature: typed('30', '°C') };
    expect(size(warm).value).toBe(54.98);
    expect(Math.abs(shareOf(warm, 'expansion of main.1 main-journal-diameter') ?? 0)).toBeCloseTo(
      (12e-6 * 54.98 * 10) / Math.sqrt(3),
      12,
    );
    const cool = { ...reading(front, typed('54.980')), temperature: typed('68', '°F') };
    expect(Math.abs(shareOf(cool, 'expansion of main.1 main-journal-diameter') ?? 0)).toBeLessThan(1e-12);
  });

  it('loses what two readings of one part with one instrument share', () => {
    const difference = minus(size(reading(front, typed('54.980'))), size(reading(rear, typed('54.980'))));
    expect(difference.terms.map(({ name }) => name)).toEqual([
      `repeat r:${front}`,
      `repeat r:${rear}`,
      `resolution r:${front}`,
      `resolution r:${rear}`,
    ]);
  });

  it('has its influences in order of name, as sums of values rely on', () => {
    const warm = { ...reading(front, typed('54.980')), temperature: typed('30', '°C') };
    const names = size(warm).terms.map(({ name }) => name);
    expect(names).toEqual([...names].sort());
    expect(names).toHaveLength(6);
  });

  it.each([
    ['a figure that is no number', reading(front, typed('5 4.98')), micrometer],
    ['a figure that is no length', reading(front, typed('54.98', 'bar')), micrometer],
    [
      'a temperature that is none',
      { ...reading(front, typed('54.98')), temperature: typed('warm', '°C') },
      micrometer,
    ],
    ['a zero that is no length', reading(front, typed('54.98')), { ...micrometer, zero: typed('0', 'bar') }],
    [
      'a resolution that is no length',
      reading(front, typed('54.98')),
      { ...micrometer, resolution: typed('fine') },
    ],
  ])('refuses %s', (_what, taken, instrument) => {
    expect(sizeOf(taken, instrument).kind).toBe('refused');
  });
});
