/** @module What a fitter would see on an instrument: which lines show, and which of them meet. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Instrument } from '../measure/instrument.ts';
import { type Scale, scaleOf, scalePair } from './scale-pair.ts';
import { type SvgNode, svgText } from './svg.ts';

const mm = (text: string) => ({ text, unit: 'mm' });
const inches = (text: string) => ({ text, unit: 'in' });

const micrometer = (least: string, greatest: string, resolution: string): Instrument => ({
  name: `mic-${least}-${greatest}`,
  kind: 'outside micrometer',
  range: { least: mm(least), greatest: mm(greatest) },
  resolution: mm(resolution),
  permissibleError: mm('0.004'),
  repeatability: mm('0.001'),
  turn: mm('0.5'),
});
const small = micrometer('0', '25', '0.01');
const fine = micrometer('50', '75', '0.001');
const inch: Instrument = {
  ...fine,
  range: { least: inches('2'), greatest: inches('3') },
  resolution: inches('0.0001'),
  turn: inches('0.025'),
};
const dial: Instrument = {
  ...small,
  name: 'dial',
  kind: 'dial gauge',
  range: { least: mm('0'), greatest: mm('10') },
  turn: mm('1'),
};

const drawn = (scale: Scale | undefined): SvgNode => {
  if (!scale) throw new Error('nothing is drawn');
  return scale.drawing;
};

interface Line {
  readonly name: string | number;
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

const linesOf = (node: SvgNode, kind: string): readonly Line[] => {
  const own = node.attributes[kind];
  const at = (name: string) => Number(node.attributes[name]);
  const here =
    own === undefined ? [] : [{ name: own, x1: at('x1'), y1: at('y1'), x2: at('x2'), y2: at('y2') }];
  return [
    ...here,
    ...node.children.flatMap((child) => (typeof child === 'string' ? [] : linesOf(child, kind))),
  ];
};

/** The height of the line along the sleeve: that of the vernier's zero, or where all sleeve lines begin. */
const datum = (node: SvgNode): number => linesOf(node, 'data-sleeve')[0]?.y1 ?? Number.NaN;

const meeting = (node: SvgNode): number | string | undefined =>
  linesOf(node, 'data-thimble').find(({ y1 }) => Math.abs(y1 - datum(node)) < 0.02)?.name;

const lastSleeveLine = (node: SvgNode): number =>
  Math.max(...linesOf(node, 'data-sleeve').map(({ name }) => Number(name)));

describe('a metric micrometer', () => {
  // source: published worked readings, 8.50 + 3 divisions = 8.53 and 12.50 + 15 divisions = 12.65
  it.each([
    ['8.53', 8.5, 3],
    ['12.65', 12.5, 15],
    ['8.03', 8, 3],
    ['0.00', 0, 0],
    ['5.72', 5.5, 22],
    ['25.00', 25, 0],
  ])('at %s shows the sleeve as far as %s, and thimble line %s on the line', (text, sleeve, thimble) => {
    const drawing = drawn(scaleOf(small, mm(text)));
    expect(lastSleeveLine(drawing)).toBe(sleeve);
    expect(meeting(drawing)).toBe(thimble);
  });

  it('differs by the half-millimetre line alone where a turn was misread', () => {
    const [typed, likely] = ['54.472', '54.972'].map((text) => scaleOf(fine, mm(text)));
    expect(typed?.words).toBe('sleeve 54, half-millimetre line not showing, thimble 47, vernier 2');
    expect(likely?.words).toBe('sleeve 54, half-millimetre line showing, thimble 47, vernier 2');
    const below = (scale: Scale | undefined) =>
      linesOf(drawn(scale), 'data-sleeve').filter(({ y1, y2 }) => y2 > y1).length;
    expect(below(likely)).toBe(below(typed) + 1);
  });

  it('draws whole millimetres above the line, halves below, and numbers rising upwards on the thimble', () => {
    const drawing = drawn(scaleOf(small, mm('8.53')));
    for (const { name, y1, y2 } of linesOf(drawing, 'data-sleeve')) {
      expect(y2 < y1).toBe(Number(name) % 1 === 0);
    }
    const [three, eight] = [3, 8].map((division) =>
      linesOf(drawing, 'data-thimble').find(({ name }) => name === division),
    );
    expect(eight?.y1).toBeLessThan(three?.y1 ?? Number.NaN);
  });

  it('has, at any figure, the edge where the sleeve is read and just one vernier line that meets the thimble', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 25_000 }), (microns) => {
        const drawing = drawn(scaleOf(fine, mm((50 + microns / 1000).toFixed(3))));
        const sleeve = linesOf(drawing, 'data-sleeve');
        const thimble = linesOf(drawing, 'data-thimble');
        const edge = thimble[0]?.x1 ?? Number.NaN;
        const last = sleeve.at(-1);
        expect(lastSleeveLine(drawing)).toBe(Math.floor(microns / 500) / 2);
        // One millimetre of sleeve is a tenth of the stretch that is drawn.
        const perMillimetre = 20.5;
        expect(edge - (last?.x1 ?? 0)).toBeCloseTo(((microns % 500) / 1000) * perMillimetre, 1);
        const met = linesOf(drawing, 'data-vernier').filter(({ y1 }) =>
          thimble.some((line) => Math.abs(line.y1 - y1) < 0.02),
        );
        expect(met.map(({ name }) => name)).toEqual([microns % 10]);
      }),
    );
  });

  it('is not drawn for what its frame cannot show', () => {
    for (const text of ['84.98', '2.1646', '-1', 'what']) expect(scaleOf(fine, mm(text))).toBeUndefined();
  });
});

