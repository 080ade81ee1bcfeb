/** @module What ovality, taper, clearances and other derived characteristics must come to. */
import { describe, expect, it } from 'vitest';
import { readAll, reading, sheetOf, smallEngine, typed } from '../../test/engines/small-engine.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import { judge } from './judge.ts';

const journal = (...figures: string[]) => readAll('main.1', 'main-journal-diameter', figures);

describe('verdict of a derived characteristic', () => {
  it('ovality is the greatest range over the axes of a plane, taper over the planes along an axis', () => {
    const sheet = sheetOf(journal('54.980', '54.972', '54.969', '54.971'));
    // front 0.008, rear 0.002; vertical 0.011, horizontal 0.001
    expect(judge(sheet, 'main-journal-ovality', 'main.1').value?.value).toBeCloseTo(0.008, 12);
    expect(judge(sheet, 'main-journal-taper', 'main.1').value?.value).toBeCloseTo(0.011, 12);
  });

  it('ovality has lost the errors that its readings share', () => {
    // Front 0.018, rear 0.002: far enough apart that there is no doubt which is the ovality.
    const ovality = judge(
      sheetOf(journal('54.980', '54.962', '54.969', '54.971')),
      'main-journal-ovality',
      'main.1',
    );
    // Two repeats of 1.5 µm and two halves of a unit of 1 µm are left; the 5 µm of the micrometer is gone.
    expect(ovality.value && standardUncertainty(ovality.value)).toBeCloseTo(
      Math.sqrt(2) * Math.hypot(0.0015, 0.0005 / Math.sqrt(3)),
      9,
    );
  });

  it('is not yet known until all operands are read, and names the cells', () => {
    const judged = judge(sheetOf(journal('54.980')), 'main-clearance', 'main.1');
    expect(judged.verdict).toBe('not yet known');
    expect(judged.missing).toHaveLength(7);
  });

  const shells = (instrument: string) =>
    readAll('main.1', 'main-shell-bore', ['55.050', '55.052', '55.055', '55.051'], instrument);

  it('clearance is the widest bore less the thinnest journal', () => {
    const sheet = sheetOf([...journal('54.980', '54.975', '54.970', '54.978'), ...shells('bore-gauge')]);
    const judged = judge(sheet, 'main-clearance', 'main.1');
    expect(judged.value?.value).toBeCloseTo(0.085, 12);
    expect(judged).toMatchObject({ verdict: 'within', asNew: false, cells: [], missing: [] });
  });

  it('clearance is known better where both parts were taken with one instrument', () => {
    const u = (instrument: string) => {
      const sheet = sheetOf([...journal('54.980', '54.975', '54.970', '54.978'), ...shells(instrument)]);
      const { value } = judge(sheet, 'main-clearance', 'main.1');
      return value ? standardUncertainty(value) : Number.NaN;
    };
    expect(u('mic-50-75')).toBeLessThan(u('bore-gauge') / 1.5);
  });

  it('finds its operand at the place with the same number', () => {
    const bore = readAll(
      'bore.2',
      'bore-diameter',
      Array.from({ length: 6 }, () => '85.060'),
      'bore-gauge',
    );
    const sheet = sheetOf([...bore, reading('piston.2 piston-diameter', typed('84.900'))]);
    expect(judge(sheet, 'piston-clearance', 'bore.2').value?.value).toBeCloseTo(0.16, 12);
    expect(judge(sheet, 'piston-clearance', 'bore.1').verdict).toBe('not yet known');
  });

  it('works out sums, factors and means, and finds an operand at the only place of its kind', () => {
    const derived = {
      kind: 'sum',
      of: [
        { kind: 'factor', factor: 0.5, of: { kind: 'mean', of: 'main-journal-diameter' } },
        { kind: 'reading', of: 'end-float' },
        { kind: 'reading', of: 'main-journal-taper' },
      ],
    } as const;
    const made = {
      name: 'made-up',
      title: 'made-up',
      at: 'main',
      planes: [''],
      axes: [''],
      derived,
      wears: 'larger',
    } as const;
    const engine = {
      ...smallEngine,
      characteristics: new Map([...smallEngine.characteristics, ['made-up', made]]),
    };
    const readings = [
      ...journal('54.980', '54.970', '54.980', '54.970'),
      reading('thrust.1 end-float', typed('0.200'), 'bore-gauge'),
    ];
    // 54.975 / 2 + 0.200 + 0
    expect(judge(sheetOf(readings, { engine }), 'made-up', 'main.1').value?.value).toBeCloseTo(27.6875, 12);
    expect(judge(sheetOf(readings), 'made-up', 'main.1').verdict).toBe('not yet known');
  });

  it('names an operand that the engine does not have as never known', () => {
    const derived = { kind: 'least', of: 'no-such' } as const;
    const made = {
      name: 'made-up',
      title: 'made-up',
      at: 'main',
      planes: [''],
      axes: [''],
      derived,
      wears: 'larger',
    } as const;
    const lost = { ...made, name: 'lost', derived: { kind: 'least', of: 'bore-diameter' } } as const;
    const engine = {
      ...smallEngine,
      characteristics: new Map([...smallEngine.characteristics, ['made-up', made], ['lost', lost]]),
    };
    expect(judge(sheetOf([], { engine }), 'made-up', 'main.1')).toMatchObject({
      verdict: 'not yet known',
      missing: [],
    });
    // There is no bore 4 for main bearing 4.
    expect(judge(sheetOf([], { engine }), 'lost', 'main.4')).toMatchObject({
      verdict: 'not yet known',
      missing: [],
    });
  });
});
