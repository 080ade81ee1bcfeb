/** @module The invented two-cylinder engine with joints: main caps in stages, stretch bolts turned by an angle, pump nuts on a left-hand thread. */
import type { RequestOf } from '../../src/job/command.ts';
import { tighteningsOf } from '../../src/job/tighten/tightening.ts';
import { agreed, type Bench } from './bench.ts';
import { sparrowbill } from './sparrowbill.ts';

const torque = (text: string) => ({ text, unit: 'N·m' });

const wrench = {
  name: 'wrench-40-200',
  kind: 'torque wrench',
  range: { least: torque('40'), greatest: torque('200') },
  resolution: torque('1'),
  permissibleError: torque('4'),
  repeatability: torque('1'),
  calibration: { certificate: 'T-7', on: '2025-03-01', due: '2026-02-28' },
  checked: { on: '2025-03-01', against: 'a torque tester', good: true },
};

export const jointedEngine = sparrowbill
  .replace(
    '    needs: [main-journal-diameter, main-journal-ovality]\n',
    '    needs: [main-journal-diameter, main-journal-ovality]\n    tightens: [cap-bolts, rod-bolts]\n',
  )
  .replace(
    'first-start: { title: First start, phase: run, after: [fit-pumps] }',
    `first-start: { title: First start, phase: run, after: [fit-pumps] }
  look-again: { title: Tighten the caps again, phase: run, after: [first-start], tightens: [cap-bolts] }`,
  )
  .replace(
    'operations:\n',
    `one-use:
  rod-bolts-new:
    { title: rod bolts, at: main, each: 2, supplier: Ashlar Parts, price: '3.00', days: 2 }
fasteners:
  cap-bolts:
    title: cap bolts
    at: main
    count: 4
    thread: M10
    class: '8.8'
    thread-state: oiled
    friction: [0.12, 0.16]
    stages: [20 N·m, 45 N·m]
    holes: { rows: 2, spacing: 60 mm, apart: 80 mm }
    again:
      - { after: first-start, by: look-again, cold: true, how: one bolt at a time }
      - { hours: 50 h, how: with the valves }
  rod-bolts:
    title: rod bolts
    at: main
    count: 2
    thread: M8
    class: '10.9'
    thread-state: dry
    friction: [0.14, 0.20]
    stages: [20 N·m, 60 deg]
    stretch: once
    renewed-by: rod-bolts-new
    hand: left
operations:
`,
  );

export const lay = 'lay-crankshaft';

/** Read, agreed, the crankshaft lifted, a wrench brought: the caps are next. */
export const readyToTighten = (engineType = jointedEngine): Bench => {
  const bench = agreed(engineType);
  bench.done({ kind: 'bring instrument', instrument: wrench });
  bench.done({ kind: 'do operation', operation: 'lift-crankshaft', note: '' });
  return bench;
};

/** The cap bolts of the first main at their first stage, as they should be pulled; some of it said otherwise. */
export const pulled = (more: Partial<RequestOf<'tighten stage'>> = {}): RequestOf<'tighten stage'> => ({
  kind: 'tighten stage',
  operation: lay,
  fastener: 'cap-bolts',
  place: 'main.1',
  stage: 0,
  bolts: ['1', '4', '2', '3'],
  threadState: 'oiled',
  note: '',
  ...more,
});

/** Pulls whatever an operation still leaves loose. */
export const tightenAll = (bench: Bench, name: string): void => {
  const operation = bench.open.sheet.engine.operations.get(name);
  if (operation === undefined) throw new Error(`there is no operation ${name}`);
  for (const { fastener, place, stages } of tighteningsOf(bench.open, operation))
    for (const [stage, { left }] of stages.entries())
      if (left.length > 0)
        bench.done({
          kind: 'tighten stage',
          operation: name,
          fastener: fastener.name,
          place: place.id,
          stage,
          bolts: left,
          threadState: fastener.threadState,
          ...(fastener.stretch && stage === 0 && { boltsAre: 'new' as const }),
          note: '',
        });
};
