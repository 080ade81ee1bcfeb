/** @module Selective fitting: every way of small stocks, sorted order of large ones, and what is said where it cannot be. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { everyWay } from '../../test/every-way.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { verdictOf } from '../measure/guard-band.ts';
import { uncertain } from '../quantity/uncertain.ts';
import { fitParts } from './fit.ts';
import type { FitQuestion } from './fit-question.ts';
import { reckonByName } from './list.ts';

const rule = { kind: 'guarded', conformance: 0.95 } as const;
const limits = { least: 0.04, greatest: 0.08 };
const micrometres = (value: number) => value / 1000;

/** Rooms and parts in whole micrometres about a clearance of 60 µm, each known to so many. */
const stock = (
  rooms: readonly number[],
  sizes: readonly number[],
  u = 0,
  more: Partial<FitQuestion> = {},
): FitQuestion => ({
  places: rooms.map((room, at) => ({
    name: `main.${at + 1}`,
    room: uncertain(2 + micrometres(room), `room ${at}`, micrometres(u)),
    limits,
  })),
  parts: sizes.map((size, at) => ({
    name: `P${at + 1}`,
    size: uncertain(2 + micrometres(size), `part ${at}`, micrometres(u)),
  })),
  goes: 'inside',
  takes: [''],
  rule,
  ...more,
});

/** Every way of serving places with one part each, best first, by arithmetic on whole micrometres. */
const everyFit = (rooms: readonly number[], sizes: readonly number[], u: number) =>
  everyWay(
    rooms.length,
    sizes.map((_, at) => at),
  )
    .map((taken) => {
      const gaps = taken.map((part, place) => (rooms[place] ?? 0) - (sizes[part] ?? 0));
      const within = gaps.every(
        (gap) => verdictOf(gap, u * Math.SQRT2, Infinity, { least: 40, greatest: 80 }, 0.95) === 'within',
      );
      const offs = gaps.map((gap) => Math.abs(gap - 60));
      return { taken, within, greatest: Math.max(...offs), sum: offs.reduce((a, b) => a + b, 0) };
    })
    .filter(({ within }) => within)
    .sort((a, b) => a.greatest - b.greatest || a.sum - b.sum);

const answered = (question: FitQuestion) => {
  const set = fitParts(question);
  if (set.kind === 'refused') throw new Error(set.refusal.what);
  return set.value;
};

const reckoned = (texts: Readonly<Record<string, string>>) => {
  const asked = reckonByName('assign', texts);
  if (asked.kind === 'refused') throw new Error(`${asked.refusal.what} (${asked.refusal.where})`);
  return asked.value;
};

