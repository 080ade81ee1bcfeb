/** @module Valves by position of the crank against what fitters know of four cylinders, and cams of known shape. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { lobeOf } from './cam-lift.ts';
import { reckonByName } from './list.ts';
import { fewestPositions, settingPositions } from './valve-clearance-order.ts';

const timing = {
  inletOpensBeforeTop: 10,
  inletClosesAfterBottom: 45,
  exhaustOpensBeforeBottom: 45,
  exhaustClosesAfterTop: 10,
};

describe('the order of setting valves', () => {
  it('of four cylinders is the two positions that fitters use', () => {
    // common practice, no source: fired 1-3-4-2, cylinder 1 at its firing top: both of 1, inlet of 2, exhaust of 3; then
    // cylinder 4: the rest
    const positions = fewestPositions(settingPositions([1, 3, 4, 2], timing, 20)) ?? [];
    expect(positions.map(({ cylinder }) => cylinder)).toEqual([1, 4]);
    expect(positions[0]?.valves).toEqual(['1 inlet', '1 exhaust', '2 inlet', '3 exhaust']);
    expect(positions[1]?.valves).toEqual(['2 exhaust', '3 inlet', '4 inlet', '4 exhaust']);
    outsideCheck(
      'valve-clearance-order',
      'common practice, no source; four cylinders in two positions',
      'positions',
      0,
    )(positions.length, 2);
  });

  it('sets every valve once, in no more positions than cylinders', () => {
    const orders = fc.integer({ min: 1, max: 10 }).chain((count) =>
      fc.shuffledSubarray(
        Array.from({ length: count }, (_, at) => at + 1),
        { minLength: count, maxLength: count },
      ),
    );
    fc.assert(
      fc.property(orders, fc.integer({ min: 0, max: 30 }), (order, margin) => {
        const positions = fewestPositions(settingPositions(order, timing, margin)) ?? [];
        const set = positions.flatMap(({ valves }) => valves);
        expect(new Set(set).size).toBe(2 * order.length);
        expect(set).toHaveLength(2 * order.length);
        expect(positions.length).toBeLessThanOrEqual(order.length);
      }),
      { numRuns: 60 },
    );
  });

  it('never sets a valve of a cylinder whose valves rock', () => {
    for (const { cylinder, valves } of settingPositions([1, 5, 3, 6, 2, 4], timing, 10)) {
      const twin = { 1: 6, 6: 1, 5: 2, 2: 5, 3: 4, 4: 3 }[cylinder];
      expect(valves.some((valve) => valve.startsWith(`${twin} `))).toBe(false);
      expect(valves).toContain(`${cylinder} inlet`);
    }
  });

  it.each([
    [{ 'firing-order': '1-3-3' }, 'firing-order'],
    [{ 'inlet-closes': '300deg' }, 'inlet-closes'],
    [{ margin: '5mm' }, 'margin=5mm'],
  ])('refuses %o', (texts, where) => {
    const asked = reckonByName('valve-clearance-order', { 'firing-order': '1-3-4-2', ...texts });
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});

describe('a lobe from its lifts', () => {
  it('of a cosine has its middle, its width and its height', () => {
    // exact: lift 4 (1 − cos) from 300 to 460 degrees: top 8 mm at 380, 1 mm at ± acos(0.75) of the 160 degrees round
    const lifts = Array.from({ length: 321 }, (_, at) => 4 * (1 - Math.cos((2 * Math.PI * at) / 320)));
    const lobe = lobeOf(lifts, 300, 0.5, 1);
    const flank = (Math.acos(0.75) / (2 * Math.PI)) * 160;
    const exact = (what: string) =>
      outsideCheck('cam-lift', `a lobe of cosine form, exact: ${what}`, 'deg', 0.01);
    exact('middle')(lobe?.middle ?? Number.NaN, 380);
    exact('duration')(lobe?.duration ?? Number.NaN, 160 - 2 * flank);
    expect(lobe?.greatest).toBeCloseTo(8, 9);
  });

  it('that is worn is told against the highest', () => {
    const { results } = known(
      reckonByName('cam-lift', { lifts: '0, 2, 5, 2, 0; 0, 2, 4.7, 2, 0 mm', from: '0deg', step: '30deg' }),
    );
    expect(results['lobe.2.below-the-highest']?.value).toBeCloseTo(0.3, 9);
    expect(results['lobe.1.middle']?.value).toBe(60);
  });

  it('that is worn on one flank is told by its angles, whether against its neighbour or as made', () => {
    const whole = '0, 1, 3, 6, 7, 6, 3, 1, 0';
    const given = { from: '0deg', step: '10deg', dial: '0.02 mm', 'angle-reading': '0.1 deg' };
    const beside = known(
      reckonByName('cam-lift', { ...given, lifts: `${whole}; 0, 1, 3, 6, 7, 6, 2.8, 0.9, 0 mm` }),
    );
    expect(beside.results).toMatchObject({
      whole: { value: 'lobe 1' },
      'lobe.2.behind': { value: '60 to 70 deg' },
      'lobe.2.opens-later': { value: 0, unit: 'deg' },
      'lobe.2.below-the-highest': { value: 0 },
    });
    // by hand: 1 mm is passed at 70 deg, and 10 × 1.8 / 1.9 behind 60 deg on the worn flank
    expect(beside.results['lobe.2.closes-earlier']?.value).toBeCloseTo(70 - 60 - 18 / 1.9, 3);
    const alone = known(
      reckonByName('cam-lift', {
        ...given,
        lifts: '0, 1, 3, 6, 6.8, 6, 3, 1, 0 mm',
        'as-made': `${whole} mm`,
      }),
    );
    expect(alone.results).toMatchObject({
      whole: { value: 'as made' },
      'lobe.1.behind': { value: 'at 40 deg' },
      'lobe.1.surest-fall': { value: 0.2, unit: 'mm' },
    });
    const same = known(reckonByName('cam-lift', { ...given, lifts: `${whole}; ${whole} mm` }));
    expect(same.results['lobe.2.behind']?.value).toBe('nowhere');
  });

  it.each([
    [{ lifts: '0, 0.2, 0 mm' }, 'lifts, at-lift'],
    [{ step: '0deg' }, 'step'],
    [{ 'at-lift': '0mm' }, 'at-lift'],
    [{ lifts: '0, x, 0 mm' }, 'lifts, x'],
    [{ dial: '0.02 mm' }, 'dial, angle-reading'],
    [{ 'as-made': '0, 2, 5, 2, 0 mm' }, 'dial, angle-reading'],
    [{ dial: '0.02 mm', 'angle-reading': '0.3 deg', 'as-made': '0, 2, 5, 0 mm' }, 'lifts, as-made'],
    [
      { dial: '0.02 mm', 'angle-reading': '0.3 deg', 'as-made': '0, 0.1, 0.2, 0.1, 0 mm' },
      'as-made, at-lift',
    ],
  ])('refuses %o', (texts, where) => {
    const asked = reckonByName('cam-lift', {
      lifts: '0, 2, 5, 2, 0 mm',
      from: '0deg',
      step: '30deg',
      ...texts,
    });
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});
