/** @module The grade for a measured value: bands laid out thinnest first, and of two that fit the thicker one. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { gradeFor } from './grade.ts';

/** Gaskets of two thicknesses for a clearance of 0.55 to 0.65 mm: each is taken where the gap left lies within. */
const grades = [1.0, 1.1].map((thick) => ({
  name: thick.toFixed(1),
  when: { least: thick - 0.65, greatest: thick - 0.55 },
}));

describe('the grade for a measured value', () => {
  it('is the one whose band holds it', () => {
    expect(gradeFor(0.4, grades)?.name).toBe('1.0');
    expect(gradeFor(0.5, grades)?.name).toBe('1.1');
  });

  it('is the thicker one where two fit', () => {
    // source: TM 10-4320-310-14, p 5-22 (gasket 0.55 to 0.65 mm less what is measured; if two fit, the thicker)
    expect(gradeFor(0.45, grades)?.name).toBe('1.1');
  });

  it('is none outside all bands', () => {
    expect(gradeFor(0.34, grades)).toBeUndefined();
    expect(gradeFor(0.56, grades)).toBeUndefined();
  });

  it('never gets thinner as the value grows', () => {
    const values = fc.double({ min: 0.35, max: 0.55, noNaN: true });
    fc.assert(
      fc.property(values, values, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)].map((value) =>
          Number(gradeFor(value, grades)?.name),
        );
        expect(low).toBeLessThanOrEqual(high ?? Number.NaN);
      }),
    );
  });
});
