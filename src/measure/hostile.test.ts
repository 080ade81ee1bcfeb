/** @module Whatever a journal holds, a sheet is judged and doubted without breaking, and says no nonsense. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { micrometer, sheetOf, smallEngine } from '../../test/engines/small-engine.ts';
import { doubtsOf } from './doubts.ts';
import { judge, judgeAll } from './judge.ts';
import { entryOrder } from './scheme.ts';

const units = fc.constantFrom('mm', 'in', 'thou', 'µm', 'bar', '', '__proto__');
const numbers = fc
  .double({ noNaN: true, min: -1e13, max: 1e13 })
  .map((value) => (Math.abs(value) < 1e-6 ? '0' : String(value)));
const texts = fc.oneof(
  { weight: 4, arbitrary: fc.integer({ min: 0, max: 99_999 }).map((value) => (value / 1000).toFixed(3)) },
  { weight: 2, arbitrary: numbers },
  { weight: 1, arbitrary: fc.string({ maxLength: 12 }) },
  { weight: 1, arbitrary: fc.constantFrom('', '-', '1e99', 'NaN', '0', '-0', '1/0', '2 9/16', '00000') },
);
const typed = fc.record({ text: texts, unit: units });
const instrument = fc.record(
  {
    name: fc.constant(micrometer.name),
    kind: fc.constant('outside micrometer'),
    range: fc.record({ least: typed, greatest: typed }),
    resolution: typed,
    permissibleError: typed,
    repeatability: typed,
    zero: typed,
    turn: typed,
  },
  { requiredKeys: ['name', 'kind', 'range', 'resolution', 'permissibleError', 'repeatability'] },
);
const cells = entryOrder(smallEngine);
const readings = fc.array(
  fc.record(
    {
      id: fc.uuid(),
      cell: fc.constantFrom(...cells),
      typed,
      instrument: fc.constantFrom(micrometer.name, 'lost', 'constructor'),
      temperature: typed,
    },
    { requiredKeys: ['id', 'cell', 'typed', 'instrument'] },
  ),
  { maxLength: 30 },
);

const isProbability = (value: number | undefined) => value === undefined || (value >= 0 && value <= 1);

describe('a sheet of anything', () => {
  it('is judged and doubted, with probabilities that are some and odds that are none below ten', () => {
    fc.assert(
      fc.property(readings, fc.oneof(instrument, fc.constant(micrometer)), (taken, used) => {
        const sheet = sheetOf(taken, { instruments: new Map([[used.name, used]]) });
        for (const { conformance, expanded = 0, cells: judged, value } of judgeAll(sheet)) {
          expect(isProbability(conformance)).toBe(true);
          expect(expanded).toBeGreaterThanOrEqual(0);
          expect(Number.isFinite(value?.value ?? 0)).toBe(true);
          for (const cell of judged) expect(isProbability(cell.conformance)).toBe(true);
        }
        for (const doubt of doubtsOf(sheet)) {
          expect(doubt.odds).toBeGreaterThanOrEqual(10);
          expect(doubt.odds).toBeLessThanOrEqual(1e9);
          expect(doubt.likely).toHaveLength(doubt.readings.length);
          expect(doubt.says).not.toMatch(/NaN|undefined|Infinity/);
        }
      }),
      { numRuns: 300 },
    );
  }, 60_000);
});

describe('shim packs of any thickness', () => {
  const pumps = cells.filter(({ characteristic }) => characteristic.startsWith('pump-'));

  it('are doubted with odds that can be told', () => {
    const figures = fc.array(
      fc.oneof(
        numbers,
        fc.integer({ min: 0, max: 200 }).map((value) => String(value / 100)),
      ),
      {
        minLength: pumps.length,
        maxLength: pumps.length,
      },
    );
    fc.assert(
      fc.property(figures, (packs) => {
        const taken = pumps.map((cell, index) => ({
          id: `r${index}`,
          cell,
          typed: { text: packs[index] ?? '', unit: 'mm' },
          instrument: micrometer.name,
        }));
        for (const { odds, places, likely } of doubtsOf(sheetOf(taken))) {
          expect(odds).toBeGreaterThanOrEqual(10);
          expect(odds).toBeLessThanOrEqual(1e9);
          expect(likely).toHaveLength(places.length);
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe('a verdict', () => {
  const journal = fc.array(fc.integer({ min: 54_900, max: 55_020 }), { minLength: 4, maxLength: 4 });
  const here = cells.filter(
    (cell) => cell.place === 'main.2' && cell.characteristic === 'main-journal-diameter',
  );
  const taken = (microns: readonly number[]) =>
    here.map((cell, index) => ({
      id: `r${index}`,
      cell,
      typed: { text: ((microns[index] ?? 0) / 1000).toFixed(3), unit: 'mm' },
      instrument: micrometer.name,
    }));

  it('does not depend on the order of reading, nor on what was read elsewhere', () => {
    const [elsewhere] = cells;
    fc.assert(
      fc.property(journal, (microns) => {
        const all = taken(microns);
        const verdict = (readings: typeof all) => {
          const { verdict: says, value } = judge(sheetOf(readings), 'main-journal-diameter', 'main.2');
          return [says, value?.value];
        };
        expect(verdict(all.toReversed())).toEqual(verdict(all));
        const [first] = all;
        if (!first || !elsewhere) throw new Error('no reading');
        expect(verdict([...all, { ...first, id: 'else', cell: elsewhere }])).toEqual(verdict(all));
      }),
    );
  });

  it('never gets better as a journal wears on', () => {
    const rank = ['within', 'unsure', 'outside'];
    fc.assert(
      fc.property(fc.integer({ min: 54_900, max: 54_980 }), fc.nat({ max: 60 }), (microns, wear) => {
        const verdict = (size: number) =>
          rank.indexOf(
            judge(sheetOf(taken([size, size, size, size])), 'main-journal-diameter', 'main.2').verdict,
          );
        expect(verdict(microns - wear)).toBeGreaterThanOrEqual(verdict(microns));
      }),
    );
  });
});
