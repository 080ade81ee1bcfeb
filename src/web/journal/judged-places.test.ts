/** @module Checks that verdicts worked out in part are those worked out anew, whatever was read before. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import engineText from '../../../demo/engines/quillfeather-3w.yaml?raw';
import { instruments } from '../../../demo/instruments.ts';
import { known } from '../../../test/known.ts';
import { readEngineType } from '../../engine/read-engine-type.ts';
import { instrumentsFor } from '../../measure/instrument-for.ts';
import { cellKey, type Reading } from '../../measure/reading.ts';
import { entryOrder } from '../../measure/scheme.ts';
import type { Sheet } from '../../measure/sheet.ts';
import { extentOf, wholeEngine } from '../../work/extent.ts';
import { placesJudge } from './judged-places.ts';

const { engine } = readEngineType(engineText);
if (!engine) throw new Error('the demo engine type does not read');
const order = entryOrder(engine);

const whole = wholeEngine(engine);
const onePump = known(extentOf(engine, { reach: ['pump.2'] }));

const blank: Sheet = {
  engine,
  instruments: new Map(instruments.map((one) => [one.name, one])),
  readings: new Map(),
  sizesFound: new Map(),
  conformance: 0.95,
};

const instrumentOf = new Map(
  order.map(({ characteristic }) => [
    characteristic,
    instrumentsFor(blank, characteristic, instruments)[0]?.name ?? '',
  ]),
);

/** A sheet with one more reading, or with a cell's last reading struck out. */
const changed = (
  sheet: Sheet,
  [at, share, strike]: readonly [number, number, boolean],
  count: number,
): Sheet => {
  const cell = order[at % order.length];
  if (!cell) return sheet;
  const key = cellKey(cell);
  const before = sheet.readings.get(key) ?? [];
  const readings = new Map(sheet.readings);
  if (strike) {
    const left = before.slice(0, -1);
    if (left.length === 0) readings.delete(key);
    else readings.set(key, left);
    return { ...sheet, readings };
  }
  const { least = 0, greatest = 1 } = engine.characteristics.get(cell.characteristic)?.limits?.goesBack ?? {};
  const size = least + (greatest - least) * share;
  const reading: Reading = {
    id: `r${count}`,
    cell,
    typed: { text: size.toFixed(3), unit: 'mm' },
    instrument: instrumentOf.get(cell.characteristic) ?? '',
  };
  return { ...sheet, readings: readings.set(key, [...before, reading]) };
};

const changes = fc.array(
  fc.tuple(fc.nat({ max: order.length - 1 }), fc.double({ min: -0.3, max: 1.3, noNaN: true }), fc.boolean()),
  { minLength: 1, maxLength: 25 },
);

describe('verdicts of the places', () => {
  it('are the same worked out in part as worked out anew', () => {
    fc.assert(
      fc.property(changes, fc.constantFrom(whole, onePump), (steps, extent) => {
        const judgeInPart = placesJudge();
        let sheet = blank;
        judgeInPart(sheet, extent);
        for (const [count, step] of steps.entries()) {
          sheet = changed(sheet, step, count);
          const inPart = judgeInPart(sheet, extent);
          const anew = placesJudge()({ ...sheet }, extent);
          expect(inPart.marks).toEqual(anew.marks);
          expect(inPart.judged).toEqual(anew.judged);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('leave the marks as they are, the very object, while none changes', () => {
    const judgePlaces = placesJudge();
    const one = changed(blank, [0, 0.5, false], 1);
    const two = changed(one, [0, 0.51, false], 2);
    expect(judgePlaces(two, whole).marks).toBe(judgePlaces(two, whole).marks);
    const before = judgePlaces(one, whole).marks;
    expect(judgePlaces(two, whole).marks).toBe(before);
  });

  it('mark what a job leaves shut as not opened, until something is read there all the same', () => {
    const marks = placesJudge()(blank, onePump).marks;
    expect(marks.get('pump.2')).toBe('nothing yet');
    expect(marks.get('pump.1')).toBe('not opened');
    expect(marks.get('bore.3')).toBe('not opened');
    const read = changed(blank, [order.findIndex(({ place }) => place === 'bore.3'), 0.5, false], 1);
    expect(placesJudge()(read, onePump).marks.get('bore.3')).toBe('read in part');
  });
});
