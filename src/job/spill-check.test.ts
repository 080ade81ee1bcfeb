/** @module The second spill: off by how much, which pack puts it right, and a change that went the wrong way. */
import { describe, expect, it } from 'vitest';
import { packed, type SpillBench, spilling } from '../../test/job/spilling.ts';
import { toDegrees } from '../quantity/brand.ts';
import { standingOf } from './holds.ts';
import { packIsOff, pumpPacksOf } from './pumps.ts';

const pump = (bench: SpillBench, place: string) => {
  const found = pumpPacksOf(bench.open).pumps.find((one) => one.place === place);
  if (found === undefined) throw new Error(`no pump at ${place}`);
  return found;
};
const checked = (bench: SpillBench) => {
  const all = pumpPacksOf(bench.open).checked;
  if (all === undefined) throw new Error('the engine type asks for no second check');
  return all;
};
const check = (bench: SpillBench, place: string) => {
  const { check: one } = pump(bench, place);
  if (one === undefined) throw new Error(`nothing is read at ${place}`);
  return one;
};
const operation = (bench: SpillBench, name: string) => {
  const known = bench.open.sheet.engine.operations.get(name);
  if (known === undefined) throw new Error(`no operation ${name}`);
  return standingOf(bench.open, known);
};

describe('the second check of a pump', () => {
  // source: the sums by hand; nominal 24° before the top, shims retard by 10° a millimetre
  it('tells how early or late it delivers, from the mean of its repeats', () => {
    const bench = packed();
    expect(pump(bench, 'pump.1').check).toBeUndefined();
    bench.spill('pump.1', '24.3');
    bench.spill('pump.1', '24.5');
    bench.spill('pump.2', '23.9');
    expect(toDegrees(check(bench, 'pump.1').error)).toBeCloseTo(0.4, 9);
    expect(check(bench, 'pump.1')).toMatchObject({ verdict: 'within', repeats: 2 });
    expect(toDegrees(check(bench, 'pump.2').error)).toBeCloseTo(-0.1, 9);
    expect(toDegrees(checked(bench).spread ?? (0 as never))).toBeCloseTo(0.5, 9);
    expect(checked(bench)).toMatchObject({ read: 2, of: 2, spreadTooWide: false, off: [], notes: [] });
  });

  it('holds the operation after the pumps until every pump is read and within', () => {
    const bench = packed();
    for (const name of ['lift-pumps', 'lift-crankshaft', 'lay-crankshaft', 'fit-pumps']) {
      const known = bench.open.sheet.engine.operations.get(name);
      if (known?.asks.length)
        for (const place of ['pump.1', 'pump.2'])
          bench.done({
            kind: 'answer ask',
            operation: name,
            ask: 'pack',
            place,
            good: true,
            says: 'lost before',
          });
      bench.done({ kind: 'do operation', operation: name, note: '' });
    }
    bench.spill('pump.1', '24.0');
    expect(operation(bench, 'check-spill')).toMatchObject({ kind: 'held', lacking: [{}] });
    bench.spill('pump.2', '26.0');
    expect(operation(bench, 'check-spill')).toMatchObject({
      lacking: [{ says: expect.stringContaining('outside') }],
    });
    bench.put('pump.2', '0.50', '0.30', '0.10');
    bench.spill('pump.2', '24.1');
    expect(operation(bench, 'check-spill')).toMatchObject({ kind: 'open' });
    bench.done({ kind: 'do operation', operation: 'check-spill', note: '' });
    expect(
      bench.refused({ kind: 'fit pack', place: 'pump.2', shims: [{ text: '0.50', unit: 'mm' }] }),
    ).toContain('“Check the spill” is signed with the packs as they are');
  });

  it('proves nothing as long as no pack is noted under the pump, and is taken again with the pack', () => {
    const bench = spilling();
    bench.spill('pump.1', '24.0');
    const lacking = () => {
      const standing = operation(bench, 'check-spill');
      return standing.kind === 'held' ? standing.lacking : [];
    };
    const unpacked = () => lacking().filter(({ says }) => says.startsWith('no shim pack is noted'));
    expect(unpacked()).toMatchObject([
      {
        says: expect.stringContaining('under fuel pump 1'),
        remedy: 'note the pack that is fitted first, then take the reading',
        overrule: 'never',
        goTo: { kind: 'operation', operation: 'fit-pumps' },
      },
      { says: expect.stringContaining('under fuel pump 2') },
    ]);
    bench.read('pump.1', '59.40');
    bench.done({ kind: 'count shims', shims: [{ thickness: { text: '0.30', unit: 'mm' }, count: 2 }] });
    bench.put('pump.1', '0.30', '0.30');
    expect(unpacked()).toHaveLength(1);
    const unread = () => lacking().filter(({ says }) => says.includes('fuel pump 1 is not yet known'));
    expect(unread()).toHaveLength(1);
    bench.spill('pump.1', '24.0');
    expect(unread()).toEqual([]);
  });

  it('that is off names the pack that puts it right, thicker where it is early, and leaves the others theirs', () => {
    const bench = packed();
    bench.spill('pump.1', '24.1');
    bench.spill('pump.2', '26.0');
    // 2° early: 0.20 mm more than the 0.70 fitted.
    expect(checked(bench).off).toEqual(['pump.2']);
    expect(pump(bench, 'pump.1').putRight).toBeUndefined();
    expect(pump(bench, 'pump.2').putRight?.needed).toBeCloseTo(0.9, 9);
    expect(pump(bench, 'pump.2').putRight?.thickness).toBeCloseTo(0.9, 9);
  });

  it('speaks of the pack that is in: another pack asks for another reading, the same one does not', () => {
    const bench = packed();
    bench.spill('pump.2', '26.0');
    bench.put('pump.2', '0.20', '0.5');
    expect(check(bench, 'pump.2').verdict).toBe('outside');
    bench.put('pump.2', '0.50', '0.30', '0.10');
    expect(pump(bench, 'pump.2').check).toBeUndefined();
    expect(bench.open.packsTried.get('pump.2')).toMatchObject([{ checks: [{ typed: { text: '26.0' } }] }]);
  });

  it('after a change that went as it should says so', () => {
    const bench = packed();
    bench.spill('pump.2', '26.0');
    bench.put('pump.2', '0.50', '0.30', '0.10');
    bench.spill('pump.2', '24.1');
    expect(check(bench, 'pump.2').moved).toMatchObject({ went: 'as it should' });
    expect(check(bench, 'pump.2').moved?.says).toBe(
      'the pack was made 0.200 mm thicker, which makes the pump 2.00° later; it came 1.90° later',
    );
  });

  it('that is put right stands, though by its depth another pack was needed', () => {
    const bench = packed();
    bench.spill('pump.1', '24.0');
    bench.spill('pump.2', '26.0');
    bench.put('pump.2', '0.50', '0.30', '0.10');
    // By the depth alone it is 0.20 mm too thick.
    expect(packIsOff(pump(bench, 'pump.2'))).toBe(true);
    bench.spill('pump.2', '24.1');
    expect(packIsOff(pump(bench, 'pump.2'))).toBe(false);
    expect(bench.refused({ kind: 'hand over', to: 'W. Heron', note: '' })).not.toContain('further off');
  });

  it('that is worse after the change doubts the sign, and proposes no further pack', () => {
    const bench = packed();
    bench.spill('pump.2', '26.0');
    bench.put('pump.2', '0.50', '0.30', '0.10');
    bench.spill('pump.2', '27.9');
    expect(check(bench, 'pump.2').moved).toMatchObject({ went: 'the wrong way' });
    expect(checked(bench).notes.join()).toMatch(/came 1\.90° earlier: the sign of these shims is in doubt/);
    expect(checked(bench).putRight).toMatchObject({ kind: 'refused' });
    expect(pump(bench, 'pump.2').putRight).toBeUndefined();
  });

  it.each([
    ['25.9', 'nowhere'],
    ['25.2', 'not far enough'],
    ['21.0', 'too far'],
  ])('that came to %s° went %s', (text, went) => {
    const bench = packed();
    bench.spill('pump.2', '26.0');
    bench.put('pump.2', '0.50', '0.30', '0.10');
    bench.spill('pump.2', text);
    expect(check(bench, 'pump.2').moved?.went).toBe(went);
  });

  it('asks for another pack where all are within, and too far apart', () => {
    const bench = packed();
    bench.spill('pump.1', '23.3');
    bench.spill('pump.2', '24.5');
    expect(checked(bench)).toMatchObject({ spreadTooWide: true, off: ['pump.1'] });
    expect(checked(bench).notes.join()).toBe('the pumps are 1.20° apart, and 1.00° are allowed');
    expect(pump(bench, 'pump.1').putRight?.needed).toBeCloseTo(0.53, 9);
  });
});
