/** @module What each slip makes of a figure. */
import { describe, expect, it } from 'vitest';
import { inchMicrometer, micrometer, typed } from '../../../test/engines/small-engine.ts';
import type { Instrument } from '../instrument.ts';
import { decimalShift } from './decimal-shift.ts';
import { slips } from './list.ts';
import type { Slip } from './slip.ts';
import { thimbleTurn } from './thimble-turn.ts';
import { transposedDigits } from './transposed-digits.ts';
import { wrongUnit } from './wrong-unit.ts';

const likely = (slip: Slip, text: string, unit = 'mm', instrument: Instrument = micrometer) =>
  slip.candidates(typed(text, unit), instrument).map((each) => `${each.likely.text} ${each.likely.unit}`);

describe('a thimble turn', () => {
  // source: metric thimbles advance 0.5 mm a turn, inch thimbles 0.025 in (common practice)
  it.each([
    ['54.480', 'mm', micrometer, ['54.980 mm', '53.980 mm']],
    ['54,48', 'mm', micrometer, ['54,98 mm', '53,98 mm']],
    ['55', 'mm', micrometer, ['55.5 mm', '54.5 mm']],
    ['2.1646', 'in', inchMicrometer, ['2.1896 in', '2.1396 in']],
    ['2.1646', 'in', micrometer, ['2.1843 in', '2.1449 in']],
  ])('makes %s %s of a figure one turn away', (text, unit, instrument, expected) => {
    expect(likely(thimbleTurn, text, unit, instrument)).toEqual(expected);
  });

  it('is not looked for on an instrument without a thimble, nor on a fraction', () => {
    const { turn: _none, ...gauge } = micrometer;
    expect(likely(thimbleTurn, '54.480', 'mm', gauge)).toEqual([]);
    expect(likely(thimbleTurn, '2 9/16', 'in')).toEqual([]);
    expect(likely(thimbleTurn, '54.480', 'bar')).toEqual([]);
  });
});

describe('a wrong unit', () => {
  it('keeps the figure and changes the unit', () => {
    expect(likely(wrongUnit, '2.1646', 'mm')).toEqual(['2.1646 in']);
    expect(likely(wrongUnit, '54.98', 'in')).toEqual(['54.98 mm']);
    expect(likely(wrongUnit, '54.98', 'thou')).toEqual([]);
  });
});

describe('a decimal shift', () => {
  it('keeps the digits and moves the mark', () => {
    expect(likely(decimalShift, '54.98')).toEqual([
      '0.05498 mm',
      '0.5498 mm',
      '5.498 mm',
      '549.8 mm',
      '5498 mm',
      '54980 mm',
    ]);
    expect(likely(decimalShift, '54980')).toContain('54.980 mm');
    expect(likely(decimalShift, '-0,35')).toContain('-3,5 mm');
    expect(likely(decimalShift, '1/2')).toEqual([]);
  });
});

describe('transposed digits', () => {
  it('swaps two neighbours that differ', () => {
    expect(likely(transposedDigits, '54.980')).toEqual(['45.980 mm', '59.480 mm', '54.890 mm', '54.908 mm']);
    expect(likely(transposedDigits, '55.5')).toEqual([]);
    expect(likely(transposedDigits, '1e3')).toEqual([]);
  });
});

describe('every slip', () => {
  it.each(slips.map((slip) => [slip.name, slip] as const))(
    'reaches no further than it says: %s',
    (_name, slip) => {
      const reached = ['mm', 'in'].flatMap((unit) =>
        slip.candidates(typed('54.987', unit), micrometer).map(({ chance, stretch }) => chance * stretch),
      );
      expect(Math.max(...reached)).toBeLessThanOrEqual(slip.reach);
    },
  );

  it('has a name of its own, and chances that leave most readings honest', () => {
    expect(new Set(slips.map(({ name }) => name)).size).toBe(slips.length);
    const chances = slips.flatMap((slip) => slip.candidates(typed('54.987'), micrometer));
    const all = chances.reduce((sum, { chance }) => sum + chance, 0);
    expect(all).toBeGreaterThan(0);
    expect(all).toBeLessThan(0.05);
  });
});
