/** @module Shim packs asked for by name: lists read, results by pump, nonsense turned away. */
import { describe, expect, it } from 'vitest';
import { reckonByName } from './list.ts';

const sound = {
  needed: '0.30mm, 0.45mm',
  box: '0.10mm*3, 0.25 mm * 2',
  most: '2',
  rate: '2.6deg/mm',
  adding: 'retards',
};

const refusalOf = (change: Readonly<Record<string, string>>) => {
  const outcome = reckonByName('shim-pack', { ...sound, ...change });
  if (outcome.kind !== 'refused') throw new Error('not refused');
  return outcome.refusal;
};

describe('shim packs by name', () => {
  it('give each pump its shims and its error in millimetres and degrees', () => {
    const outcome = reckonByName('shim-pack', sound);
    if (outcome.kind === 'refused') throw new Error(outcome.refusal.what);
    // source: by hand. Both 0.25 under pump.2 leave pump.1 0.10 short too, at a spread of 0.15;
    // 0.25 under pump.1 and 0.25 + 0.10 under pump.2 are 0.05 and 0.10 short, a spread of 0.05.
    expect(outcome.value.results).toMatchObject({
      'greatest-error': { value: 0.1, unit: 'mm' },
      'greatest-timing-error': { value: 0.26, unit: 'deg' },
      'pump.2.shims': { value: '0.25 + 0.1', unit: 'mm' },
      'pump.2.error': { value: -0.1, unit: 'mm' },
      'pump.2.timing-error': { value: 0.26, unit: 'deg' },
    });
  });

  it('take one shim where no count is given, and units of any length', () => {
    const outcome = reckonByName('shim-pack', { ...sound, needed: '10 thou', box: '10thou' });
    if (outcome.kind === 'refused') throw new Error(outcome.refusal.what);
    expect(outcome.value.results['pump.1.error']?.value).toBe(0);
    expect(outcome.value.results['shims-used']?.value).toBe(1);
  });

  it.each([
    ['a length without a unit', { needed: '0.30' }, 'needed, 0.30'],
    ['a comma in a figure', { box: '0,10mm*3' }, 'box, 0'],
    ['an empty entry', { box: '0.10mm*3,,0.2mm' }, 'box'],
    ['a count in words', { box: '0.10mm*three' }, 'box, 0.10mm*three'],
    ['two counts', { box: '0.10mm*3*3' }, 'box, 0.10mm*3*3'],
    ['a sign that is not known', { adding: 'maybe' }, 'adding=maybe'],
    ['half a shim in a pack', { most: '2.5' }, 'shims in a pack'],
    ['a pack below nothing', { needed: '-0.1mm' }, 'pump.1'],
    ['a list without end', { needed: Array.from({ length: 401 }, () => '1mm').join() }, 'needed'],
  ])('are refused for %s, with where and what to do', (_, change, where) => {
    const refusal = refusalOf(change);
    expect(refusal.where).toBe(where);
    expect(refusal.remedy).not.toBe('');
  });
});
