/** @module A job that goes part of the way, carried on the bench of the tests: stripped, measured, planned, built, run. */
import { instruments } from '../../demo/instruments.ts';
import type { Operation } from '../../src/engine/engine-type.ts';
import { askedOf } from '../../src/job/asked.ts';
import { choosePlan, planQuestionOf } from '../../src/job/planning.ts';
import { pumpPacksOf } from '../../src/job/pumps.ts';
import { operationsIn } from '../../src/job/scope.ts';
import { toMeasure } from '../../src/job/to-measure.ts';
import { cellKey } from '../../src/measure/reading.ts';
import { planEngine } from '../../src/plan/plan.ts';
import type { Plan } from '../../src/plan/plan-model.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import { quillfeatherText } from '../engines/demo-engines.ts';
import { wornQuillfeather } from '../engines/worn-quillfeather.ts';
import { Bench, booking, mm } from './bench.ts';

/** The three-cylinder engine booked in to go so far, its instruments brought. */
export const bookedToReach = (reach: readonly string[]): Bench => {
  const bench = new Bench();
  bench.done({ ...booking, engineType: quillfeatherText });
  bench.done({ kind: 'set scope', reach, says: 'no more is wanted' });
  for (const instrument of instruments) bench.done({ kind: 'bring instrument', instrument });
  return bench;
};

/** Answers what an operation asks as it should be, and signs it. */
const sign = (bench: Bench, operation: Operation): void => {
  for (const { ask, place } of askedOf(bench.open, operation))
    bench.done(
      {
        kind: 'answer ask',
        operation: operation.name,
        ask: ask.name,
        good: true,
        says: 'as it should be',
        ...(place && { place }),
        ...(ask.answer === 'count' && { count: 4 }),
      },
      ask.secondPerson ? 'Wat Dunmow' : undefined,
    );
  bench.done({ kind: 'do operation', operation: operation.name, note: '' });
};

/** Signs the operations of this job of some phases, in their order, those but some. */
export const signAll = (
  bench: Bench,
  phases: readonly Operation['phase'][],
  but: readonly string[] = [],
): void => {
  for (const operation of operationsIn(bench.open))
    if (
      phases.includes(operation.phase) &&
      !bench.open.done.has(operation.name) &&
      !but.includes(operation.name)
    )
      sign(bench, operation);
};

/** Reads what is to be measured for the decision and nothing else, off the sheet of the worn engine. */
export const readAsWorn = (bench: Bench): void => {
  for (const cell of toMeasure(bench.open).left)
    for (const { typed, instrument } of wornQuillfeather.readings.get(cellKey(cell)) ?? [])
      bench.done({ kind: 'take reading', cell, typed, instrument });
};

/** Plans, chooses, and has the owner agree. */
export const planAndAgree = async (bench: Bench): Promise<Plan> => {
  const plan = await planEngine(planQuestionOf(bench.open), await highsSolver());
  if (plan.kind !== 'plan') throw new Error(JSON.stringify(plan));
  bench.done(choosePlan(plan));
  bench.done({ kind: 'note agreement', name: 'W. Heron', how: 'by telephone' });
  return plan;
};

/** Reads the depth of each pump in question, so that a pack of 0.55 mm is the one needed. */
export const readDepths = (bench: Bench): void => {
  const { pumpTiming } = bench.open.sheet.engine;
  for (const { place } of pumpPacksOf(bench.open).pumps)
    bench.done({
      kind: 'take reading',
      cell: { place, characteristic: pumpTiming?.depth ?? '', plane: '', axis: '' },
      typed: mm(((pumpTiming?.datum ?? 0) - 0.55).toFixed(3)),
      instrument: 'depth-0-100',
    });
};

export const runIn = (bench: Bench): void => {
  bench.done({
    kind: 'log run step',
    speed: { text: '1500', unit: 'rpm' },
    load: { text: '50', unit: '%' },
    minutes: 30,
    note: '',
  });
};
