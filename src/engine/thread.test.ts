/** @module Metric threads against the published tables. */
import { describe, expect, it } from 'vitest';
import { mm, newtonMetres } from '../quantity/brand.ts';
import { proofLoad, stressArea, tension, threadOf } from './thread.ts';

// source: ISO 898-1, tables of stress areas and proof loads for coarse threads, N
const published = [
  ['M6', 20.1, 11_600, 16_700, 19_500],
  ['M8', 36.6, 21_200, 30_400, 35_500],
  ['M10', 58.0, 33_700, 48_100, 56_300],
  ['M12', 84.3, 48_900, 70_000, 81_800],
  ['M14', 115, 66_700, 95_500, 112_000],
  ['M16', 157, 91_000, 130_000, 152_000],
  ['M18', 192, 115_000, 159_000, 186_000],
  ['M20', 245, 147_000, 203_000, 238_000],
] as const;

describe('a coarse metric thread', () => {
  it.each(published)('%s has the stress area and proof loads of the tables', (name, area, ...loads) => {
    const thread = threadOf(name);
    if (thread === undefined) throw new Error(`${name} is not known`);
    // The tables give three figures, and their loads are computed from the rounded area.
    expect(Math.abs(stressArea(thread) / area - 1)).toBeLessThan(0.005);
    const [a, b, c] = loads;
    expect(Math.abs(proofLoad(thread, '8.8') / a - 1)).toBeLessThan(0.0075);
    expect(Math.abs(proofLoad(thread, '10.9') / b - 1)).toBeLessThan(0.0075);
    expect(Math.abs(proofLoad(thread, '12.9') / c - 1)).toBeLessThan(0.0075);
  });

  it('is M12 with a pitch of 1.75 mm, and M12x1.25 where the pitch is written', () => {
    expect(threadOf('M12')).toEqual({ diameter: 12, pitch: 1.75 });
    expect(threadOf('M12x1.25')).toEqual({ diameter: 12, pitch: 1.25 });
  });

  it('is not guessed where the coarse pitch is not on the list', () => {
    expect(threadOf('M13')).toBeUndefined();
  });
});

describe('the tension of a torque', () => {
  it('agrees with the published pair for M12 in class 8.8 at a friction of 0.14', () => {
    // source: VDI 2230 Part 1, Table A1: 93 N·m for 41.9 kN. The head's mean diameter is 15.05 mm there
    // and taken as 15 mm here.
    const force = tension({ diameter: mm(12), pitch: mm(1.75) }, newtonMetres(93), 0.14);
    expect(Math.abs(force / 41_900 - 1)).toBeLessThan(0.01);
  });

  it('is named high rather than low against heads as they are made', () => {
    // source: bearing face of ISO 4014 hexagon heads and ISO 273 medium holes: (dw + dh)/2 = 7.74, 10.3,
    // 12.8, 15.1 and 20.0 mm, none below 1.249 d
    for (const [diameter, head] of [
      [6, 7.74],
      [8, 10.3],
      [10, 12.8],
      [12, 15.05],
      [16, 20],
    ] as const) {
      const thread = threadOf(`M${diameter}`);
      if (thread === undefined) throw new Error('not known');
      const friction = 0.12;
      const pitchDiameter = thread.diameter - 0.649519 * thread.pitch;
      const arm = 0.159155 * thread.pitch + 0.57735 * pitchDiameter * friction + (head / 2) * friction;
      expect(tension(thread, newtonMetres(50), friction)).toBeGreaterThan((50_000 / arm) * 0.9999);
    }
  });
});
