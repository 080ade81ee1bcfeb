/** @module Run-ins as published manuals print them, written as engine types: what they accept and refuse, the program does too. */
import { describe, expect, it } from 'vitest';
import { begin, reading, runningEngine, type Shown, started } from '../../../test/job/running.ts';
import { readEngineType } from '../../engine/read-engine-type.ts';
import { runInStanding } from './run-in-standing.ts';

// source: TM 5-3895-376-14&P, page 6-2: idle 10 min, half speed and half load 10, full and full 20, idle 2; accepted
// with oil pressure 26 to 58 psi at 220 °F, oil at most 250 °F, exhaust at most 1000 °F. Its speeds are not printed
// there: 2400 rpm and 800 rpm are invented. No oil pressure within 10 to 15 s means stop: Navy training text NAVEDTRA
// 14050 (chapter on operational testing). A fault restarts the whole run-in: TM 5-3895-359-14.
const published = `
run-in:
  source: TM 5-3895-376-14&P, page 6-2
  after-fault: restart all
  set-within: 5 %
  no-oil-pressure-within: 15 s
  limits:
    oil-temperature: { greatest: 250 °F }
    exhaust-temperature: { greatest: 1000 °F }
  steps:
    - { title: Idle, operation: run-in, speed: 800 rpm, load: 0 %, minutes: 10 }
    - { title: Half speed and half load, operation: run-in, speed: 1200 rpm, load: 50 %, minutes: 10 }
    - title: Full speed and full load
      operation: run-in
      speed: 2400 rpm
      load: 100 %
      minutes: 20
      limits: { oil-pressure: { least: 26 psi, greatest: 58 psi, with-oil-at: 220 °F } }
    - { title: Idle again, operation: run-in, speed: 800 rpm, load: 0 %, minutes: 2 }
`;

const idle: Shown = { speed: '800 rpm', load: '0 %', 'oil at': '150 °F', exhaust: '300 °F, 300 °F' };
const half: Shown = { speed: '1200 rpm', load: '50 %', 'oil at': '190 °F', exhaust: '700 °F, 700 °F' };
const full: Shown = {
  speed: '2400 rpm',
  load: '100 %',
  oil: '40 psi',
  'oil at': '225 °F',
  exhaust: '950 °F, 950 °F',
};

const atFullLoad = (runIn = published) => {
  const bench = started(runIn);
  bench.done(begin(1, '8 s'));
  bench.done(reading(1, 10, idle));
  bench.done(begin(2));
  bench.done(reading(2, 10, half));
  bench.done(begin(3));
  return bench;
};

describe('the run-in of a published manual', () => {
  it('is read as an engine type has it, without a trouble of its own', () => {
    const { troubles } = readEngineType(runningEngine(published));
    expect(troubles.filter(({ where }) => where.startsWith('run-in'))).toEqual([]);
  });

  it('is passed in the minutes that it prints, and its operation is then open to be signed', () => {
    const bench = atFullLoad();
    bench.done(reading(3, 20, full));
    expect(bench.refused({ kind: 'do operation', operation: 'run-in', note: '' })).toContain('“Idle again”');
    bench.done(begin(4));
    bench.done(reading(4, 1, idle));
    expect(runInStanding(bench.open).next?.attempt?.lacking).toEqual(['1 min to go']);
    bench.done(reading(4, 2, idle));
    bench.done({ kind: 'do operation', operation: 'run-in', note: '' });
  });

  it.each([
    ['oil pressure at the least that is accepted', { oil: '26 psi' }, 'passed'],
    ['oil pressure below it', { oil: '25.9 psi' }, 'alarm'],
    ['the same pressure in bar, a hair below it', { oil: '1.79 bar' }, 'alarm'],
    ['oil pressure at the greatest', { oil: '58 psi' }, 'passed'],
    ['oil pressure above it, the oil hot', { oil: '58.1 psi' }, 'alarm'],
    ['oil pressure above it, the oil still cold', { oil: '70 psi', 'oil at': '150 °F' }, 'not yet'],
    ['oil at the pressure’s temperature', { 'oil at': '220 °F' }, 'passed'],
    ['oil a degree colder', { 'oil at': '219 °F' }, 'not yet'],
    ['oil at its greatest', { 'oil at': '250 °F' }, 'passed'],
    ['oil hotter', { 'oil at': '251 °F' }, 'alarm'],
    ['the same in °C', { 'oil at': '121.2 °C' }, 'alarm'],
    ['exhaust at its greatest', { exhaust: '1000 °F, 1000 °F' }, 'passed'],
    ['exhaust of one cylinder hotter', { exhaust: '940 °F, 1001 °F' }, 'alarm'],
  ] as const)('with %s is as printed', (_, shown, comes) => {
    const bench = atFullLoad();
    bench.done(reading(3, 20, { ...full, ...shown }));
    const { alarms, steps } = runInStanding(bench.open);
    const step = steps[2];
    expect(alarms.length > 0 ? 'alarm' : step?.standing === 'passed' ? 'passed' : 'not yet').toBe(comes);
  });

  it('begins again from idle after a fault', () => {
    const bench = atFullLoad();
    bench.done(reading(3, 10, full));
    const { id } = bench.done({ kind: 'note fault', says: 'water in the oil', stopsRun: true });
    bench.done({ kind: 'put fault right', fault: id, done: 'liner seal renewed' });
    expect(bench.refused(begin(3, '8 s'))).toContain('step 1, “Idle”, is next');
    bench.done(begin(1, '8 s'));
  });

  it.each([
    ['10 s', 0],
    ['15 s', 0],
    ['16 s', 1],
    ['0.5 min', 1],
  ])('with oil pressure after %s has %i alarms', (after, alarms) => {
    const bench = started(published);
    bench.done(begin(1, after));
    expect(runInStanding(bench.open).alarms).toHaveLength(alarms);
  });
});
