/** @module The run-in: what may be begun and read, what is an alarm, what a fault takes down, and when a step is passed. */
import { describe, expect, it } from 'vitest';
import {
  begin,
  built,
  full,
  half,
  idle,
  plainRunIn,
  ranIn,
  reading,
  started,
} from '../../../test/job/running.ts';
import { checkChain } from '../../journal/chain.ts';
import { replay } from '../evolve.ts';
import { runInStanding } from '../run/run-in-standing.ts';

const fault = (says: string, stopsRun = true) => ({ kind: 'note fault', says, stopsRun }) as const;
const operation = (name: string) => ({ kind: 'do operation', operation: name, note: '' }) as const;
const handOver = { kind: 'hand over', to: 'W. Heron', note: '' } as const;

describe('a step of the run-in', () => {
  it('is not begun before first start is signed, nor a step before it is passed', () => {
    expect(built().refused(begin(1, '6 s'))).toContain('“First start” is not signed');
    const bench = started();
    expect(bench.refused(begin(2, '6 s'))).toMatch(/step 1, “Idle”, is next.*begin step 1/);
    bench.done(begin(1, '6 s'));
    bench.done(reading(1, 4, idle));
    expect(bench.refused(begin(2))).toMatch(/step 1, “Idle”, is next: 6 min to go, a reading every 10 min/);
    bench.done(reading(1, 10, idle));
    bench.done(begin(2));
  });

  it('asks after each start how soon oil pressure showed; none in time is an alarm', () => {
    const bench = started();
    expect(bench.refused(begin(1))).toMatch(/how long after the start oil pressure showed.*15 s.*at once/);
    expect(bench.refused(begin(1, '6 bar'))).toContain('oil pressure after');
    bench.done(begin(1, '20 s'));
    expect(bench.refused(reading(1, 5, idle))).toMatch(
      /no oil pressure within 15 s of the start: it took 20 s.*stop the engine at once/,
    );
    bench.done(fault('gallery plug left out'));
    expect(runInStanding(bench.open)).toMatchObject({ alarms: [], starts: true });
  });

  it('takes readings of its own, later than the last, each gauge once and in its kind of unit', () => {
    const bench = started();
    expect(bench.refused(reading(1, 5, idle))).toContain('no step is begun');
    bench.done(begin(1, '6 s'));
    expect(bench.refused(reading(2, 5, half))).toContain('step 1, “Idle”, is in hand');
    bench.done(reading(1, 5, idle));
    expect(bench.refused(reading(1, 5, idle))).toContain('the last reading was taken at minute 5');
    expect(bench.refused(reading(1, 9, { ...idle, oil: '52 °C' }))).toMatch(/oil pressure.*°C/);
    expect(bench.refused(reading(1, 9, { ...idle, exhaust: '160 °C, 170 °C, 180 °C' }))).toContain(
      'give a cylinder from 1 to 2',
    );
    const { gauges, ...rest } = reading(1, 9, idle);
    expect(bench.refused({ ...rest, gauges: [...gauges, ...gauges.slice(0, 1)] })).toContain('twice');
  });

  it('is passed by time that readings prove: a stretch that nobody looked at counts for no more than it may be', () => {
    const bench = started();
    bench.done(begin(1, '6 s'));
    bench.done(reading(1, 10, idle));
    bench.done(begin(2));
    bench.done(reading(2, 60, half));
    expect(runInStanding(bench.open).next?.attempt).toMatchObject({ minutes: 10, left: 10 });
    bench.done(reading(2, 70, half));
    expect(runInStanding(bench.open).next?.number).toBe(3);
  });

  it('is not passed with a gauge unread, an engine not as set, or oil too cold to judge by', () => {
    const lackingWith = (shown: object): string => {
      const bench = started();
      bench.done(begin(1, '6 s'));
      bench.done(reading(1, 10, idle));
      bench.done(begin(2));
      bench.done(reading(2, 10, half));
      bench.done(reading(2, 20, { ...half, ...shown }));
      return runInStanding(bench.open).next?.attempt?.lacking.join('; ') ?? '';
    };
    expect(lackingWith({})).toBe('');
    expect(lackingWith({ load: '40 %' })).toBe('load 40 %: set 50 %');
    expect(lackingWith({ load: '45 %' })).toBe('');
    expect(lackingWith({ speed: '1400 rpm' })).toBe('speed 1400 rpm: set 1500 rpm');
    expect(lackingWith({ load: '45 N·m' })).toBe('load 45 N·m: read it as 50 % is written');
    expect(lackingWith({ 'oil at': '50 °C' })).toBe('oil pressure 3.2 bar: let the oil warm to 60 °C');
    expect(lackingWith({ oil: '5.5 bar', 'oil at': '50 °C' })).toBe(
      'oil pressure 5.5 bar: let the oil warm to 60 °C',
    );
    expect(lackingWith({ exhaust: '330 °C' })).toBe('the last reading lacks exhaust of cylinder 2');
  });

  it('that asks for it is passed only when three readings in a row lie together', () => {
    const bench = started();
    ranIn(bench);
    bench.done(begin(3, '5 s'));
    bench.done(reading(3, 10, { ...full, water: '76 °C' }));
    expect(runInStanding(bench.open).next?.attempt?.lacking.at(-1)).toBe(
      'water out is to be steady: 2 more readings, 10 min apart',
    );
    bench.done(reading(3, 20, { ...full, water: '80 °C' }));
    bench.done(reading(3, 30, { ...full, water: '81 °C' }));
    expect(runInStanding(bench.open).next?.attempt?.lacking).toEqual([
      'water out is not steady yet: the last three lie 5.0 °C apart, at most 2 °C',
    ]);
    expect(bench.refused(operation('full-load'))).toContain('water out is not steady yet');
    bench.done(reading(3, 40, { ...full, water: '82 °C' }));
    expect(runInStanding(bench.open).next).toBeUndefined();
    bench.done(operation('full-load'));
    bench.done(handOver);
    expect(checkChain(bench.events).kind).toBe('answer');
    expect(replay(bench.events)).toEqual(bench.job);
  });
});

