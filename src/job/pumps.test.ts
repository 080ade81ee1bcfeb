/** @module Shim packs of a job, with figures worked by hand. */
import { describe, expect, it } from 'vitest';
import { agreed, type Bench, bookedIn, depthGauge, mm } from '../../test/job/bench.ts';
import { toDegrees } from '../quantity/brand.ts';
import { shimsInAll } from './box.ts';
import { pumpPacksOf } from './pumps.ts';

const withDepths = (bench: Bench = agreed()): Bench => {
  bench.read('pump.1', '59.40');
  bench.read('pump.2', '59.28');
  return bench;
};

const count = (bench: Bench, rows: Readonly<Record<string, number>>): void => {
  const shims = Object.entries(rows).map(([text, of]) => ({ thickness: mm(text), count: of }));
  bench.done({ kind: 'count shims', shims });
};

const pump = (bench: Bench, place: string) => {
  const found = pumpPacksOf(bench.open).pumps.find((one) => one.place === place);
  if (found === undefined) throw new Error(`no pump at ${place}`);
  return found;
};

describe('the packs of all pumps', () => {
  // source: the sums by hand; datum 60.00 mm less the depth, 2° of crank a millimetre, shims under the flange retard
  it('are needed by the datum less the depth', () => {
    const bench = withDepths();
    expect(pump(bench, 'pump.1').needed).toBeCloseTo(0.6, 9);
    expect(pump(bench, 'pump.2').needed).toBeCloseTo(0.72, 9);
  });

  it('are needed thicker by what the depth gauge shows too much on its master', () => {
    const bench = withDepths();
    bench.done({ kind: 'bring instrument', instrument: { ...depthGauge, zero: mm('0.10') } });
    expect(pump(bench, 'pump.1').needed).toBeCloseTo(0.7, 9);
  });

  it('are chosen from the box for all together, least greatest error first', () => {
    const bench = withDepths();
    count(bench, { '0.50': 2, '0.20': 1, '0.10': 1 });
    // 0.50 + 0.10 fits 0.60; 0.50 + 0.20 comes 0.02 short of 0.72.
    expect(pump(bench, 'pump.1').chosen?.shims).toEqual([0.5, 0.1]);
    expect(pump(bench, 'pump.2').chosen).toMatchObject({ shims: [0.5, 0.2] });
    expect(pump(bench, 'pump.2').chosen?.error).toBeCloseTo(-0.02, 9);
    expect(pumpPacksOf(bench.open).set).toMatchObject({ kind: 'answer', value: { shimsUsed: 4 } });
  });

  it('are chosen from fitted shims too: fitting the chosen ones changes nothing', () => {
    const bench = withDepths();
    count(bench, { '0.50': 2, '0.20': 1, '0.10': 1 });
    const before = pumpPacksOf(bench.open).set;
    bench.done({ kind: 'fit pack', place: 'pump.1', shims: [mm('0.50'), mm('0.10')] });
    expect(pumpPacksOf(bench.open).set).toEqual(before);
    count(bench, { '0.50': 1, '0.20': 1 });
    expect(pumpPacksOf(bench.open).set).toEqual(before);
    expect(shimsInAll(bench.open)).toEqual([
      { thickness: 0.5, count: 2 },
      { thickness: 0.2, count: 1 },
      { thickness: 0.1, count: 1 },
    ]);
  });

  it('show what is fitted against what is needed, late where it is too thick', () => {
    const bench = withDepths();
    count(bench, { '0.50': 3, '0.10': 1, '0.20': 1 });
    bench.done({ kind: 'fit pack', place: 'pump.1', shims: [mm('0.50'), mm('0.20')] });
    bench.done({ kind: 'fit pack', place: 'pump.2', shims: [mm('0.50')] });
    const [first, second] = pumpPacksOf(bench.open).pumps.map(({ fitted }) => fitted);
    expect(first?.error).toBeCloseTo(0.1, 9);
    expect(toDegrees(first?.timingError ?? (0 as never))).toBeCloseTo(-0.2, 9);
    expect(first?.withinTolerance).toBe(false);
    expect(second?.error).toBeCloseTo(-0.22, 9);
    expect(toDegrees(second?.timingError ?? (0 as never))).toBeCloseTo(0.44, 9);
  });

  it('are within the tolerance up to and with its last hundredth', () => {
    const bench = agreed();
    bench.read('pump.1', '59.45');
    bench.read('pump.2', '59.44');
    count(bench, { '0.50': 2, '0.20': 2, '0.30': 4 });
    bench.done({ kind: 'fit pack', place: 'pump.1', shims: [mm('0.50')] });
    bench.done({ kind: 'fit pack', place: 'pump.2', shims: [mm('0.50')] });
    expect(pumpPacksOf(bench.open).pumps.map(({ fitted }) => fitted?.withinTolerance)).toEqual([true, false]);
  });

  it('say what is missing until they can be chosen', () => {
    const bench = agreed();
    bench.read('pump.1', '59.40');
    expect(pump(bench, 'pump.1').missing).toEqual([]);
    expect(pump(bench, 'pump.2').missing).toEqual(['read fuel pump 2, pump depth at the timing point']);
    expect(pumpPacksOf(bench.open).set).toMatchObject({
      refusal: {
        what: '1 depth is not yet measured',
        remedy: 'read fuel pump 2, pump depth at the timing point',
      },
    });
    bench.read('pump.2', '59.28');
    expect(pumpPacksOf(bench.open).set).toMatchObject({ refusal: { remedy: 'count the shims in the box' } });
  });

  it('are none where no pump is timed by shims', () => {
    const bench = bookedIn();
    const { pumpTiming: _, ...engine } = bench.open.sheet.engine;
    const packs = pumpPacksOf({ ...bench.open, sheet: { ...bench.open.sheet, engine } });
    expect(packs).toMatchObject({ pumps: [], set: { kind: 'refused' } });
  });
});
