/** @module A job that goes part of the way, told from its booking on: stripped, measured, planned, built, run. */
import { instruments } from '../../demo/instruments.ts';
import { fitter } from '../../demo/people.ts';
import { type Story, story } from '../../demo/story.ts';
import type { Request } from '../../src/job/command.ts';
import { choosePlan, planQuestionOf } from '../../src/job/planning.ts';
import { pumpPacksOf } from '../../src/job/pumps.ts';
import { toMeasure } from '../../src/job/to-measure.ts';
import { cellKey } from '../../src/measure/reading.ts';
import { planEngine } from '../../src/plan/plan.ts';
import type { Plan } from '../../src/plan/plan-model.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import { quillfeatherText } from '../engines/demo-engines.ts';
import { wornQuillfeather } from '../engines/worn-quillfeather.ts';
import { booking, mm } from './bench.ts';
import { workOff } from './work-off.ts';

/** The three-cylinder engine without the steps of its run-in: these are proved elsewhere. */
export const partialText = quillfeatherText.replace(/^run-in:\n(?: .*\n|\n)*/m, '');

/** Booked in to go so far, its instruments brought. */
export const bookedToReach = (reach: readonly string[], number = booking.number): Story => {
  const told = story(900, '2026-03-02T08:00:00Z');
  told.tell(fitter, 0, { ...booking, number, engineType: partialText });
  told.tell(fitter, 1, { kind: 'set scope', reach, says: 'no more is wanted' });
  for (const instrument of instruments) told.tell(fitter, 1, { kind: 'bring instrument', instrument });
  return told;
};

export const strip = (told: Story): void => workOff(told, ['strip']);

/** Reads what is to be measured for the decision and nothing else, off the sheet of the worn engine. */
export const readAsWorn = (told: Story): void => {
  for (const cell of toMeasure(told.job()).left)
    for (const { typed, instrument } of wornQuillfeather.readings.get(cellKey(cell)) ?? [])
      told.tell(fitter, 2, { kind: 'take reading', cell, typed, instrument });
};

/** Plans, chooses, and has the owner agree. */
export const planAndAgree = async (told: Story): Promise<Plan> => {
  const plan = await planEngine(planQuestionOf(told.job()), await highsSolver());
  if (plan.kind !== 'plan') throw new Error(JSON.stringify(plan));
  told.tell(fitter, 5, choosePlan(plan));
  told.tell(fitter, 5, { kind: 'note agreement', name: 'W. Heron', how: 'by telephone' });
  return plan;
};

/** Reads the depth of each pump in question, so that a pack of 0.55 mm is the one needed, and fits it from the box. */
export const timePumps = (told: Story): void => {
  const { pumpTiming } = told.job().sheet.engine;
  const pumps = pumpPacksOf(told.job()).pumps;
  told.tell(fitter, 5, {
    kind: 'count shims',
    shims: [
      { thickness: mm('0.30'), count: pumps.length },
      { thickness: mm('0.25'), count: pumps.length },
    ],
  });
  for (const { place } of pumps) {
    told.tell(fitter, 3, {
      kind: 'take reading',
      cell: { place, characteristic: pumpTiming?.depth ?? '', plane: '', axis: '' },
      typed: mm(((pumpTiming?.datum ?? 0) - 0.55).toFixed(3)),
      instrument: 'depth-0-100',
    });
    told.tell(fitter, 3, { kind: 'fit pack', place, shims: [mm('0.30'), mm('0.25')] });
  }
};

/** Builds, sets, runs and signs all that is left. */
export const buildAndRun = (told: Story): void => {
  workOff(told, ['build', 'set']);
  // Where the first start is a gate it is signed before anything runs.
  workOff(told, ['run']);
  told.tell(fitter, 30, {
    kind: 'log run step',
    speed: { text: '1500', unit: 'rpm' },
    load: { text: '50', unit: '%' },
    minutes: 30,
    note: '',
  });
};

/** What is said to a request that must be refused. */
export const refusedOf = (told: Story, request: Request): string => {
  const before = told.job();
  try {
    told.tell(fitter, 1, request);
  } catch (trouble) {
    if (told.job() !== before) throw new Error('a refused command changed the job');
    return String(trouble);
  }
  throw new Error(`accepted: ${JSON.stringify(request)}`);
};