describe('an alarm', () => {
  const alarmed = (shown: object) => {
    const bench = started();
    bench.done(begin(1, '6 s'));
    bench.done(reading(1, 10, idle));
    bench.done(begin(2));
    const { id } = bench.done(reading(2, 10, { ...half, ...shown }));
    return { bench, id, alarms: runInStanding(bench.open).alarms };
  };

  it('says what is wrong and what to do, and stops the engine first where oil pressure fails', () => {
    expect(alarmed({ oil: '1.9 bar', exhaust: '560 °C, 500 °C' }).alarms).toMatchObject([
      {
        says: 'oil pressure is too low: 1.9 bar, and it is to be 2 bar to 5 bar, oil at 60 °C',
        remedy: expect.stringContaining('stop the engine at once'),
        stop: true,
      },
      { says: 'exhaust of cylinder 1 is too high: 560 °C, and it is to be at most 550 °C', stop: false },
      { says: 'exhaust: the cylinders are 60 °C apart, and they are to be at most 50 °C apart' },
    ]);
    expect(alarmed({ oil: '1.9 bar', 'oil at': '40 °C' }).alarms).toHaveLength(1);
    expect(alarmed({ oil: '29 psi' }).alarms).toHaveLength(1);
    expect(alarmed({ oil: '200 kPa' }).alarms).toEqual([]);
    expect(alarmed({ water: '96 °C' }).alarms).toMatchObject([
      { says: expect.stringContaining('water out') },
    ]);
  });

  it('must be answered before the run goes on: a misread gauge is struck out', () => {
    const { bench, id } = alarmed({ oil: '0.32 bar' });
    expect(bench.refused(reading(2, 12, half))).toContain('strike the reading out');
    expect(bench.refused(begin(2))).toContain('oil pressure is too low');
    expect(bench.refused(fault('gauge glass cracked', false))).toContain('does not bear on the run');
    expect(bench.refused({ kind: 'strike out run reading', reading: id, why: '' })).toContain(
      'nothing is written',
    );
    bench.done({ kind: 'strike out run reading', reading: id, why: 'decimal point slipped: 3.2 bar' });
    expect(bench.refused({ kind: 'strike out run reading', reading: id, why: 'x' })).toContain('already');
    bench.done(reading(2, 10, half));
    bench.done(reading(2, 20, half));
    expect(runInStanding(bench.open).next?.number).toBe(3);
  });

  it('that is a fault restarts the whole run-in once it is put right, and what was passed stays in sight', () => {
    const { bench } = alarmed({ oil: '1.2 bar' });
    const { id } = bench.done(fault('relief valve stuck open'));
    expect(bench.refused(begin(1, '6 s'))).toContain('a fault is not put right: relief valve stuck open');
    expect(bench.refused({ kind: 'put fault right', fault: 'event-1', done: 'x' })).toContain(
      'no such fault',
    );
    expect(bench.refused({ kind: 'put fault right', fault: id, done: ' ' })).toContain('what was done');
    bench.done({ kind: 'put fault right', fault: id, done: 'seat cleaned, spring renewed' });
    expect(bench.refused({ kind: 'put fault right', fault: id, done: 'x' })).toContain('put right by');
    expect(bench.refused(begin(2, '6 s'))).toContain('step 1, “Idle”, is next');
    const { attempts, faults, steps } = runInStanding(bench.open);
    expect(steps.map(({ standing }) => standing)).toEqual(['ahead', 'ahead', 'ahead']);
    expect(attempts.map(({ number, passed, ended }) => [number, passed, ended?.says])).toEqual([
      [1, false, 'relief valve stuck open'],
      [2, false, 'relief valve stuck open'],
    ]);
    expect(faults).toMatchObject([
      { alarms: [{ stop: true }], putRight: { done: 'seat cleaned, spring renewed', by: 'Ilse Quarrow' } },
    ]);
    ranIn(bench);
  });

  it('repeats the step alone where the engine type says so', () => {
    const bench = started(plainRunIn.replace('restart all', 'repeat the step'));
    bench.done(begin(1, '6 s'));
    bench.done(reading(1, 10, idle));
    bench.done(begin(2));
    const { id } = bench.done(fault('union at pump 1 weeps'));
    bench.done({ kind: 'put fault right', fault: id, done: 'new washer' });
    expect(runInStanding(bench.open).steps.map(({ standing }) => standing)).toEqual([
      'passed',
      'ahead',
      'ahead',
    ]);
    bench.done(begin(2, '4 s'));
  });
});

