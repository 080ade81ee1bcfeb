/** @module What is measured for the decision, and what only when the engine goes together. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Bench, booking } from '../../test/job/bench.ts';
import { toMeasure } from './to-measure.ts';

const names = (engineType: string): readonly string[] => {
  const bench = new Bench();
  bench.done({ ...booking, engineType });
  return [...new Set(toMeasure(bench.open).left.map(({ characteristic }) => characteristic))];
};

describe('measuring for the decision', () => {
  it('leaves out what only proves the build', () => {
    expect(names(booking.engineType)).toEqual(['main-journal-diameter']);
  });

  it('keeps what a part is judged by through a derived characteristic, whatever its sums', () => {
    const shells = `  shell-thickness: { title: shell thickness, at: main, wears: smaller }
  shell-bore: { title: shell bore, at: main, wears: larger }
  clearance:
    title: clearance
    at: main
    derived: { difference: [shell-bore, { sum: [{ greatest: main-journal-diameter }, { factor: [2, shell-thickness] }] }] }
    wears: larger
    limits: { new: { greatest: 0.080 mm }, wear: { greatest: 0.120 mm } }
  pump-depth:`;
    const text = booking.engineType
      .replace('  pump-depth:', shells)
      .replace('judged-by: [main-journal-diameter, main-journal-ovality]', 'judged-by: [clearance]');
    expect(names(text)).toEqual(['main-journal-diameter', 'shell-thickness', 'shell-bore']);
  });

  it('keeps what is proved at the strip: a pack is measured before it is taken apart', () => {
    const demo = readFileSync(new URL('../../demo/engines/quillfeather-3w.yaml', import.meta.url), 'utf8');
    const asked = names(demo);
    expect(asked).toContain('pump-pack-found');
    expect(asked).toContain('bore-diameter');
    expect(asked).not.toContain('pump-depth');
  });
});