describe('parts fitted to places', () => {
  it('are the best of every way to fit them, or there is no way', () => {
    const micron = fc.integer({ min: 0, max: 50 });
    let none = 0;
    fc.assert(
      fc.property(
        fc.array(micron, { minLength: 1, maxLength: 4 }),
        fc.array(micron, { minLength: 1, maxLength: 6 }),
        fc.constantFrom(0, 2, 6),
        (gaps, sizes, u) => {
          const rooms = gaps.map((gap) => gap + 60);
          const [best] = everyFit(rooms, sizes, u);
          const set = answered(stock(rooms, sizes, u));
          if (set.kind === 'lacking') {
            none += 1;
            expect(best).toBeUndefined();
            expect(set.parts?.length).toBeLessThan(set.places.length);
            return;
          }
          expect(set.greatestOff * 1000).toBeCloseTo(best?.greatest ?? Number.NaN, 6);
          expect(set.sumOff * 1000).toBeCloseTo(best?.sum ?? Number.NaN, 6);
          expect(new Set(set.fits.flatMap(({ parts }) => parts)).size).toBe(rooms.length);
        },
      ),
      { numRuns: 1500 },
    );
    expect(none).toBeGreaterThan(50);
  });

  it('stand in order of size where there are as many parts as places', () => {
    // source: on a line, sorted to sorted is least in greatest and in sum (exchange of two that cross)
    const sizes = fc.uniqueArray(fc.integer({ min: 0, max: 16_000 }), { minLength: 2, maxLength: 40 });
    fc.assert(
      fc.property(sizes, fc.infiniteStream(fc.integer({ min: -1500, max: 1500 })), (nanometres, wander) => {
        const off = wander;
        const rooms = nanometres.map((size) => 60 + size / 1000 + (off.next().value ?? 0) / 1000);
        const parts = nanometres.map((size) => size / 1000);
        const sorted = (all: readonly number[]) => [...all].sort((a, b) => a - b);
        const offs = sorted(rooms).map((room, at) => Math.abs(room - (sorted(parts)[at] ?? 0) - 60));
        const set = answered(stock(rooms, parts));
        if (set.kind === 'lacking') throw new Error(set.says);
        expect(set.greatestOff * 1000).toBeCloseTo(Math.max(...offs), 3);
        expect(set.sumOff * 1000).toBeCloseTo(
          offs.reduce((a, b) => a + b, 0),
          2,
        );
      }),
      { numRuns: 100 },
    );
  });

  it('go round what is there, as liners do', () => {
    const set = answered(stock([0], [61, 59.5, 70], 0, { goes: 'outside' }));
    expect(set.kind === 'fitted' && set.fits[0]?.parts).toEqual(['P2']);
    expect(set.kind === 'fitted' && set.fits[0]?.off).toBeCloseTo(-0.0005, 9);
  });

  it('are not counted on where their ± reaches past the limits', () => {
    expect(answered(stock([79], [0])).kind).toBe('fitted');
    // source: ISO 14253-1, 1.645 × √2 × 1 µm = 2.3 µm is more than the 1 µm that is left
    expect(answered(stock([79], [0], 1)).kind).toBe('lacking');
  });

  it('are said to be lacking with the places, the parts that fit any of them, and the sizes that would serve', () => {
    const set = answered(stock([60, 62, 200], [0, 140]));
    if (set.kind !== 'lacking') throw new Error('one part cannot serve two places');
    expect(set.places).toEqual(['main.1', 'main.2']);
    expect(set.parts).toEqual(['P1']);
    // source: by hand, room 2.060 less 0.080 and less 0.040
    expect(set.wanted[0]).toEqual({
      place: 'main.1',
      least: expect.closeTo(1.98, 9),
      greatest: expect.closeTo(2.02, 9),
    });
    expect(set.says).toBe(
      'main.1, main.2 are 2 places, and 1 part fits any of them (P1); what would serve is a part of 1.980 to 2.020 mm for main.1, 1.982 to 2.022 mm for main.2',
    );
  });
});

describe('two parts to a place', () => {
  const pairsOf = (count: number) =>
    Array.from({ length: count }, (_, a) =>
      Array.from({ length: count - a - 1 }, (_, b) => [a, a + b + 1] as const),
    ).flat();

  /** Every way of giving each room two parts of its own. */
  const best = (
    rooms: readonly number[],
    sizes: readonly number[],
  ): readonly [number, number] | undefined => {
    let found: [number, number] | undefined;
    const search = (at: number, used: ReadonlySet<number>, greatest: number, sum: number): void => {
      const room = rooms[at];
      if (room === undefined) {
        if (!found || greatest < found[0] || (greatest === found[0] && sum < found[1]))
          found = [greatest, sum];
        return;
      }
      for (const [a, b] of pairsOf(sizes.length)) {
        if (used.has(a) || used.has(b)) continue;
        const off = Math.abs(room - (sizes[a] ?? 0) - (sizes[b] ?? 0) - 60);
        if (off <= 20) search(at + 1, new Set([...used, a, b]), Math.max(greatest, off), sum + off);
      }
    };
    search(0, new Set(), 0, 0);
    return found;
  };

  it('are the best of every way to pair and to place them, or there is no way', () => {
    const micron = fc.integer({ min: 0, max: 30 });
    let none = 0;
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 60 }), { minLength: 1, maxLength: 3 }),
        fc.array(micron, { minLength: 2, maxLength: 7 }),
        (gaps, sizes) => {
          const rooms = gaps.map((gap) => gap + 60);
          const question = stock(
            rooms.map((room) => room + 2000),
            sizes,
            0,
            { takes: ['', ''] },
          );
          const set = answered(question);
          const every = best(rooms, sizes);
          expect(set.kind === 'lacking').toBe(every === undefined);
          if (set.kind === 'lacking') {
            none += 1;
            const at = set.places.map((name) => question.places.findIndex((place) => place.name === name));
            expect(
              best(
                at.map((each) => rooms[each] ?? 0),
                sizes,
              ),
            ).toBeUndefined();
            for (const left of at)
              expect(
                best(
                  at.filter((each) => each !== left).map((each) => rooms[each] ?? 0),
                  sizes,
                ),
              ).toBeDefined();
            return;
          }
          expect(set.proved).toBe(true);
          expect(set.greatestOff * 1000).toBeCloseTo(every?.[0] ?? Number.NaN, 6);
          expect(set.sumOff * 1000).toBeCloseTo(every?.[1] ?? Number.NaN, 6);
          expect(new Set(set.fits.flatMap(({ parts }) => parts)).size).toBe(2 * rooms.length);
        },
      ),
      { numRuns: 400 },
    );
    expect(none).toBeGreaterThan(20);
  });

  it('are one upper and one lower where the halves differ', () => {
    const question = stock([2060], [0, 0, 3], 0, { takes: ['upper', 'lower'] });
    const halves = ['upper', 'upper', 'lower'];
    const set = answered({
      ...question,
      parts: question.parts.map((part, at) => ({ ...part, half: halves[at] ?? '' })),
    });
    expect(set.kind === 'fitted' && set.fits[0]?.parts).toEqual(['P1', 'P3']);
  });

  it('says so when it was stopped before it was sure', () => {
    const sizes = Array.from({ length: 40 }, (_, at) => ((at * 7) % 23) + at / 64);
    const rooms = Array.from({ length: 12 }, (_, at) => 2060 + ((at * 11) % 31) + at / 48);
    const set = answered(stock(rooms, sizes, 0, { takes: ['', ''], effort: 20_000 }));
    expect(set.kind === 'fitted' && set.proved).toBe(false);
  });
});

