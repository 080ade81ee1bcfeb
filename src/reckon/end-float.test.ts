/** @module End float against a printed Type A example, printed choices of washers and shims, and every set tried another way. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { certain, standardUncertainty } from '../quantity/uncertain.ts';
import { endFloatOf } from './end-float-pushes.ts';
import { reckonByName } from './list.ts';
import { piecesFor, setsOf } from './pieces-for-thickness.ts';

const reckoned = (texts: Readonly<Record<string, string>>) => known(reckonByName('end-float', texts));
const where = (texts: Readonly<Record<string, string>>) => {
  const asked = reckonByName('end-float', texts);
  return asked.kind === 'refused' ? asked.refusal.where : undefined;
};

describe('the end float of a shaft', () => {
  it('is the mean of its repeats, known as a printed example has it', () => {
    // source: JCGM 100:2008, 4.4.3, table 1: twenty readings, mean 100.145, standard deviation of the mean 0.333; printed
    // in °C, taken here as µm between the two readings of a pushing
    const printed =
      '96.90 98.18 98.25 98.61 99.03 99.49 99.56 99.74 99.89 100.07 100.33 100.42 100.68 100.95 101.11 101.20 101.57 101.84 102.36 102.72';
    const { results } = reckoned({
      readings: printed
        .split(' ')
        .map((each) => `0 µm, ${each} µm`)
        .join('; '),
    });
    const check = outsideCheck('end-float', 'JCGM 100:2008, 4.4.3, table 1, as µm', 'mm', 0.5e-6);
    check(Number(results['end-float']?.value), 100.145e-3);
    check(results['end-float']?.u ?? 0, 0.333e-3);
  });

  it('does not ask where the dial was set to nought, nor which way was first', () => {
    const dial = { error: 0.01, step: 0.01, repeatability: 0 };
    fc.assert(
      fc.property(
        fc.array(fc.tuple(between(-2, 2), between(-2, 2)), { minLength: 1, maxLength: 6 }),
        between(-1, 1),
        (pushes, shift) => {
          const float = endFloatOf(pushes, dial);
          const other = endFloatOf(
            pushes.map(([a, b]) => [b + shift, a + shift]),
            dial,
          );
          expect(other.value).toBeCloseTo(float.value, 9);
          expect(standardUncertainty(other)).toBeCloseTo(standardUncertainty(float), 9);
        },
      ),
    );
  });

  it('is known no better than its dial, and better with more repeats', () => {
    const dial = { error: 0, step: 0, repeatability: 0.006 };
    const once = endFloatOf([[0, 0.3]], dial);
    expect(standardUncertainty(once)).toBeCloseTo(0.006, 12);
    expect(
      standardUncertainty(
        endFloatOf(
          [
            [0, 0.3],
            [0, 0.3],
            [0, 0.3],
          ],
          dial,
        ),
      ),
    ).toBeLessThan(0.006 / Math.sqrt(3));
    // source: JCGM 100:2008, 4.3.7: half width over √3
    expect(
      standardUncertainty(endFloatOf([[0, 0.3]], { ...dial, error: 0.01, repeatability: 0 })),
    ).toBeCloseTo(0.01 / Math.sqrt(3), 12);
    expect(reckoned({ readings: '0, 0.3 mm' }).notes[0]).toContain('push it three times');
  });

  it.each([
    [{ readings: '0.1 mm' }, 'readings'],
    [{ readings: '0.1, 0.2, 0.3 mm' }, 'readings'],
    [{ readings: '0, 90 mm' }, 'readings'],
    [{ readings: '0, 0.3 kPa' }, 'readings, 0'],
    [{ step: '-1mm' }, 'step'],
    [{ least: '0.3mm', greatest: '0.1mm' }, 'least, greatest'],
  ])('refuses %o', (texts, at) => {
    expect(where({ readings: '0, 0.3 mm', ...texts })).toBe(at);
  });
});

describe('the washers and shims for an end float', () => {
  const washers = { effect: 'thicker closes', least: '0.004in', greatest: '0.011in' };

  it('are those of a manual’s table where it brings the float near its middle', () => {
    // source: TM 5-4210-233-14&P-2, p 6-152: two washers of 0.122 in: play below 0.016 in the standard ones, 0.017 to
    // 0.026 in those 0.005 in thicker, 0.027 to 0.036 in those 0.010 in thicker; TM 5-3895-346-14: play 0.004 to 0.011 in
    const check = outsideCheck(
      'end-float',
      'TM 5-4210-233-14&P-2, p 6-152, within each row of the table',
      'mm',
      1e-9,
    );
    const thicknessFor = (play: number) =>
      Number(
        reckoned({
          ...washers,
          readings: `0, ${play} in`,
          fitted: 'front 0.122, rear 0.122 in',
          stock: 'S 0.122, S 0.122, five 0.127, five 0.127, ten 0.132, ten 0.132 in',
        }).results.thickness?.value,
      );
    for (const [play, thickness] of [
      [0.009, 0.244],
      [0.018, 0.254],
      [0.028, 0.264],
      [0.035, 0.264],
    ] as const)
      check(thicknessFor(play), thickness * 25.4);
    // The table knows like pairs only; between two of its rows an unlike pair comes nearer the middle.
    expect(thicknessFor(0.022)).toBeCloseTo(0.259 * 25.4, 9);
  });

  it('are as thick as printed examples of the same sum have them', () => {
    // source: TM 9-2330-356-14, p 7-65: 1.109 + 0.107 − 1.103 = 0.113; TM 5-6115-584-34: 1.093 + 0.119 − 1.089 = 0.123, of
    // sizes 0.003 in apart the nearest is 0.122 in
    const stock = Array.from({ length: 16 }, (_, at) => `S${at} ${(0.089 + 0.003 * at).toFixed(3)}`).join(
      ', ',
    );
    const ask = (dimension: number, fitted: number, wanted: number) =>
      reckoned({
        readings: `0, ${(dimension - 1).toFixed(3)} in`,
        fitted: `old ${fitted} in`,
        stock: `${stock} in`,
        effect: 'thicker closes',
        least: `${(wanted - 1.002).toFixed(3)} in`,
        greatest: `${(wanted - 0.998).toFixed(3)} in`,
      }).results;
    const first = ask(1.109, 0.107, 1.103);
    const second = ask(1.093, 0.119, 1.089);
    const check = outsideCheck(
      'end-float',
      'TM 9-2330-356-14, p 7-65, and TM 5-6115-584-34: piece = found + fitted − wanted, nearest size',
      'mm',
      1e-9,
    );
    check(Number(first.wanted?.value), 0.113 * 25.4);
    check(Number(first.thickness?.value), 0.113 * 25.4);
    check(Number(second.wanted?.value), 0.123 * 25.4);
    check(Number(second.thickness?.value), 0.122 * 25.4);
  });

  const float = { readings: '0, 0.30; 0, 0.31; 0, 0.29 mm', least: '0.1mm', greatest: '0.2mm' };

  it('under a housing work the other way', () => {
    const asked = { ...float, fitted: 'F 0.50 mm', stock: 'A 0.35, B 0.65 mm' };
    const opens = reckoned({ ...asked, effect: 'thicker opens' }).results;
    expect([opens.chosen?.value, opens.after?.value]).toEqual(['A', 0.15]);
    const closes = reckoned({ ...asked, effect: 'thicker closes' }).results;
    expect([closes.chosen?.value, closes.after?.value]).toEqual(['B', 0.15]);
  });

  it('lose the error of the one micrometer, and a piece that stays in loses its own', () => {
    const asked = {
      ...float,
      readings: '0, 0.15 mm',
      effect: 'thicker closes',
      fitted: 'F 2.300±0.004 mm',
      stock: 'A 2.900±0.004 mm',
      shared: '0.004mm',
      again: 'yes',
    };
    const { results, notes } = reckoned(asked);
    expect(results.chosen?.value).toBe('F');
    expect(results.after?.u).toBeUndefined();
    expect(notes).toContain('Nothing is nearer than what is fitted: leave it.');
    expect(reckoned({ ...asked, again: 'no' }).results.after?.u ?? 0).toBeLessThan(1e-9);
    expect(where({ ...asked, shared: '0.005mm' })).toBe('shared');
  });

  it('that do not reach the limits are named as the nearest, by how much they miss', () => {
    const { results, notes } = reckoned({
      ...float,
      effect: 'thicker closes',
      fitted: 'F 2.3 mm',
      stock: 'A 2.35 mm',
    });
    expect(results['after-verdict']?.value).toBe('outside');
    expect(notes.some((note) => note.includes('0.050 mm off them'))).toBe(true);
  });

  it('are the nearest of all sets, fewest first, most alike next', () => {
    const piece = (size: number, at: number) => ({ name: String(at), size: certain(size) });
    fc.assert(
      fc.property(
        fc.array(
          fc.integer({ min: 1, max: 30 }).map((n) => n / 20),
          { minLength: 1, maxLength: 8 },
        ),
        between(0, 5),
        fc.constantFrom(1, 2, 3),
        (sizes, wanted, greatest) => {
          const stock = sizes.map(piece);
          const set = piecesFor(stock, { least: 1, greatest }, wanted);
          const got = (set ?? []).map(({ size }) => size.value);
          const off = Math.abs(got.reduce((sum, each) => sum + each, 0) - wanted);
          // every subset by the bits of a number, instead of by turns
          for (let bits = 1; bits < 1 << sizes.length; bits += 1) {
            const other = sizes.filter((_, at) => (bits >> at) & 1);
            if (other.length > greatest) continue;
            const away = Math.abs(other.reduce((sum, each) => sum + each, 0) - wanted);
            expect(away).toBeGreaterThan(off - 1e-8);
            if (Math.abs(away - off) < 1e-10) expect(other.length).toBeGreaterThanOrEqual(got.length);
          }
        },
      ),
    );
    const pair = piecesFor([1, 3, 2, 2].map(piece), { least: 2, greatest: 2 }, 4);
    expect(pair?.map(({ size }) => size.value)).toEqual([2, 2]);
    // source: binomial coefficients: 5 + 10 + 10
    expect(setsOf([1, 2, 3, 4, 5].map(piece), { least: 1, greatest: 3 })).toBe(25);
    // of eight of one thickness two count: one alone, one pair
    expect(
      setsOf(
        Array.from({ length: 8 }, (_, at) => piece(2, at)),
        { least: 1, greatest: 2 },
      ),
    ).toBe(3);
  });

  const pieces = { ...float, fitted: 'F 2.3 mm', stock: 'A 2.4, B 2.5 mm', effect: 'thicker closes' };

  it.each([
    [{ effect: '' }, 'effect'],
    [{ least: '' }, 'least, greatest'],
    [{ fitted: '' }, 'fitted'],
    [{ stock: 'A 0 mm' }, 'stock'],
    [{ pieces: '2', stock: 'A 2.4 mm' }, 'stock'],
    [{ fitted: 'A 1, B 1, C 1, D 1 mm' }, 'fitted'],
    [
      {
        pieces: 'up to 3',
        stock: `${Array.from({ length: 300 }, (_, at) => `p${at} ${1 + at / 1000}`).join(', ')} mm`,
      },
      'stock',
    ],
  ])('are refused with %o', (texts, at) => {
    const asked = Object.fromEntries(
      Object.entries({ ...pieces, ...texts }).filter(([, text]) => text !== ''),
    );
    expect(where(asked)).toBe(at);
  });
});
