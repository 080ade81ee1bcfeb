/** @module Top dead centre by equal drop on cranks made at random, and button and tooth sums against their manuals. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { cranks } from '../../test/cranks.ts';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { mm, radians, toDegrees } from '../quantity/brand.ts';
import { certain } from '../quantity/uncertain.ts';
import { newButton } from './button-swap.ts';
import { wholeTravel } from './crank.ts';
import { crankAngles } from './crank-angle.ts';
import { reckonByName } from './list.ts';
import { toothShift } from './tooth-shift.ts';
import { middleAfterTop } from './top-dead-centre.ts';

const ask = (texts: Readonly<Record<string, string>>) =>
  reckonByName('top-dead-centre', {
    stroke: '98mm',
    rod: '168mm',
    pairs: '3 mm: 341.0 18.2; 5 mm: 335.4 23.9; 8 mm: 328.8 30.4',
    ...texts,
  });

describe('top dead centre', () => {
  it('lies midway between equal drops, but for a pin that stands off, by what the crank’s triangle says', () => {
    fc.assert(
      fc.property(cranks, between(0.02, 0.3), (crank, part) => {
        const drop = part * wholeTravel(crank);
        const { before, after } = known(crankAngles(crank, mm(drop)));
        const middle = known(middleAfterTop(crank, drop));
        expect(middle).toBeCloseTo((toDegrees(before) + toDegrees(after)) / 2, 9);
        expect(known(middleAfterTop({ ...crank, pinOffset: mm(0) }, drop))).toBeCloseTo(0, 9);
      }),
    );
  });

  it('is found on the protractor where a crank was turned to it', () => {
    // A crank with its top at 5.3 degrees of the protractor, read to a hundredth of a degree.
    const crank = { stroke: mm(98), rod: mm(168), pinOffset: mm(0.8) };
    const pairs = [3, 6, 9].map((drop) => {
      const { before, after } = known(crankAngles(crank, mm(drop)));
      const shown = (angle: number) => ((toDegrees(radians(angle)) + 5.3 + 360) % 360).toFixed(2);
      return `${drop} mm: ${shown(before)} ${shown(after)}`;
    });
    const { results } = known(ask({ 'pin-offset': '0.8mm', pairs: pairs.join('; ') }));
    outsideCheck(
      'top-dead-centre',
      'common practice, no source; a crank turned to it, read to 0.01°',
      'deg',
      0.01,
    )(Number(results.top?.value), 5.3);
    expect(Number(results.spread?.value)).toBeLessThan(0.02);
  });

  it('is better known by more drops, and far better than by a dial at the top', () => {
    const one = known(ask({ pairs: '5 mm: 335.4 23.9' })).results;
    const three = known(ask({})).results;
    expect((one.top?.u ?? 0) / (three.top?.u ?? 1)).toBeCloseTo(Math.sqrt(3), 6);
    // s = r (1 + r / l) θ² / 2: 0.01 mm is some 1.0 degree from the top of this crank
    const series = (Math.sqrt((2 * 0.01) / (49 * (1 + 49 / 168))) * 180) / Math.PI;
    outsideCheck(
      'top-dead-centre',
      'first term of the series of piston travel, by hand',
      'deg',
      0.01,
    )(Number(three['dial-at-top']?.value), series);
  });

  it('tells the length on the rim', () => {
    const { results } = known(ask({ rim: '380mm' }));
    outsideCheck(
      'top-dead-centre',
      'circumference of a circle',
      'mm/deg',
      1e-6,
    )(Number(results['rim-per-degree']?.value), (380 * Math.PI) / 360);
  });

  it.each([
    [{ pairs: '3 mm 341 18' }, 'pairs'],
    [{ pairs: '3 mm: 18.2 341.0' }, 'pairs, 3 mm'],
    [{ pairs: '300 mm: 341 18' }, 'travel'],
    [{ rod: '40mm' }, 'rod'],
    [{ dial: '0mm' }, 'repeatability, dial'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});

describe('a button changed for another', () => {
  it('is as thick as the manuals’ examples say', () => {
    // source: TM 5-6115-584-34, p 144: 1.093 + 0.119 − 1.089 = 0.123 in, nearest M, 0.122; TM 9-2330-356-14, p 7-65: 1.109 +
    // 0.107 − 1.103 = 0.113 in, sizes 0.089 to 0.134 in by 0.003
    const inches = (a: number, b: number, c: number) => newButton(certain(a), certain(b), certain(c)).value;
    outsideCheck('button-swap', 'TM 5-6115-584-34, p 144', 'in', 1e-9)(inches(1.093, 0.119, 1.089), 0.123);
    outsideCheck('button-swap', 'TM 9-2330-356-14, p 7-65', 'in', 1e-9)(inches(1.109, 0.107, 1.103), 0.113);
    const buttons = Array.from({ length: 16 }, (_, at) => `b${at} ${(0.089 + 0.003 * at).toFixed(3)}`).join(
      ', ',
    );
    const { results } = known(
      reckonByName('button-swap', {
        measured: '1.109in',
        old: '0.107in',
        wanted: '1.103in',
        buttons: `${buttons} in`,
      }),
    );
    expect(Number(results.thickness?.value) / 25.4).toBeCloseTo(0.113, 9);
    const first = known(
      reckonByName('button-swap', {
        measured: '1.093in',
        old: '0.119in',
        wanted: '1.089in',
        buttons: 'L 0.119, M 0.122, N 0.125 in',
      }),
    );
    expect(first.results.button?.value).toBe('M');
  });

  it('points at wear where none on offer reaches', () => {
    const { notes } = known(
      reckonByName('button-swap', {
        measured: '28.5mm',
        old: '3mm',
        wanted: '27.6mm',
        buttons: 'A 3.0, B 3.1 mm',
      }),
    );
    expect(notes[0]).toContain('look for wear');
    const asked = reckonByName('button-swap', { measured: '1mm', old: '3mm', wanted: '27.6mm' });
    expect(asked.kind === 'refused' && asked.refusal.where).toBe('measured, old, wanted');
  });
});

describe('a gear one tooth out', () => {
  it('shifts every event by one tooth of the crank’s gear', () => {
    // source: geometry: 24 teeth, 15 degrees of crank; 30 teeth, 12
    const geometry = outsideCheck('tooth-shift', 'geometry of meshing gears, by hand', 'deg', 1e-9);
    geometry(toothShift(24, 1), 15);
    geometry(toothShift(30, -1), -12);
    const { results, notes } = known(
      reckonByName('tooth-shift', {
        'crank-teeth': '24',
        'driven-teeth': '48',
        events: 'injection -18, inlet-opens 348',
      }),
    );
    expect(results['then.injection']?.value).toBe(-33);
    expect(notes.join()).not.toContain('check the teeth');
  });

  it('shifts the spill of a pump that it drives with the valves, told before the top', () => {
    // source: geometry: 24 before the top is -24, 15 earlier is -39; 350 becomes 335
    const teeth = { 'crank-teeth': '24', 'driven-teeth': '48', spill: '24 deg' };
    const { results } = known(reckonByName('tooth-shift', { ...teeth, events: 'inlet-opens 350' }));
    expect(results['then.spill']?.value).toBe(-39);
    expect(results['then.inlet-opens']?.value).toBe(335);
    expect(Object.keys(known(reckonByName('tooth-shift', teeth)).results)).toEqual(['shift', 'then.spill']);
  });

  it('by backlash leaves its own angle open', () => {
    // 0.12 mm at 72 mm radius is 0.0955 degrees of the driven gear, twice that of crank
    const { results } = known(
      reckonByName('tooth-shift', {
        'crank-teeth': '24',
        'driven-teeth': '48',
        events: 'a 0',
        backlash: '0.12mm',
        'driven-diameter': '144mm',
      }),
    );
    expect(results['play-from-backlash']?.value).toBeCloseTo(0.191, 3);
  });

  it.each([
    [{ 'crank-teeth': '24.5' }, 'crank-teeth'],
    [{ 'teeth-out': '0' }, 'teeth-out'],
    [{ events: 'early' }, 'events'],
    [{ backlash: '0.1mm' }, 'backlash, driven-diameter'],
  ])('refuses %o', (texts, where) => {
    const asked = reckonByName('tooth-shift', {
      'crank-teeth': '24',
      'driven-teeth': '48',
      events: 'a 0',
      ...texts,
    });
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});
