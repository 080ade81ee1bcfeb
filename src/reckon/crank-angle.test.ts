/** @module Crank angle is the way back from piston travel, on both sides of the top. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { crankOf, cranks } from '../../test/cranks.ts';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { degrees, mm, radians, toDegrees } from '../quantity/brand.ts';
import { wholeTravel } from './crank.ts';
import { crankAngles } from './crank-angle.ts';
import { reckonByName } from './list.ts';
import { pistonTravel, travelPerDegree } from './piston-travel.ts';

describe('crank angle', () => {
  it('is 20 degrees where the table of travels says so', () => {
    // recomputed: stroke 80, rod 120, 20 degrees, 3.195 mm; 0.314 mm per degree
    const { before, after } = known(crankAngles(crankOf(80, 120), mm(3.195)));
    expect(Math.abs(toDegrees(after) - 20)).toBeLessThan(0.0005 / 0.314);
    expect(before).toBeCloseTo(-after, 12);
  });

  it('is 20 degrees for the printed travel of 0.3247 cm', () => {
    // source: Pulkrabek, Engineering Fundamentals of the Internal Combustion Engine, Example 2-1 (0.32 cm;
    // 0.3247 recomputed)
    const stroke = Math.cbrt((500 * 4) / Math.PI) * 10;
    const { after } = known(crankAngles(crankOf(stroke, 166), mm(3.247)));
    const source = 'Pulkrabek, Engineering Fundamentals of the Internal Combustion Engine, Example 2-1';
    outsideCheck('crank-angle', source, 'deg', 0.05)(toDegrees(after), 20);
  });

  it('leads back to the travel it came from, on both sides', () => {
    fc.assert(
      fc.property(cranks, between(0, 1), (crank, part) => {
        const travel = mm(part * wholeTravel(crank));
        const { before, after } = known(crankAngles(crank, travel));
        expect(before).toBeLessThanOrEqual(0);
        expect(after).toBeGreaterThanOrEqual(0);
        for (const side of [before, after]) {
          expect(Math.abs(known(pistonTravel(crank, side)) - travel)).toBeLessThan(1e-9 * crank.rod);
        }
        expect(after - before).toBeLessThanOrEqual(2 * Math.PI + 1e-9);
      }),
    );
  });

  it('comes back from the angle it started at', () => {
    fc.assert(
      fc.property(cranks, between(0.01, 0.95), (crank, part) => {
        // a pin offset brings the bottom nearer on one side
        const bottom = known(crankAngles(crank, mm(wholeTravel(crank))));
        const angle = part * Math.min(bottom.after, -bottom.before);
        const travel = known(pistonTravel(crank, radians(angle)));
        expect(known(crankAngles(crank, travel)).after).toBeCloseTo(angle, 6);
        const ahead = known(pistonTravel(crank, radians(-angle)));
        expect(known(crankAngles(crank, ahead)).before).toBeCloseTo(-angle, 6);
      }),
    );
  });

  it('keeps its digits close to the top', () => {
    // for small angles s = r (1 + r / l) θ² / 2
    for (const travel of [1e-12, 1e-9, 1e-6]) {
      const { after } = known(crankAngles(crankOf(80, 120), mm(travel)));
      const series = Math.sqrt((2 * travel) / (40 * (1 + 40 / 120)));
      expect(Math.abs(after / series - 1)).toBeLessThan(1e-6);
    }
  });

  it('meets at the ends of the stroke', () => {
    const crank = crankOf(98, 168, 3);
    const top = known(crankAngles(crank, mm(0)));
    expect([top.before, top.after]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
    const bottom = known(crankAngles(crank, mm(wholeTravel(crank))));
    expect(toDegrees(radians(bottom.after - bottom.before))).toBeCloseTo(360, 4);
  });

  it('is refused for a travel that the piston does not have', () => {
    expect(crankAngles(crankOf(98, 168), mm(-0.01)).kind).toBe('refused');
    expect(crankAngles(crankOf(98, 168), mm(98.01)).kind).toBe('refused');
    expect(crankAngles(crankOf(98, 168), mm(Number.NaN)).kind).toBe('refused');
    expect(crankAngles(crankOf(98, 40), mm(3)).kind).toBe('refused');
  });
});

describe('crank angle asked for by name', () => {
  const ask = (travel: string, offset = '0 mm') =>
    reckonByName('crank-angle', { stroke: '98mm', rod: '168mm', 'pin-offset': offset, travel });

  it('gives both sides as positive degrees', () => {
    const { results } = known(ask('3.79305527mm'));
    expect(results.before?.value).toBeCloseTo(20, 6);
    expect(results.after?.value).toBeCloseTo(20, 6);
    expect(results['per-degree']?.value).toBeCloseTo(0.373069, 6);
  });

  it('is known to the travel over millimetres per degree', () => {
    const { results } = known(ask('3.793 ± 0.0196 mm'));
    const perDegree = known(travelPerDegree(crankOf(98, 168), degrees(20)));
    expect(results.after?.u).toBeCloseTo(0.0196 / 1.96 / perDegree, 5);
    expect(results.before?.u).toBeCloseTo(results.after?.u ?? 0, 9);
  });

  it('differs on the two sides when the pin stands off, and says so', () => {
    const { results, notes } = known(ask('60mm', '5mm'));
    expect(Number(results.after?.value)).toBeGreaterThan(Number(results.before?.value));
    expect(notes).toHaveLength(2);
  });

  it('is refused at the very bottom of a stroke that is not known exactly', () => {
    const texts = { rod: '168mm', travel: '98mm' };
    expect(reckonByName('crank-angle', { ...texts, stroke: '98mm' }).kind).toBe('answer');
    expect(reckonByName('crank-angle', { ...texts, stroke: '98 ± 0.05 mm' }).kind).toBe('refused');
  });

  it('refuses to tell an angle from a travel that drowns in its uncertainty', () => {
    const refused = ask('0.02 ± 0.03 mm');
    expect(refused.kind === 'refused' && refused.refusal.remedy).toContain('measure nearer the middle');
    expect(ask('97.99 ± 0.03 mm').kind).toBe('refused');
    expect(ask('99mm').kind === 'refused').toBe(true);
  });
});
