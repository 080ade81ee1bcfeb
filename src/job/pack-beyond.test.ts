/** @module Packs that no pump is made to take, and packs that were lost. */
import { describe, expect, it } from 'vitest';
import { mm } from '../../test/job/bench.ts';
import { type SpillBench, spilling, spillingEngine } from '../../test/job/spilling.ts';
import { pumpPacksOf } from './pumps.ts';
import { toMeasure } from './to-measure.ts';

const pump = (bench: SpillBench, place: string) =>
  pumpPacksOf(bench.open).pumps.find((one) => one.place === place);

describe('a pack needed beyond what the pump is made to take', () => {
  // source: the sums by hand; datum 60.00 mm, packs from 0.20 to 1.20 mm
  it('that is too thin under a flange points at wear, at the cam where its lift is short', () => {
    const bench = spilling();
    bench.read('pump.1', '59.40');
    bench.read('pump.2', '59.95');
    expect(pump(bench, 'pump.1')?.beyond).toBeUndefined();
    expect(pump(bench, 'pump.2')?.beyond).toMatchObject({ way: 'thinner', tappet: 'too deep' });
    expect(pump(bench, 'pump.2')?.beyond?.by).toBeCloseTo(0.15, 9);
    expect(pump(bench, 'pump.2')?.beyond?.says).toBe(
      'needs 0.050 mm, 0.150 mm less than the thinnest pack that the pump is made to take (0.200 mm): the tappet stands too deep',
    );
    expect(pump(bench, 'pump.2')?.beyond?.lookAt[0]).toBe(
      'wear of cam, roller or tappet: measure the lift of its cam',
    );
    bench.take('pump.1', 'pump-lift', mm('8.000'), 'mic-0-25');
    bench.take('pump.2', 'pump-lift', mm('7.840'), 'mic-0-25');
    expect(pump(bench, 'pump.2')?.beyond?.lookAt[0]).toBe(
      'fuel pump 2 lifts 7.840 mm, 0.160 mm less than the highest: the cam is worn',
    );
    bench.take('pump.2', 'pump-lift', mm('7.990'), 'mic-0-25');
    expect(pump(bench, 'pump.2')?.beyond?.lookAt[0]).toMatch(/^wear of its roller or tappet: .* as much as/);
  });

  it('that is too thick under a flange points at no wear', () => {
    const bench = spilling();
    bench.read('pump.1', '58.70');
    bench.read('pump.2', '59.40');
    expect(pump(bench, 'pump.1')?.beyond).toMatchObject({ way: 'thicker', tappet: 'too high' });
    expect(pump(bench, 'pump.1')?.beyond?.lookAt.join()).toMatch(/^dirt, burrs .*,wrong parts.*,the datum/);
  });

  it('of every pump the same way points at datum and timing point first', () => {
    const bench = spilling();
    bench.read('pump.1', '58.70');
    bench.read('pump.2', '58.60');
    expect(pump(bench, 'pump.1')?.beyond?.lookAt[0]).toMatch(
      /all pumps are out the same way: the datum \(60\.000 mm\)/,
    );
  });

  it('under a button asks for thicker where the tappet stands deep', () => {
    const bench = spilling(
      spillingEngine
        .replace('shims-sit: under the pump flange', 'shims-sit: under the tappet button')
        .replace('adding-shims: retards', 'adding-shims: advances\n  pack-is: depth less datum')
        .replace('datum: 60.00 mm', 'datum: 58.80 mm'),
    );
    bench.read('pump.1', '60.10');
    bench.read('pump.2', '59.40');
    expect(pump(bench, 'pump.1')?.needed).toBeCloseTo(1.3, 9);
    expect(pump(bench, 'pump.1')?.beyond).toMatchObject({ way: 'thicker', tappet: 'too deep' });
    expect(pump(bench, 'pump.2')?.needed).toBeCloseTo(0.6, 9);
  });
});

describe('a pack that is lost', () => {
  const lose = (bench: SpillBench, place: string, says = 'lost, the labels came off in the bath') =>
    bench.done({ kind: 'answer ask', operation: 'lift-pumps', ask: 'pack', place, good: true, says });

  it('is answered with why, asks for no reading any more, and bars nothing', () => {
    const bench = spilling();
    const left = () =>
      toMeasure(bench.open).left.map(({ place, characteristic }) => `${place} ${characteristic}`);
    expect(left()).toContain('pump.1 pump-pack-found');
    lose(bench, 'pump.1');
    expect(left()).not.toContain('pump.1 pump-pack-found');
    expect(left()).toContain('pump.2 pump-pack-found');
    bench.take('pump.2', 'pump-pack-found', mm('0.70'), 'mic-0-25');
    bench.done({ kind: 'do operation', operation: 'lift-pumps', note: '' });
    bench.read('pump.1', '59.40');
    bench.read('pump.2', '59.30');
    bench.done({
      kind: 'count shims',
      shims: [
        { thickness: mm('0.10'), count: 20 },
        { thickness: mm('0.50'), count: 2 },
      ],
    });
    expect(pump(bench, 'pump.1')).toMatchObject({ lost: { says: 'lost, the labels came off in the bath' } });
    expect(pump(bench, 'pump.1')?.chosen?.thickness).toBeCloseTo(0.6, 9);
  });

  it('and found again counts as measured', () => {
    const bench = spilling();
    lose(bench, 'pump.1');
    bench.take('pump.1', 'pump-pack-found', mm('0.60'), 'mic-0-25');
    expect(pump(bench, 'pump.1')?.lost).toBeUndefined();
    expect(pump(bench, 'pump.1')?.found?.thickness).toBeCloseTo(0.6, 9);
  });
});
