/** @module Bump clearance, gasket grade and compression ratio against a manual's rule and worked examples. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { certain } from '../quantity/uncertain.ts';
import { compressionRatio } from './compression-ratio.ts';
import { gradeFor } from './gasket-grade.ts';
import { reckonByName } from './list.ts';

const resultsOf = (name: string, texts: Readonly<Record<string, string>>) =>
  known(reckonByName(name, texts)).results;
const where = (name: string, texts: Readonly<Record<string, string>>) => {
  const asked = reckonByName(name, texts);
  return asked.kind === 'refused' ? asked.refusal.where : undefined;
};

describe('bump clearance', () => {
  const asked = { 'stand-out': '0.58, 0.62; 0.60, 0.61 mm', gasket: '1.30mm' };

  it('is the gasket less the highest reading of the cylinder', () => {
    const results = resultsOf('bump-clearance', asked);
    // source: TM 10-4320-310-14, p 5-22, turned round: gasket = clearance wanted + stand-out
    const turned = outsideCheck('bump-clearance', 'TM 10-4320-310-14, p 5-22, turned round', 'mm', 1e-9);
    turned(Number(results['cylinder.1.bump']?.value), 1.3 - 0.62);
    turned(Number(results['cylinder.2.bump']?.value), 1.3 - 0.61);
    expect(Number(results.spread?.value)).toBeCloseTo(0.01, 9);
  });

  it('by lead wire is the mean of the wires of a cylinder, and set beside the other way', () => {
    const results = resultsOf('bump-clearance', {
      ...asked,
      lead: '0.70, 0.66; 0.71, 0.69 mm',
      repeatability: '0.01mm',
    });
    expect(results['cylinder.1.bump']?.value).toBeCloseTo(0.68, 9);
    expect(results['cylinder.1.bump']?.u).toBeCloseTo(0.01 / Math.SQRT2, 9);
    expect(results['cylinder.1.by-stand-out']?.value).toBeCloseTo(0.68, 9);
  });

  it('names a piston that would strike, and one outside its limits', () => {
    const { notes } = known(
      reckonByName('bump-clearance', {
        'stand-out': '1.4; 0.2; 0.6 mm',
        gasket: '1.30mm',
        least: '0.6mm',
        greatest: '0.9mm',
      }),
    );
    expect(notes.slice(0, 2)).toEqual([
      'The piston of cylinder 1 would strike the head.',
      'Cylinder 2 lies outside its limits.',
    ]);
  });

  it.each([
    [{}, 'stand-out, lead'],
    [{ 'stand-out': '0.6 mm' }, 'gasket'],
    [{ 'stand-out': '60 mm', gasket: '1.3mm' }, 'stand-out'],
    [{ lead: '0 mm' }, 'lead'],
    [{ 'stand-out': '0.6; 0.6 mm', gasket: '1.3mm', lead: '0.7 mm' }, 'stand-out, lead'],
    [{ ...{ 'stand-out': '0.6 mm', gasket: '1.3 kPa' } }, 'gasket=1.3 kPa'],
  ])('refuses %o', (texts, at) => {
    expect(where('bump-clearance', texts)).toBe(at);
  });
});

describe('the grade of a gasket', () => {
  const grades = [1.2, 1.25, 1.3, 1.35, 1.4].map((size, at) => ({
    name: String(at + 1),
    size: certain(size),
  }));

  it('is the manual’s: clearance of 0.55 to 0.65 mm, and the thicker of two that fit', () => {
    // source: TM 10-4320-310-14, p 5-22: gasket = 0.55 to 0.65 mm plus the height measured; if two fit, the thicker
    const limits = { least: 0.55, greatest: 0.65 };
    for (const [standOut, thickness] of [
      [0.7, 1.35],
      [0.74, 1.35],
      [0.66, 1.3],
    ] as const) {
      const got = gradeFor(grades, [standOut], limits, 'the thicker');
      outsideCheck(
        'gasket-grade',
        'TM 10-4320-310-14, p 5-22, of two that fit the thicker',
        'mm',
        1e-9,
      )(got?.size.value ?? Number.NaN, thickness);
    }
  });

  it('fits every cylinder, or is none', () => {
    fc.assert(
      fc.property(
        fc.array(between(0.4, 0.9), { minLength: 1, maxLength: 6 }),
        between(0.02, 0.3),
        (standOut, width) => {
          const limits = { least: 0.6, greatest: 0.6 + width };
          const grade = gradeFor(grades, standOut, limits, 'nearest the middle');
          const fits = ({ value }: { value: number }) =>
            standOut.every(
              (each) => value - each >= limits.least - 1e-9 && value - each <= limits.greatest + 1e-9,
            );
          if (grade) expect(fits(grade.size)).toBe(true);
          else expect(grades.some(({ size }) => fits(size))).toBe(false);
        },
      ),
    );
  });

  it('is none, with why, where the pistons stand too far apart', () => {
    const asked = {
      'stand-out': '0.3; 0.9 mm',
      grades: '1 1.2, 2 1.3 mm',
      least: '0.55mm',
      greatest: '0.75mm',
    };
    expect(resultsOf('gasket-grade', asked).grade?.value).toBe('none');
    expect(known(reckonByName('gasket-grade', asked)).notes[0]).toContain('Find why they differ');
    expect(where('gasket-grade', { ...asked, grades: 'thick' })).toBe('grades');
  });
});

describe('the compression ratio', () => {
  it('is that of a textbook', () => {
    // source: Pulkrabek, Engineering Fundamentals of the Internal Combustion Engine, Example 2-1: 500 cm³ a cylinder, ratio
    // 9.5, clearance volume 59 cm³
    const bore = Math.cbrt((500 * 4) / Math.PI) * 10;
    outsideCheck(
      'compression-ratio',
      'Pulkrabek, Example 2-1',
      '1',
      0.05,
    )(compressionRatio(bore, bore, 0, 59_000), 9.5);
  });

  it('falls as the gap grows, and is volume over volume', () => {
    fc.assert(
      fc.property(
        between(60, 130),
        between(60, 150),
        between(0, 2),
        between(10, 90),
        (bore, stroke, bump, pockets) => {
          const area = (Math.PI / 4) * bore ** 2;
          const left = area * bump + pockets * 1000;
          const ratio = compressionRatio(bore, stroke, bump, pockets * 1000);
          expect(ratio).toBeCloseTo((left + area * stroke) / left, 9);
          expect(compressionRatio(bore, stroke, bump + 0.1, pockets * 1000)).toBeLessThan(ratio);
        },
      ),
    );
  });

  it.each([
    [{ bore: '0mm' }, 'bore, stroke'],
    [{ bump: '-1mm' }, 'bump, pockets'],
    [{ pockets: '45 mm' }, 'pockets=45 mm'],
  ])('refuses %o', (texts, at) => {
    expect(
      where('compression-ratio', {
        bore: '98mm',
        stroke: '110mm',
        bump: '0.75mm',
        pockets: '45cm³',
        ...texts,
      }),
    ).toBe(at);
  });
});