describe('an inch micrometer', () => {
  // Worked by hand: 2.1646 = 2 + 6 lines of 0.025 + 14 thousandths + 6 tenths of one.
  it('is read in fortieths, thousandths and tenths of them', () => {
    const scale = scaleOf(inch, inches('2.1646'));
    expect(scale?.words).toBe('sleeve 2.150, thimble 14, vernier 6');
    const drawing = drawn(scale);
    expect(lastSleeveLine(drawing)).toBe(6);
    const thimble = linesOf(drawing, 'data-thimble');
    const met = linesOf(drawing, 'data-vernier').filter(({ y1 }) =>
      thimble.some((line) => Math.abs(line.y1 - y1) < 0.02),
    );
    expect(met.map(({ name }) => name)).toEqual([6]);
  });

  it('shows a figure typed in millimetres too', () => {
    expect(scaleOf(inch, mm('54.9808'))?.words).toBe('sleeve 2.150, thimble 14, vernier 6');
  });
});

describe('a dial gauge', () => {
  const angle = (drawing: SvgNode, hand: string): number => {
    const line = linesOf(drawing, 'data-hand').find(({ name }) => name === hand);
    if (!line) throw new Error(`no hand ${hand}`);
    const degrees = (Math.atan2(line.x2 - line.x1, line.y1 - line.y2) * 180) / Math.PI;
    return (Math.round(degrees * 10) / 10 + 360) % 360;
  };

  // A turn is 100 divisions of 3.6 degrees; the counter has ten turns of 36 degrees.
  it.each([
    ['0.24', 86.4, 0, '0 turns and 24 divisions, plus, with the clock'],
    ['1.24', 86.4, 36, '1 turn and 24 divisions, plus, with the clock'],
    ['-0.24', 273.6, 0, '0 turns and 24 divisions, minus, against the clock'],
    ['-1.24', 273.6, 324, '1 turn and 24 divisions, minus, against the clock'],
    ['0.01', 3.6, 0, '0 turns and 1 division, plus, with the clock'],
  ])('at %s has its pointer at %s degrees and its counter at %s', (text, pointer, turns, words) => {
    const scale = scaleOf(dial, mm(text));
    expect(scale?.words).toBe(words);
    expect(Math.abs(angle(drawn(scale), 'pointer') - pointer)).toBeLessThan(0.3);
    expect(Math.abs(angle(drawn(scale), 'turns') - turns)).toBeLessThan(1);
  });

  it('has its pointer on the division that it is read by', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 999 }), (divisions) => {
        const drawing = drawn(scaleOf(dial, mm((divisions / 100).toFixed(2))));
        const pointer = linesOf(drawing, 'data-hand').find(({ name }) => name === 'pointer');
        const mark = linesOf(drawing, 'data-division').find(({ name }) => name === divisions % 100);
        if (!pointer || !mark) throw new Error('no pointer, or no mark');
        const cross =
          (pointer.x2 - pointer.x1) * (mark.y2 - mark.y1) - (pointer.y2 - pointer.y1) * (mark.x2 - mark.x1);
        const lengths =
          Math.hypot(pointer.x2 - pointer.x1, pointer.y2 - pointer.y1) *
          Math.hypot(mark.x2 - mark.x1, mark.y2 - mark.y1);
        expect(Math.abs(cross / lengths)).toBeLessThan(0.01);
      }),
    );
  });

  it('is not drawn past what its counter counts, nor for a bore gauge that shows whole sizes', () => {
    expect(scaleOf(dial, mm('10.5'))).toBeUndefined();
    expect(scaleOf({ ...dial, kind: 'bore gauge' }, mm('0.12'))).toBeUndefined();
    const setTo = { master: 'ring-85', size: mm('85'), shown: mm('0') };
    expect(scaleOf({ ...dial, kind: 'bore gauge', setTo }, mm('0.12'))?.words).toMatch(/12 divisions/);
  });
});

describe('two scales side by side', () => {
  it('say in words what differs, for a reader who does not see them', () => {
    const pair = scalePair(fine, mm('54.472'), mm('54.972'));
    if (!pair) throw new Error('nothing is drawn');
    const text = svgText(pair);
    expect(text).toContain('as typed: 54.472 mm');
    expect(text).toContain('as suspected: 54.972 mm');
    expect(text).toContain('half-millimetre line not showing, thimble 47');
    expect(text).not.toMatch(/NaN|undefined/);
  });

  it('are drawn both or not at all', () => {
    expect(scalePair(fine, mm('54.472'), mm('549.72'))).toBeUndefined();
    expect(scalePair({ ...fine, kind: 'caliper' }, mm('54.47'), mm('54.97'))).toBeUndefined();
  });
});
