/** @module What a job did with which instrument, as the register asks. */
import { describe, expect, it } from 'vitest';
import { agreed, bookedIn, depthGauge, micrometer, mm } from '../../test/job/bench.ts';
import { usesOf } from './instrument-use.ts';

describe('the uses of instruments in a job', () => {
  it('are its readings that count, with where, when and by whom', () => {
    const bench = bookedIn();
    const first = bench.read('main.1', '49.980', 'vertical');
    const struck = bench.read('main.1', '49.480', 'horizontal');
    bench.done({ kind: 'strike out reading', reading: struck.id, why: 'thimble' });
    const { uses, number } = usesOf(bench.open, bench.events);
    expect(number).toBe('26-031');
    expect(uses).toEqual([
      {
        id: first.id,
        at: first.at,
        by: 'Ilse Quarrow',
        instrument: micrometer.name,
        masters: [],
        where: 'main bearing 1, main journal diameter, vertical',
        typed: mm('49.980'),
      },
    ]);
  });

  it('name what a gauge was set in, with when, and end where masters go in a circle', () => {
    const bench = bookedIn();
    const set = bench.done({
      kind: 'bring instrument',
      instrument: { ...depthGauge, setTo: { master: micrometer.name, size: mm('40'), shown: mm('0') } },
    });
    bench.read('pump.1', '60.12');
    expect(usesOf(bench.open, bench.events).uses[0]?.masters).toEqual([
      { name: micrometer.name, at: set.at },
    ]);
    bench.done({
      kind: 'bring instrument',
      instrument: { ...micrometer, setTo: { master: depthGauge.name, size: mm('40'), shown: mm('0') } },
    });
    bench.read('pump.2', '60.12');
    expect(usesOf(bench.open, bench.events).uses[1]?.masters.map(({ name }) => name)).toEqual([
      micrometer.name,
    ]);
  });

  it('are the joints too that were made while a torque wrench was at the bench', () => {
    const bench = agreed();
    const torque = (text: string) => ({ text, unit: 'N·m' });
    const wrench = {
      name: 'wrench-40-200',
      kind: 'torque wrench',
      range: { least: torque('40'), greatest: torque('200') },
      resolution: torque('1'),
      permissibleError: torque('8'),
      repeatability: torque('2'),
    };
    bench.done({ kind: 'do operation', operation: 'lift-crankshaft', note: '' });
    bench.done({ kind: 'bring instrument', instrument: wrench });
    const before = usesOf(bench.open, bench.events).uses.length;
    const build = [...bench.open.sheet.engine.operations.values()].find(({ phase }) => phase === 'build');
    bench.done({ kind: 'do operation', operation: build?.name ?? '', note: '' });
    expect(usesOf(bench.open, bench.events).uses.slice(before)).toMatchObject([
      { instrument: 'wrench-40-200', where: build?.title },
    ]);
    const cell = { place: 'main.1', characteristic: 'main-journal-diameter', plane: '', axis: 'vertical' };
    expect(
      bench.refused({ kind: 'take reading', cell, typed: mm('49.98'), instrument: wrench.name }),
    ).toMatch(/torque wrench and measures no length/);
  });
});