describe('a fault', () => {
  it('that does not bear on the run restarts nothing, and holds the engine until it is put right', () => {
    const bench = started();
    ranIn(bench);
    const { id } = bench.done(fault('paint chipped at the lifting eye', false));
    bench.done(begin(3, '5 s'));
    for (const minute of [10, 20, 30]) bench.done(reading(3, minute, full));
    bench.done(operation('full-load'));
    expect(bench.refused(handOver)).toContain('a fault is not put right: paint chipped');
    bench.done({ kind: 'put fault right', fault: id, done: 'touched up' });
    bench.done(handOver);
  });

  it('after the run-in was signed has it run again before the engine goes', () => {
    const bench = started();
    ranIn(bench);
    bench.done(begin(3, '5 s'));
    for (const minute of [10, 20, 30]) bench.done(reading(3, minute, full));
    bench.done(operation('full-load'));
    const { id } = bench.done(fault('knock at number 2'));
    bench.done({ kind: 'put fault right', fault: id, done: 'shell changed' });
    expect(bench.refused(handOver)).toContain('step 1 of the run-in, “Idle”, is not passed');
  });

  it('names a place of the engine, or none', () => {
    const bench = started();
    expect(bench.refused({ ...fault('leaks'), place: 'pump.9' })).toContain('pump.9');
    expect(bench.refused(fault(''))).toContain('write what was found');
    bench.done({ ...fault('leaks'), place: 'pump.2' });
  });
});

describe('what was run', () => {
  it('an operation opened again takes down what was run on it', () => {
    const bench = started();
    ranIn(bench);
    bench.done({ kind: 'reopen operation', operation: 'fit-pumps', why: 'pump 2 leaks at its flange' });
    const { steps, attempts } = runInStanding(bench.open);
    expect(steps.every(({ standing }) => standing === 'ahead')).toBe(true);
    expect(attempts[0]?.ended?.says).toBe('“Fit the pumps” was opened again: pump 2 leaks at its flange');
  });

  it('nobody signs an operation short of its steps, whoever answers for it', () => {
    const bench = started();
    const lacking = ['Idle', 'Half load'].map(
      (title, at) => `step ${at + 1} of the run-in, “${title}”, is not passed`,
    );
    const overruled = { by: 'H. Foreman', why: 'run in on the brake next door', lacking };
    expect(bench.refused({ ...operation('run-in'), overruled })).toContain('nobody may go on without this');
  });

  it('an engine type without run-in steps logs what was run as before', () => {
    const bench = started('\n');
    expect(bench.refused(begin(1))).toContain('has no run-in steps');
    expect(runInStanding(bench.open)).toMatchObject({ steps: [], attempts: [] });
  });
});