describe('assign, asked for by name', () => {
  const mains = {
    places: 'main.1 58.063 - 54.981, main.2 58.066±0.002 - 54.978±0.001 mm',
    least: '0.04mm',
    greatest: '0.08mm',
  };

  it('takes one size less another, and the same from the text of a CSV file', () => {
    const list = reckoned({ ...mains, parts: 'A 3.022, B 3.028 mm' });
    outsideCheck(
      'assign',
      'by hand, 58.063 − 54.981 − 3.022 = 0.060 and 58.066 − 54.978 − 3.028 = 0.060: both in the middle',
      'mm',
      1e-9,
    )(Number(list.results['greatest-off']?.value), 0);
    expect(list.results['main.1.parts']?.value).toBe('A');
    outsideCheck(
      'assign',
      'JCGM 100:2008, 5.1.2: √(2² + 1²) / 1.96 = 1.141 µm',
      'mm',
      1e-6,
    )(list.results['main.2.clearance']?.u ?? 0, 0.001141);
    const table = reckoned({
      ...mains,
      places: 'place;housing;journal\nmain.1;58.063 mm;54.981 mm\nmain.2;58.066±0.002 mm;54.978±0.001 mm\n',
      parts: 'part,wall\nA,3.022 mm\nB,3.028 mm\n',
    });
    expect(table.results).toEqual(list.results);
  });

  it('says what is lacking', () => {
    const { results, notes } = reckoned({ ...mains, parts: 'A 3.022 mm' });
    expect(results.assigned?.value).toBe('none');
    expect(notes[0]).toContain('1 part fits any of them (A)');
  });

  it.each([
    [{ parts: 'A 3.022, A 3.028 mm' }, 'A is named twice'],
    [{ parts: 'A 3.022 mm', each: '3' }, '3 parts to a place is out of range'],
    [{ parts: 'A 3.022 mm', goes: 'in' }, 'where parts go is not understood'],
    [{ parts: 'A mm' }, 'it cannot be read as a number'],
    [{ parts: '3.022mm' }, '“3.022mm” is no name with a size'],
    [{ parts: 'A 3.022' }, 'the unit is missing: a length is asked for'],
    [{ parts: 'A 3.022 mm', least: '0.08mm' }, 'the least clearance at main.1 is not below the greatest'],
  ])('refuses %j', (texts, what) => {
    const asked = reckonByName('assign', { ...mains, ...texts });
    expect(asked.kind === 'refused' && asked.refusal.what).toBe(what);
  });
});
