/** @module What each slip makes of a figure. */
import { describe, expect, it } from 'vitest';
import { inchMicrometer, micrometer, typed } from '../../../test/engines/small-engine.ts';
import type { Instrument } from '../instrument.ts';
import { decimalShift } from './decimal-shift.ts';
import { slips } from './list.ts';
import { misreadNumber } from './misread-number.ts';
import { reachedBy } from './outside-range.ts';
import { knownSlips, usualPriors } from './priors.ts';
import type { Slip } from './slip.ts';
import { thimbleTurn } from './thimble-turn.ts';
import { transposedDigits } from './transposed-digits.ts';
import { wrongFrame } from './wrong-frame.ts';
import { wrongSign } from './wrong-sign.ts';
import { wrongUnit } from './wrong-unit.ts';

const dial: Instrument = {
  ...micrometer,
  name: 'dial',
  kind: 'dial gauge',
  range: { least: typed('0'), greatest: typed('10') },
  turn: typed('1'),
};

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

describe('a misread number', () => {
  // source: an error of 0.10 or 0.20 is a misread number, common practice, no source
  it('is one or two numbered lines, as the unit has them', () => {
    expect(likely(misreadNumber, '54.98')).toEqual(['55.08 mm', '54.88 mm', '55.18 mm', '54.78 mm']);
    expect(likely(misreadNumber, '2.1646', 'in', inchMicrometer)).toEqual([
      '2.1746 in',
      '2.1546 in',
      '2.1846 in',
      '2.1446 in',
    ]);
  });

  it('is not looked for on feelers, which have no scale, nor in other units', () => {
    expect(likely(misreadNumber, '0.35', 'mm', { ...micrometer, kind: 'feeler set' })).toEqual([]);
    expect(likely(misreadNumber, '2164', 'thou')).toEqual([]);
    expect(likely(misreadNumber, '2 9/16', 'in')).toEqual([]);
  });
});

describe('a wrong frame', () => {
  // source: an error of 25 mm is the wrong frame, common practice, no source; frames go by the inch too
  it('is one frame up or down', () => {
    expect(likely(wrongFrame, '54.98')).toEqual(['79.98 mm', '29.98 mm']);
    expect(likely(wrongFrame, '2.1646', 'in', inchMicrometer)).toEqual(['3.1646 in', '1.1646 in']);
    expect(likely(wrongFrame, '54.98', 'mm', { ...micrometer, kind: 'bore gauge' })).toEqual([]);
  });
});

describe('a wrong sign', () => {
  it('is turned on a dial either way, on others only where a minus stands', () => {
    expect(likely(wrongSign, '0.21', 'mm', dial)).toEqual(['-0.21 mm']);
    expect(likely(wrongSign, '-0.21', 'mm', dial)).toEqual(['0.21 mm']);
    expect(likely(wrongSign, '−0,21', 'mm', dial)).toEqual(['0,21 mm']);
    expect(likely(wrongSign, '0.00', 'mm', dial)).toEqual([]);
    expect(likely(wrongSign, '54.98')).toEqual([]);
    expect(likely(wrongSign, '-54.98')).toEqual(['54.98 mm']);
  });
});

describe('the range of an instrument', () => {
  it('is no matter to one that was set in a master, which shows how far a size is off', () => {
    const setTo = { master: 'ring-60', size: typed('60'), shown: typed('0') };
    expect(reachedBy({ ...micrometer, kind: 'bore gauge', setTo }, typed('0.012'))).toBe(true);
  });

  it.each([
    ['54.98', 'mm', true],
    ['50', 'mm', true],
    ['75.3', 'mm', true],
    ['84.98', 'mm', false],
    ['2.1646', 'mm', false],
    ['2.1646', 'in', true],
    ['-54.98', 'mm', false],
    ['0', 'mm', true],
    ['what', 'mm', true],
  ])('shows %s %s: %s', (text, unit, shown) => {
    expect(reachedBy(micrometer, typed(text, unit))).toBe(shown);
  });

  it('is no matter to feelers, which are laid together, nor to the sign of a pointer', () => {
    const feelers = {
      ...micrometer,
      kind: 'feeler set',
      range: { least: typed('0.03'), greatest: typed('1') },
    };
    expect(reachedBy(feelers, typed('0.02'))).toBe(true);
    expect(reachedBy(feelers, typed('1.2'))).toBe(true);
    expect(reachedBy(dial, typed('-0.3'))).toBe(true);
    expect(reachedBy(dial, typed('-12.5'))).toBe(false);
  });
});

describe('the list of slips', () => {
  it('has each by a name of its own, with words and a chance that a shop can change', () => {
    expect(new Set(knownSlips.map(({ name }) => name)).size).toBe(knownSlips.length);
    for (const { name, says, chance } of knownSlips) {
      expect(says).not.toBe('');
      expect(chance).toBeGreaterThan(0);
      expect(usualPriors[name]).toBe(chance);
    }
  });
});

describe('every slip', () => {
  it.each(slips.map((slip) => [slip.name, slip] as const))(
    'reaches no further than it says: %s',
    (_name, slip) => {
      const reached = ['mm', 'in'].flatMap((unit) =>
        [micrometer, dial].flatMap((instrument) =>
          slip.candidates(typed('54.987', unit), instrument).map(({ share, stretch }) => share * stretch),
        ),
      );
      expect(reached.length).toBeGreaterThan(0);
      expect(Math.max(...reached)).toBeLessThanOrEqual(slip.reach);
    },
  );

  it('has a name of its own, and chances that leave most readings honest', () => {
    expect(new Set(slips.map(({ name }) => name)).size).toBe(slips.length);
    for (const slip of slips) {
      const shares = slip.candidates(typed('54.987'), dial).map(({ share }) => share);
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeLessThan(1 + 1e-9);
    }
    const all = slips.reduce((sum, { chance }) => sum + chance, 0);
    expect(all).toBeGreaterThan(0);
    expect(all).toBeLessThan(0.06);
  });
});
