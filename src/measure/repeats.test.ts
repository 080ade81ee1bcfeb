/** @module Several readings of one cell: their mean, what repeats another, and how well an instrument repeats. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometer, reading, sheetOf, typed } from '../../test/engines/small-engine.ts';
import { effectiveFreedom, standardUncertainty } from '../quantity/uncertain.ts';
import { judge, judgeCell } from './judge.ts';
import type { Reading } from './reading.ts';
import { pooledSpread, repeatAlike, repeatsIn } from './repeats.ts';

const cell = 'main.1 main-journal-diameter front vertical';

const readAgain = (figures: readonly string[], where = cell, more: Partial<Reading> = {}) =>
  figures.map((figure, index) => ({ ...reading(where, typed(figure)), id: `${where} ${index}`, ...more }));

const sizeOf = (figures: readonly string[]) => {
  const [first] = readAgain(figures);
  const judged = first && judgeCell(sheetOf(readAgain(figures)), first.cell);
  if (!judged?.size) throw new Error('no size');
  return judged.size;
};

const termOf = (figures: readonly string[], word: string) =>
  sizeOf(figures).terms.find(({ name }) => name.startsWith(word));

describe('readings of one cell', () => {
  it('have the mean of the repeats as their size', () => {
    expect(sizeOf(['54.980', '54.982', '54.981']).value).toBeCloseTo(54.981, 12);
  });

  it('average out what does not repeat, and nothing else', () => {
    // source: JCGM 100:2008, 4.2.3: s of a mean is s over the root of n; the rest is the same error n times over
    const figures = ['54.980', '54.980', '54.980', '54.980'];
    const starting = { deviation: 0.0015, freedom: 9 };
    // s² = (9 · 0.0015² + 3 · 0) / 12
    const pooled = Math.sqrt((starting.freedom * starting.deviation ** 2) / 12);
    expect(termOf(figures, 'repeat')?.share).toBeCloseTo(pooled / 2, 12);
    expect(termOf(figures, 'repeat')?.freedom).toBe(12);
    for (const word of ['calibration', 'zero', 'temperature', 'resolution']) {
      expect(termOf(figures, word)?.share).toBeCloseTo(termOf(['54.980'], word)?.share ?? Number.NaN, 12);
    }
  });

  it('that lie too far from the last to be repeats of it are replaced by it', () => {
    expect(sizeOf(['55.480', '54.980']).value).toBe(54.98);
    expect(sizeOf(['54.980', '55.480', '54.982']).value).toBeCloseTo(54.981, 12);
    // 4 √2 × 0.0015 mm and a step of 0.001 mm are 9.5 µm.
    expect(sizeOf(['54.980', '54.989']).value).toBeCloseTo(54.9845, 12);
    expect(sizeOf(['54.980', '54.990']).value).toBe(54.99);
  });

  it('are no repeats with another instrument or at another temperature', () => {
    const [first, last] = readAgain(['54.980', '54.982']);
    if (!first || !last) throw new Error('no readings');
    const counts = (changed: Partial<Reading>) =>
      repeatsIn([{ ...first, ...changed }, last], micrometer).length;
    expect(counts({})).toBe(2);
    expect(counts({ instrument: 'mic-2-3' })).toBe(1);
    expect(counts({ temperature: typed('30', '°C') })).toBe(1);
    expect(counts({ typed: typed('a smear') })).toBe(1);
  });

  it('are known the better the more of them there are', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 12 }), (count) => {
        const u = (n: number) => standardUncertainty(sizeOf(Array.from({ length: n }, () => '54.980')));
        expect(u(count + 1)).toBeLessThan(u(count));
      }),
      { numRuns: 12 },
    );
  });

  it('are told apart: how many count, and which were replaced', () => {
    const readings = readAgain(['55.480', '54.981', '54.980']);
    const [first] = readings;
    const judged = first && judgeCell(sheetOf(readings), first.cell);
    expect(judged).toMatchObject({ reading: `${cell} 2`, repeats: 2, replaced: [`${cell} 0`] });
    const [only] = readAgain(['54.980']);
    const once = only && judgeCell(sheetOf([only]), only.cell);
    expect(once).not.toHaveProperty('repeats');
    expect(once).not.toHaveProperty('replaced');
  });

  it('are judged as one size', () => {
    // 5.7 µm inside the wear limit of 54.93, where one reading asks for 6.0 µm of room and eight for 5.5 µm.
    const judged = (figures: readonly string[]) => {
      const readings = readAgain(figures);
      const [first] = readings;
      return first && judgeCell(sheetOf(readings), first.cell);
    };
    expect(judged(['54.9357'])?.verdict).toBe('unsure');
    expect(judged(Array.from({ length: 8 }, () => '54.9357'))?.verdict).toBe('within');
  });
});

describe('how an instrument repeats', () => {
  it('is the starting value where nothing was repeated', () => {
    expect(pooledSpread(sheetOf(readAgain(['54.980'])), micrometer)).toEqual({
      deviation: 0.0015,
      freedom: 9,
    });
  });

  it('is pooled over every cell of the session, with the starting value as ten repeats', () => {
    const rear = cell.replace('front', 'rear');
    const sheet = sheetOf([
      ...readAgain(['54.980', '54.984']),
      ...readAgain(['54.970', '54.973', '54.973'], rear),
    ]);
    // source: JCGM 100:2008, 4.2.4: squares about each cell's own mean over the sum of their degrees of freedom
    const squares = 9 * 0.0015 ** 2 + 2 * 0.002 ** 2 + 2 * 0.001 ** 2 + 0.002 ** 2;
    const pooled = pooledSpread(sheet, micrometer);
    expect(pooled.freedom).toBe(12);
    expect(pooled.deviation).toBeCloseTo(Math.sqrt(squares / 12), 12);
  });

  it('bears on cells read once, which are then other sizes than before', () => {
    const before = sheetOf([
      ...readAgain(['54.980'], cell.replace('front', 'rear')),
      ...readAgain(['54.980']),
    ]);
    const after = sheetOf([
      ...readAgain(['54.980'], cell.replace('front', 'rear')),
      ...readAgain(['54.980', '54.986']),
    ]);
    const at = { place: 'main.1', characteristic: 'main-journal-diameter', plane: 'rear', axis: 'vertical' };
    expect(judgeCell(after, at).expanded).toBeGreaterThan(judgeCell(before, at).expanded ?? 1);
    expect(repeatAlike(before, after)).toBe(false);
    expect(repeatAlike(after, sheetOf([...after.readings.values()].flat()))).toBe(true);
  });

  it('is one estimate, however many readings rest on it', () => {
    // source: JCGM 100:2008, G.4.1: the estimates that are summed must be independent; two readings that rest on the
    // same ten repeats still rest on ten
    const { value } = judge(
      sheetOf(
        ['54.980', '54.940', '54.980', '54.980'].map((figure, index) =>
          reading(
            `main.1 main-journal-diameter ${index < 2 ? 'front' : 'rear'} ${index % 2 ? 'horizontal' : 'vertical'}`,
            typed(figure),
          ),
        ),
      ),
      'main-journal-ovality',
      'main.1',
    );
    // Two repeats of 1.5 µm of nine degrees of freedom, two roundings of 0.29 µm.
    const repeats = 2 * 0.0015 ** 2;
    const all = repeats + (2 * 0.0005 ** 2) / 3;
    expect(value && effectiveFreedom(value)).toBeCloseTo((9 * all ** 2) / repeats ** 2, 6);
  });
});
