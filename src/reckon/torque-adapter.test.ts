/** @module Wrench settings against printed examples of adapters. */
import { describe, expect, it } from 'vitest';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { reckonByName } from './list.ts';
import { adapterSetting } from './torque-adapter.ts';

const ask = (texts: Readonly<Record<string, string>>) =>
  reckonByName('torque-adapter', { torque: '100N·m', wrench: '400mm', adapter: '60mm', ...texts });

describe('a wrench with an adapter', () => {
  it('is set as the printed examples say', () => {
    // source: public instructions for in-line adapters: torque 30, lengths 12 and 6: 20; torque 20, 12 and 3: 16
    const printed = outsideCheck(
      'torque-adapter',
      'instructions for in-line adapters, two examples',
      'N·m',
      1e-9,
    );
    printed(adapterSetting(30, 12, 6, 0), 20);
    printed(adapterSetting(20, 12, 3, 0), 16);
    // source: the same: square to the wrench, no change
    outsideCheck(
      'torque-adapter',
      'adapter square to the wrench: no change',
      'N·m',
      1e-9,
    )(adapterSetting(50, 400, 60, Math.PI / 2), 50);
  });

  it('gives the bolt what is wanted: the setting by the longer arm', () => {
    const { setting, 'if-forgotten': forgotten } = known(ask({})).results;
    expect((Number(setting?.value) * 460) / 400).toBeCloseTo(100, 9);
    expect(Number(forgotten?.value)).toBeCloseTo(115, 9);
    expect(known(ask({ wrench: '400±10mm' })).results.setting?.u).toBeGreaterThan(0);
  });

  it.each([
    [{ adapter: '400mm' }, 'wrench, adapter'],
    [{ torque: '-3N·m' }, 'torque'],
    [{ angle: '270deg' }, 'angle'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});
