/** @module What may be written in the register, and how instruments stand by it. */
import { describe, expect, it } from 'vitest';
import { mic, Shop } from '../../test/register/shop.ts';
import { inUse } from './register.ts';

const mm = (text: string) => ({ text, unit: 'mm' });

describe('an instrument in the register', () => {
  it('stands as it was entered, then as it was last checked', () => {
    const shop = new Shop();
    expect(shop.instrument()).toEqual(mic);
    shop.check('2026-03-02', { showed: mm('0.002') });
    expect(shop.instrument()).toEqual({
      ...mic,
      zero: mm('0.002'),
      checked: { on: '2026-03-02', against: 'zero', good: true },
    });
  });

  it('is off by what it showed less the size it was held against, to the digits read', () => {
    const shop = new Shop();
    shop.check('2026-03-02', { against: 'bar-50', size: mm('50.000'), showed: mm('49.998') });
    expect(shop.instrument().zero).toEqual(mm('-0.002'));
    // source: the definition of the inch, 25.4 mm; 1.9686 in is 50.00244 mm
    shop.check('2026-03-03', {
      against: 'bar-50',
      size: mm('50.000'),
      showed: { text: '1.9686', unit: 'in' },
    });
    expect(Number(shop.instrument().zero?.text)).toBeCloseTo(0.00244, 9);
    expect(shop.instrument().zero?.unit).toBe('mm');
  });

  it('cannot be called good where it showed more than it is allowed, and can be called bad for another reason', () => {
    const shop = new Shop();
    expect(shop.refused('2026-03-02', { ...shop.checking, showed: mm('0.005'), good: true })).toMatch(
      /0\.005 mm off and is allowed ± 0\.004 mm/,
    );
    shop.check('2026-03-02', { showed: mm('0.004') });
    shop.check('2026-03-03', { showed: mm('0.000'), good: false, note: 'anvil chipped' });
    expect(shop.instrument().checked?.good).toBe(false);
  });

  it('has its certificate and correction from its calibration, and no old zero where something was set right', () => {
    const shop = new Shop();
    shop.check('2026-03-02', { showed: mm('0.002') });
    shop.calibrate('2026-03-10', { on: '2026-03-09', due: '2027-03-08', correction: mm('0.001') });
    expect(shop.instrument()).toMatchObject({
      zero: mm('0.002'),
      correction: mm('0.001'),
      calibration: { certificate: 'K-1', on: '2026-03-09', due: '2027-03-08' },
      checked: { on: '2026-03-09', against: 'calibration K-1', good: true },
    });
    shop.calibrate('2027-03-10', { on: '2027-03-09', due: '2028-03-08', foundGood: false });
    expect(shop.instrument().zero).toBeUndefined();
    expect(shop.instrument().correction).toBeUndefined();
  });

  it('keeps what was found of it when its figures are entered anew', () => {
    const shop = new Shop();
    shop.check('2026-03-02', { showed: mm('0.002') });
    shop.calibrate('2026-03-10', { on: '2026-03-09', due: '2027-03-08' });
    const before = shop.instrument();
    shop.done('2026-03-11', { kind: 'enter instrument', instrument: { ...mic, resolution: mm('0.01') } });
    expect(shop.instrument()).toEqual({ ...before, resolution: mm('0.01') });
  });

  it('is not offered once withdrawn, and is again when put back', () => {
    const shop = new Shop();
    shop.done('2026-03-02', { kind: 'withdraw instrument', name: mic.name, why: 'dropped' });
    expect(inUse(shop.register)).toEqual([]);
    expect(shop.refused('2026-03-02', { kind: 'withdraw instrument', name: mic.name, why: 'x' })).toMatch(
      /withdrawn already/,
    );
    shop.done('2026-03-03', { kind: 'put instrument back', name: mic.name, why: 'calibrated' });
    expect(inUse(shop.register)).toEqual([mic]);
    expect(shop.refused('2026-03-03', { kind: 'put instrument back', name: mic.name, why: 'x' })).toMatch(
      /in use/,
    );
  });

  it('stands as before a check that was struck out', () => {
    const shop = new Shop();
    shop.check('2026-03-02', { showed: mm('0.001') });
    const before = shop.instrument();
    const wrong = shop.check('2026-03-03', { showed: mm('0.010'), good: false });
    shop.done('2026-03-03', {
      kind: 'strike out entry',
      entry: wrong.id,
      why: 'another micrometer was meant',
    });
    expect(shop.instrument()).toEqual(before);
    expect(shop.refused('2026-03-03', { kind: 'strike out entry', entry: wrong.id, why: 'x' })).toMatch(
      /already/,
    );
    const entered = shop.events[0]?.id ?? '';
    expect(shop.refused('2026-03-03', { kind: 'strike out entry', entry: entered, why: 'x' })).toMatch(
      /only checks and calibrations/,
    );
  });

  it.each([
    [
      'an instrument nobody entered',
      { kind: 'withdraw instrument', name: 'mic-0-25', why: 'x' },
      /no instrument/,
    ],
    [
      'a certificate of a day to come',
      {
        kind: 'calibrate instrument',
        name: mic.name,
        certificate: 'K',
        on: '2026-03-03',
        due: '2027-03-03',
        foundGood: true,
        note: '',
      },
      /still to come/,
    ],
    [
      'one that is due before it was calibrated',
      {
        kind: 'calibrate instrument',
        name: mic.name,
        certificate: 'K',
        on: '2026-03-01',
        due: '2026-02-28',
        foundGood: true,
        note: '',
      },
      /due before/,
    ],
    [
      'a check in the wrong dimension',
      {
        kind: 'check instrument',
        name: mic.name,
        against: 'zero',
        showed: { text: '1', unit: 'N·m' },
        good: true,
        note: '',
      },
      /torque|length/,
    ],
    [
      'entry to strike out that is not there',
      { kind: 'strike out entry', entry: 'none', why: 'x' },
      /no entry none/,
    ],
    [
      'a withdrawal without a reason',
      { kind: 'withdraw instrument', name: mic.name, why: ' ' },
      /nothing is written/,
    ],
  ] as const)('takes no %s', (_, request, says) => {
    expect(new Shop().refused('2026-03-02', request)).toMatch(says);
  });

  it('may be a wrench that measures torques, or a ring of one size', () => {
    const shop = new Shop();
    const torque = (text: string) => ({ text, unit: 'N·m' });
    const wrench = {
      ...mic,
      name: 'wrench',
      kind: 'torque wrench',
      range: { least: torque('40'), greatest: torque('200') },
      resolution: torque('1'),
      permissibleError: torque('8'),
      repeatability: torque('2'),
    };
    const { turn: _, ...noTurn } = wrench;
    shop.done('2026-03-02', { kind: 'enter instrument', instrument: noTurn });
    expect(
      shop.refused('2026-03-02', {
        kind: 'enter instrument',
        instrument: { ...noTurn, resolution: mm('1') },
      }),
    ).toMatch(/resolution/);
    const ring = {
      ...mic,
      name: 'ring',
      kind: 'setting ring',
      range: { least: mm('80'), greatest: mm('80') },
      resolution: mm('0'),
    };
    shop.done('2026-03-02', { kind: 'enter instrument', instrument: ring });
    expect(
      shop.refused('2026-03-02', { kind: 'enter instrument', instrument: { ...ring, kind: 'caliper' } }),
    ).toMatch(/ends before it begins/);
  });
});
