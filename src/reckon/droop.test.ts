/** @module Droop against a published example, and the speed to set for the droop wanted. */
import { describe, expect, it } from 'vitest';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { speedDroop } from './droop.ts';
import { reckonByName } from './list.ts';

const ask = (texts: Readonly<Record<string, string>>) =>
  reckonByName('droop', { 'no-load': '1575rpm', 'full-load': '1500rpm', ...texts });

describe('droop', () => {
  it('comes to what is published', () => {
    // source: ISO 8528-5 formula with 1575 and 1500 rev/min: 5 %
    outsideCheck(
      'droop',
      'ISO 8528-5, 1575 without and 1500 rev/min at full load: 5 %',
      '%',
      1e-9,
    )(Number(known(ask({})).results.droop?.value), 5);
    // source: common rule of 50 Hz sets: 52 Hz without load is 4 %; 60 Hz sets: 61.8 Hz is 3 %
    const sets = outsideCheck(
      'droop',
      'generating sets: 52 to 50 Hz is 4 %, 61.8 to 60 Hz is 3 %, from memory',
      '%',
      1e-9,
    );
    sets(Number(known(ask({ 'no-load': '52Hz', 'full-load': '50Hz' })).results.droop?.value), 4);
    sets(100 * speedDroop(61.8, 60), 3);
  });

  it('gives the speed without load at which the wanted droop would be had', () => {
    const { results } = known(ask({ wanted: '4%' }));
    expect(results['no-load-for-wanted']).toEqual({ value: 1560, unit: 'rpm' });
    const again = known(ask({ 'no-load': '1560rpm' })).results.droop?.value;
    expect(again).toBeCloseTo(4, 9);
  });

  it('carries how well the speeds are known', () => {
    // u² = (u(n)/f)² + (n u(f)/f²)²
    const u = known(ask({ 'no-load': '1575±2rpm', 'full-load': '1500±2rpm' })).results.droop?.u;
    expect(u).toBeCloseTo((100 * (2 / 1.959964) * Math.hypot(1, 1.05)) / 1500, 6);
  });

  it.each([
    [{ 'no-load': '1450rpm' }, 'no-load, full-load'],
    [{ 'no-load': '2400rpm' }, 'no-load, full-load'],
    [{ 'full-load': '0rpm' }, 'full-load'],
    [{ wanted: '40%' }, 'wanted'],
    [{ 'no-load': '1575N·m' }, 'no-load=1575N·m'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});
