/** @module Which operations may be signed, and when an engine may run and be handed over. */
import { describe, expect, it } from 'vitest';
import { agreed, type Bench, bookedIn, measured, mm, plan } from '../../../test/job/bench.ts';
import { checkChain } from '../../journal/chain.ts';
import { replay } from '../evolve.ts';
import { openDoubts } from '../hold/proof.ts';

describe('an operation', () => {
  const operation = (name: string) => ({ kind: 'do operation', operation: name, note: '' }) as const;

  it('that is not there is refused with one that is', () => {
    expect(bookedIn().refused(operation('lift-crank'))).toContain('lift-crankshaft');
  });

  it('of the build waits for the plan, the agreement and what comes before it', () => {
    const bench = measured();
    expect(bench.refused(operation('lay-crankshaft'))).toMatch(
      /no plan is chosen; “Lift the crankshaft” is not done/,
    );
    bench.done(plan);
    expect(bench.refused(operation('lay-crankshaft'))).toContain('the owner has not agreed');
    bench.done({ kind: 'note agreement', name: 'W. Heron', how: 'by letter' });
    bench.done(operation('lift-crankshaft'));
    bench.done(operation('lay-crankshaft'));
    expect(bench.refused(operation('lay-crankshaft'))).toContain('signed by Ilse Quarrow');
  });

  it('at a hold point is held back by what is not read, outside or unsure, and says which', () => {
    const bench = agreed();
    bench.done(operation('lift-crankshaft'));
    const { id } = bench.read('main.2', '49.900', 'horizontal');
    expect(bench.refused(operation('lay-crankshaft'))).toContain(
      'main journal diameter at main bearing 2 is outside its limits',
    );
    bench.read('main.2', '49.940', 'horizontal');
    expect(bench.refused(operation('lay-crankshaft'))).toContain('too near its limit');
    bench.done({ kind: 'strike out reading', reading: id, why: 'dirt' });
    for (const [place, taken] of bench.open.sheet.readings)
      for (const one of taken)
        if (place.startsWith('main.2|'))
          bench.done({ kind: 'strike out reading', reading: one.id, why: 'to be read again' });
    expect(bench.refused(operation('lay-crankshaft'))).toMatch(
      /main journal diameter at main bearing 2 is not yet known.*read main bearing 2, main journal diameter, vertical/,
    );
  });

  it('at a hold point waits until a doubt about its proof is answered', () => {
    const bench = agreed();
    bench.done(operation('lift-crankshaft'));
    bench.done(operation('lay-crankshaft'));
    bench.read('pump.1', '59.40');
    // The manual gives no limits for the depth, so that nothing but a doubt speaks against a slipped decimal.
    bench.read('pump.2', '5.941');
    expect(bench.refused(operation('fit-pumps'))).toContain('a reading is in doubt');
    const doubts = openDoubts(bench.open);
    for (const { id } of doubts)
      bench.done({ kind: 'answer doubt', doubt: id, why: 'pump 2 is another make' });
    bench.done(operation('fit-pumps'));
  });
});

describe('running and handing over', () => {
  const step = {
    kind: 'log run step',
    speed: { text: '1500', unit: 'rpm' },
    load: { text: '50', unit: '%' },
    minutes: 20,
    note: '',
  } as const;
  const handOver = { kind: 'hand over', to: 'W. Heron', note: '' } as const;
  const operation = (name: string) => ({ kind: 'do operation', operation: name, note: '' }) as const;

  const ready = (pump2: string): Bench => {
    const bench = agreed();
    bench.done(operation('lift-crankshaft'));
    bench.done(operation('lay-crankshaft'));
    bench.read('pump.1', '59.40');
    bench.read('pump.2', pump2);
    bench.done({ kind: 'count shims', shims: [{ thickness: mm('0.30'), count: 4 }] });
    bench.done(operation('fit-pumps'));
    return bench;
  };

  it('carries the job to its end, after which nothing can be added', () => {
    const bench = ready('59.42');
    expect(bench.refused(handOver)).toMatch(
      /“First start” is not done; no shim pack is fitted under fuel pump 1/,
    );
    bench.done({ kind: 'fit pack', place: 'pump.1', shims: [mm('0.30'), mm('0.30')] });
    bench.done({ kind: 'fit pack', place: 'pump.2', shims: [mm('0.30'), mm('0.30')] });
    bench.done(operation('first-start'));
    bench.done(step);
    expect(bench.refused({ ...handOver, to: '' })).toContain('to whom');
    bench.done(handOver);
    expect(bench.refused(step)).toContain('handed over to W. Heron');
    expect(bench.refused(handOver)).toContain('handed over to W. Heron');
    expect(checkChain(bench.events).kind).toBe('answer');
    expect(replay(bench.events)).toEqual(bench.job);
  });

  it('hands no engine over with a pack further off than the manual lets it be', () => {
    const bench = ready('59.46');
    for (const place of ['pump.1', 'pump.2'])
      bench.done({ kind: 'fit pack', place, shims: [mm('0.30'), mm('0.30')] });
    bench.done(operation('first-start'));
    expect(bench.refused(handOver)).toContain('the shim pack under fuel pump 2 is further off');
  });

  it('logs no run of an engine that is not built, and no step that makes no sense', () => {
    expect(agreed().refused(step)).toContain('Lay the crankshaft');
    const bench = ready('59.40');
    expect(bench.refused({ ...step, speed: { text: 'fast', unit: 'rpm' } })).toContain('run step, speed');
    expect(bench.refused({ ...step, load: { text: '50', unit: 'mm' } })).toContain('run step, load');
    expect(bench.refused({ ...step, minutes: 0 })).toContain('minutes');
    expect(bench.refused({ ...step, oilPressure: { text: '3', unit: '°C' } })).toContain('oil pressure');
    bench.done({ ...step, load: { text: '60', unit: 'N·m' }, oilPressure: { text: '3.2', unit: 'bar' } });
  });
});
