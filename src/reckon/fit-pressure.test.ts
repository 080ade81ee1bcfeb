/** @module Interference fits against worked examples of thick rings, and what must hold of any. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { boreStress, jointPressure } from './fit-pressure.ts';
import { reckonByName } from './list.ts';

const steel = { modulus: 207_000, poisson: 0.3 };

const joint = {
  shaft: '50.050mm',
  bore: '50.000mm',
  outside: '84mm',
  length: '40mm',
  friction: '0.12',
};
const ask = (texts: Readonly<Record<string, string>>) => reckonByName('fit-pressure', { ...joint, ...texts });
const number = (texts: Readonly<Record<string, string>>, key: string) =>
  Number(known(ask(texts)).results[key]?.value);

describe('an interference fit', () => {
  it('presses as the compound tubes of a textbook do', () => {
    // source: Bhandari, Design of Machine Elements, Examples 22.6 and 22.7: steel tubes 20/40/60 mm, hoop stress in the
    // jacket 100 MPa, E 207 GPa: 38.46 MPa in the joint, jacket bored 39.968289 mm for a tube of 40 mm
    const rings = { hole: 20, joint: 40, outside: 60 };
    const pressure = jointPressure(40 - 39.968289, rings, steel, steel);
    const bhandari = 'Bhandari, Design of Machine Elements, Examples 22.6 and 22.7';
    outsideCheck('fit-pressure', bhandari, 'MPa', 0.01)(pressure, 38.46);
    outsideCheck('fit-pressure', bhandari, 'MPa', 0.01)(boreStress(pressure, rings), 100);
  });

  it('presses as rings do by the formulas of Lamé worked by hand', () => {
    // recomputed: equal tubes 50/100/150, 0.020 mm, E 208 GPa: 9.75 and 25.35 MPa; solid steel shaft in cast iron, 50/100,
    // 0.05 mm, 207/0.292 and 100/0.211: 45.05 and 75.09 MPa
    const byHand = outsideCheck('fit-pressure', 'Lamé, recomputed by hand, two joints', 'MPa', 0.006);
    const equal = { hole: 50, joint: 100, outside: 150 };
    const tube = { modulus: 208_000, poisson: 0.3 };
    const even = jointPressure(0.02, equal, tube, tube);
    byHand(even, 9.75);
    byHand(boreStress(even, equal), 25.35);
    const solid = { hole: 0, joint: 50, outside: 100 };
    const mixed = jointPressure(
      0.05,
      solid,
      { modulus: 100_000, poisson: 0.211 },
      { modulus: 207_000, poisson: 0.292 },
    );
    byHand(mixed, 45.05);
    byHand(boreStress(mixed, solid), 75.09);
  });

  it('holds by its friction what it presses', () => {
    fc.assert(
      fc.property(between(10, 120), between(0.05, 0.3), (length, friction) => {
        const texts = { length: `${length.toFixed(1)}mm`, friction: friction.toFixed(4) };
        const force = number(texts, 'push-off') * 1000;
        const area = Math.PI * 50.05 * Number(length.toFixed(1));
        expect(force).toBeCloseTo(Number(friction.toFixed(4)) * number(texts, 'pressure') * area, 3);
        expect(number(texts, 'torque')).toBeCloseTo((force * 50.05) / 2000, 6);
      }),
    );
  });

  it('loses to roughness what is flattened, and says when the hub yields', () => {
    // DIN 7190-1: 0.8 of the roughness depth of both surfaces
    const rough = number({ roughness: '0.005mm' }, 'pressure');
    expect(rough / number({}, 'pressure')).toBeCloseTo((0.05 - 0.008) / 0.05, 9);
    expect(known(ask({ 'outer-yield': '150MPa' })).notes[0]).toContain('The hub yields');
    expect(known(ask({ 'outer-yield': '800MPa' })).notes.join()).not.toContain('yields');
  });

  it('is known as its sizes are', () => {
    const { pressure } = known(ask({ shaft: '50.050±0.003mm', bore: '50.000±0.004mm' })).results;
    expect((pressure?.u ?? 0) / Number(pressure?.value)).toBeCloseTo(0.005 / 1.959964 / 0.05, 6);
  });

  it.each([
    [{ shaft: '49.99mm' }, 'shaft, bore'],
    [{ outside: '49mm' }, 'hole, shaft, outside'],
    [{ hole: '-1mm' }, 'hole'],
    [{ friction: '0.9' }, 'friction'],
    [{ length: '0mm' }, 'length'],
    [{ roughness: '1mm' }, 'roughness'],
    [{ hub: 'wood' }, 'hub=wood'],
    [{ 'outer-yield': '400 mm' }, 'outer-yield=400 mm'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});
