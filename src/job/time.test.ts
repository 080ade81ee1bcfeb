/** @module Time at operations: spells of several people, what interrupts them, what is left by the engine type. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Bench, bookedIn } from '../../test/job/bench.ts';
import { bookedToReach, refusedOf } from '../../test/job/partial.ts';
import type { WorkLogged } from './job.ts';
import { spellsOf, timesOf, workTimeOf } from './time.ts';

const job = bookedToReach(['pump.2']).job();
const at = (clock: string): string => `2026-03-02T${clock}:00Z`;
const entry = (
  kind: WorkLogged['kind'],
  by: string,
  clock: string,
  operation = 'lift-pumps',
): WorkLogged => ({
  kind,
  operation,
  by,
  at: at(clock),
});
const worked = (...workLog: readonly WorkLogged[]) => ({ ...job, workLog });
const pumps = (...log: readonly WorkLogged[]) => timesOf(worked(...log)).get('lift-pumps');

describe('time at operations', () => {
  it('runs from the beginning to the signature', () => {
    expect(pumps(entry('begun', 'Odo', '08:00'), entry('signed', 'Odo', '08:45'))).toEqual({
      minutes: 45,
      personMinutes: 45,
      people: [{ by: 'Odo', minutes: 45 }],
      interruptions: [],
      running: [],
    });
  });

  it('stops with what interrupted it, and goes on', () => {
    const stop: WorkLogged = { ...entry('stopped', 'Odo', '08:30'), why: 'the hoist is in use' };
    const time = pumps(
      entry('begun', 'Odo', '08:00'),
      stop,
      entry('begun', 'Odo', '09:00'),
      entry('signed', 'Odo', '09:15'),
    );
    expect(time).toMatchObject({
      minutes: 45,
      interruptions: [{ by: 'Odo', at: at('08:30'), why: 'the hoist is in use' }],
    });
  });

  it('counts two people who are at it together once by the clock, and both among all hands', () => {
    const time = pumps(
      entry('begun', 'Odo', '08:00'),
      entry('begun', 'Ilse', '08:20'),
      entry('signed', 'Odo', '09:00'),
    );
    expect(time).toMatchObject({
      minutes: 60,
      personMinutes: 100,
      people: [
        { by: 'Odo', minutes: 60 },
        { by: 'Ilse', minutes: 40 },
      ],
    });
  });

  it('leaves one for the other, since nobody is at two things at once', () => {
    const spells = spellsOf(
      worked(entry('begun', 'Odo', '08:00'), entry('begun', 'Odo', '08:10', 'strip-manifolds')),
    );
    expect(spells).toEqual([
      {
        operation: 'lift-pumps',
        by: 'Odo',
        from: at('08:00'),
        to: at('08:10'),
        why: 'went over to “Take off the manifolds and pipes, cap every opening”',
      },
      { operation: 'strip-manifolds', by: 'Odo', from: at('08:10') },
    ]);
  });

  it('counts what runs only until the moment that is asked for', () => {
    const open = worked(entry('begun', 'Odo', '08:00'));
    expect(timesOf(open).get('lift-pumps')).toMatchObject({ minutes: 0, running: [{ by: 'Odo' }] });
    expect(timesOf(open, at('08:12')).get('lift-pumps')?.minutes).toBe(12);
  });

  it('ends when the hands left it, where stopping was forgotten', () => {
    const forgotten: WorkLogged = {
      ...entry('stopped', 'Odo', '18:00'),
      why: 'went home',
      endedAt: at('16:30'),
    };
    expect(pumps(entry('begun', 'Odo', '16:00'), forgotten)?.minutes).toBe(30);
  });

  it('is by the clock no more than of all hands, and no less than of any one of them', () => {
    const person = fc.constantFrom('Odo', 'Ilse', 'Wat');
    const log = fc.array(fc.record({ kind: fc.constantFrom('begun', 'stopped', 'signed'), by: person }), {
      maxLength: 30,
    });
    fc.assert(
      fc.property(
        log,
        fc.array(fc.integer({ min: -3, max: 50 }), { minLength: 30, maxLength: 30 }),
        (made, gaps) => {
          let minute = 300;
          const entries = made.map(({ kind, by }, index): WorkLogged => {
            minute += gaps[index] ?? 0;
            const clock = `${String(Math.floor(minute / 60) % 24).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;
            return entry(kind as WorkLogged['kind'], by, clock);
          });
          for (const time of timesOf(worked(...entries)).values()) {
            expect(time.minutes).toBeLessThanOrEqual(time.personMinutes + 1e-9);
            for (const { minutes } of time.people)
              expect(time.minutes).toBeGreaterThanOrEqual(minutes - 1e-9);
          }
        },
      ),
    );
  });
});

describe('what remains', () => {
  it('is what the engine type says of what is not signed, less what was spent, and nothing made up', () => {
    // source: the minutes of the engine type added by hand: 40 + 40 + 30 + 40 + 30; two people lift for 40
    const before = workTimeOf(job, ['strip']).remaining;
    expect(before).toEqual({ minutes: 180, personMinutes: 220, operations: 5, untold: 0 });
    const after = worked(entry('begun', 'Odo', '08:00'), { ...entry('stopped', 'Odo', '08:20'), why: 'x' });
    expect(workTimeOf(after, ['strip']).remaining.minutes).toBe(160);
  });

  it('counts apart what the engine type is silent about', () => {
    expect(workTimeOf(bookedIn().open, ['strip']).remaining).toMatchObject({
      minutes: 0,
      operations: 1,
      untold: 1,
    });
  });
});

describe('beginning and stopping', () => {
  const begin = { kind: 'begin work', operation: 'lift-crankshaft' } as const;
  const stop = (more: { endedAt?: string; why?: string } = {}) =>
    ({ kind: 'stop work', operation: 'lift-crankshaft', why: 'tea', ...more }) as const;

  it('begin once, and stop what was begun, with a reason', () => {
    const bench = bookedIn();
    expect(bench.refused(stop())).toContain('is not at it');
    bench.done(begin);
    expect(bench.refused(begin)).toContain('is at it since');
    expect(bench.refused(stop({ why: ' ' }))).toContain('write what interrupts it');
    expect(bench.refused(stop({ endedAt: '2026-03-01T08:00:00Z' }))).toContain('between the two');
    bench.done(stop());
    expect(bench.refused(stop())).toContain('is not at it');
    bench.done(begin);
    bench.done({ kind: 'do operation', operation: 'lift-crankshaft', note: '' });
    expect(bench.refused(begin)).toContain('it was signed by');
    expect(timesOf(bench.open).get('lift-crankshaft')?.running).toEqual([]);
  });

  it('are refused for what is not known or not in the job', () => {
    expect(new Bench().ask(begin).kind).toBe('refused');
    expect(bookedIn().refused({ kind: 'begin work', operation: 'lift-haed' })).toContain('no operation');
    expect(refusedOf(bookedToReach(['pump.1']), { kind: 'begin work', operation: 'lift-head' })).toContain(
      'does not go so far',
    );
  });
});
