/** @module A size asked for by name, against what the guide and the workshop say of each part of it. */
import { describe, expect, it } from 'vitest';
import { micrometer, reading, typed } from '../../test/engines/small-engine.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { reckonByName } from './list.ts';
import { sizeFromReadings } from './size.ts';

const figures = { 'permissible-error': '0.004mm', resolution: '0.001mm', repeatability: '0.0015mm' };

const ask = (texts: Readonly<Record<string, string>>) => {
  const asked = reckonByName('size', { ...figures, ...texts });
  if (asked.kind === 'refused') throw new Error(`${asked.refusal.what}: ${asked.refusal.remedy}`);
  return asked.value;
};

describe('a size', () => {
  it('has the zero taken off', () => {
    // source: a micrometer with zero error +0.04 that shows 5.72 has read 5.68 (workshop practice, public pages)
    const source = 'a micrometer with zero error +0.04, workshop practice, public pages';
    const got = Number(ask({ readings: '5.72mm', zero: '0.04mm' }).results.size?.value);
    outsideCheck('size', source, 'mm', 1e-9)(got, 5.68);
  });

  it('is the mean of its repeats, known as their spread and the instrument allow', () => {
    const { size } = ask({ readings: '54.980, 54.982, 54.981 mm', zero: '0mm' }).results;
    expect(size?.value).toBe(54.981);
    // source: JCGM 100:2008, 4.2.3, 4.2.4, 4.3.7: s² = (9 · 1.5² + 2 · 1²) / 11 µm² over three, error and half step over
    // the root of three, the zero by one repeat and half a step, 1 °C of steel (11.5e-6) over the root of three
    const repeats = (9 * 0.0015 ** 2 + 2 * 0.001 ** 2) / 11 / 3;
    const step = 0.0005 ** 2 / 3;
    const heat = (54.981 * 11.5e-6) ** 2 / 3;
    const byHand = Math.sqrt(repeats + 0.004 ** 2 / 3 + step + (0.0015 ** 2 + step) + heat);
    outsideCheck(
      'size',
      'JCGM 100:2008, 4.2.3, 4.2.4, 4.3.7, by hand',
      'mm',
      5e-9,
    )(size?.u ?? Number.NaN, byHand);
  });

  it('of warm aluminium by a steel instrument is brought to 20 °C', () => {
    // source: 100 mm of aluminium by 10 °C more than steel: some 10 to 11.5 µm (21.5 to 23e-6 against 11.5e-6)
    const { size } = ask({
      readings: '100.000mm',
      temperature: '30°C',
      material: 'aluminium',
      zero: '0mm',
    }).results;
    const source = 'tables of expansion: 100 mm of aluminium by 10 °C more than steel is 0.010 to 0.0115 mm';
    outsideCheck('size', source, 'mm', 0.0015)(Number(size?.value), 99.99);
  });

  it('is nothing of no readings, and known the better the more there are', () => {
    expect(sizeFromReadings([], micrometer)).toBeUndefined();
    const repeats = (count: number) =>
      Array.from({ length: count }, (_, index) => ({
        ...reading('main.1 main-journal-diameter front vertical', typed('54.980')),
        id: `${index}`,
      }));
    const known = [1, 2, 5, 10].map((count) => {
      const size = sizeFromReadings(repeats(count), micrometer);
      return size ? standardUncertainty(size) : Number.NaN;
    });
    expect(known).toEqual(known.toSorted((a, b) => b - a));
    expect(new Set(known).size).toBe(4);
  });

  it('leaves out what was no repeat, and says so, and that the zero was not checked', () => {
    const { results, notes } = ask({ readings: '55.480, 54.980 mm' });
    expect(results.size?.value).toBe(54.98);
    expect(notes).toEqual([
      'The zero was not checked: the size is known less well for it.',
      '1 of the readings lie too far from the last to be repeats of it, and were left out.',
    ]);
  });

  it.each([
    [{ readings: '54.980; 54.981 mm' }, 'these are readings of several sizes'],
    [{ readings: '54.980, , 54.981 mm' }, 'readings has an empty entry'],
    [{ readings: '54.980' }, 'the unit is missing: a length is asked for'],
    [{ readings: '54.98mm', material: 'cheese' }, 'the expansion of cheese is not known'],
    [{ readings: '54.98mm', temperature: '400°C' }, 'nobody measures at that temperature'],
    [{ readings: '54.98mm', resolution: '-1mm' }, 'a figure less than 0 is out of range'],
  ])('refuses %o', (texts, what) => {
    const asked = reckonByName('size', { ...figures, ...texts });
    expect(asked.kind === 'refused' && asked.refusal.what).toBe(what);
  });
});
