/** @module In which phase a job stands, from its booking to its end. */
import { describe, expect, it } from 'vitest';
import { agreed, Bench, bookedIn, booking, measured, mm, plan } from '../../test/job/bench.ts';
import { phaseOf, phasesOf } from './phase.ts';

const doing = (operation: string) => ({ kind: 'do operation', operation, note: '' }) as const;

const states = (bench: Bench): string =>
  phasesOf(bench.job)
    .map(({ state }) => state[0])
    .join('');

describe('the phase of a job', () => {
  it('is Book in before it is booked in', () => {
    const bench = new Bench();
    expect(phaseOf(bench.job)).toMatchObject({ name: 'Book in', state: 'ahead' });
    expect(phaseOf(bench.job).next).not.toBe('');
  });

  it('is Strip after the booking, and says what comes off first', () => {
    const bench = new Bench();
    bench.done(booking);
    expect(phaseOf(bench.job)).toEqual({
      name: 'Strip',
      state: 'ahead',
      done: 0,
      of: 1,
      next: 'Lift the crankshaft',
    });
  });

  it('is Measure once a reading is taken, also in a shop that signs no strip, and names the next cell', () => {
    const bench = bookedIn();
    bench.read('main.1', '49.975', 'vertical');
    expect(phaseOf(bench.job)).toEqual({
      name: 'Measure',
      state: 'begun',
      done: 1,
      of: 4,
      next: 'read main bearing 1, main journal diameter, horizontal',
    });
  });

  it('is Decide when all is read that the decision asks for: what only proves the build can wait', () => {
    const bench = measured();
    expect(phaseOf(bench.job)).toMatchObject({ name: 'Decide', next: 'choose a plan' });
    bench.done(plan);
    expect(phaseOf(bench.job)).toMatchObject({ name: 'Decide', next: 'have the owner agree to the plan' });
  });

  it('is Measure again when a reading is struck out and no plan is chosen', () => {
    const bench = bookedIn();
    const { id } = bench.read('main.1', '49.475', 'vertical');
    bench.done({ kind: 'strike out reading', reading: id, why: 'one turn off' });
    expect(phaseOf(bench.job)).toMatchObject({ name: 'Strip' });
    for (const axis of ['vertical', 'horizontal']) bench.read('main.1', '49.975', axis);
    expect(phaseOf(bench.job)).toMatchObject({ name: 'Measure', done: 2 });
  });

  it('goes on through Build, Run and Hand over to its end', () => {
    const bench = agreed();
    bench.done(doing('lift-crankshaft'));
    expect(phaseOf(bench.job)).toMatchObject({ name: 'Decide', next: 'place the order with Ashlar Parts' });
    bench.done(doing('lay-crankshaft'));
    expect(phaseOf(bench.job)).toMatchObject({ name: 'Build', state: 'begun', of: 4, next: 'Fit the pumps' });
    bench.read('pump.1', '59.40');
    bench.read('pump.2', '59.40');
    bench.done(doing('fit-pumps'));
    expect(phaseOf(bench.job)).toMatchObject({ name: 'Build', next: 'fit the shim pack under fuel pump 1' });
    bench.done({ kind: 'count shims', shims: [{ thickness: mm('0.30'), count: 4 }] });
    for (const place of ['pump.1', 'pump.2'])
      bench.done({ kind: 'fit pack', place, shims: [mm('0.30'), mm('0.30')] });
    expect(phaseOf(bench.job)).toMatchObject({ name: 'Run', next: 'First start' });
    bench.done(doing('first-start'));
    expect(phaseOf(bench.job)).toMatchObject({ name: 'Run', next: 'log the run-in' });
    bench.done({
      kind: 'log run step',
      speed: { text: '1500', unit: 'rpm' },
      load: { text: '50', unit: '%' },
      minutes: 20,
      note: '',
    });
    expect(phaseOf(bench.job)).toMatchObject({ name: 'Hand over', state: 'ahead' });
    bench.done({ kind: 'hand over', to: 'W. Heron', note: '' });
    expect(phaseOf(bench.job)).toEqual({ name: 'Hand over', state: 'done', done: 1, of: 1, next: '' });
    expect(states(bench)).toBe('ddddddd');
  });
});
