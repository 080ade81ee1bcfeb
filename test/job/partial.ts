/** @module A job that goes part of the way, told from its booking on: stripped, measured, planned, built, run. */
import { signAll } from '../../demo/bench-work.ts';
import { instruments } from '../../demo/instruments.ts';
import { fitter } from '../../demo/people.ts';
import { type Story, story } from '../../demo/story.ts';
import { bareFigure } from '../../src/engine/shown-in.ts';
import type { Request } from '../../src/job/command.ts';
import { choosePlan, planQuestionOf } from '../../src/job/planning.ts';
import { pumpPacksOf } from '../../src/job/pumps.ts';
import { placesInQuestion } from '../../src/job/scope.ts';
import { toMeasure } from '../../src/job/to-measure.ts';
import { cellKey } from '../../src/measure/reading.ts';
import { planEngine } from '../../src/plan/plan.ts';
import type { Plan } from '../../src/plan/plan-model.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import { quillfeatherText } from '../engines/demo-engines.ts';
import { wornQuillfeather } from '../engines/worn-quillfeather.ts';
import { booking, mm } from './bench.ts';

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

export const strip = (told: Story): void => signAll(told, fitter, ['strip']);

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

/** Reads the depth of each pump in question, so that a pack of 0.55 mm is the one needed. */
export const readDepths = (told: Story): void => {
  const { pumpTiming } = told.job().sheet.engine;
  for (const { place } of pumpPacksOf(told.job()).pumps)
    told.tell(fitter, 3, {
      kind: 'take reading',
      cell: { place, characteristic: pumpTiming?.depth ?? '', plane: '', axis: '' },
      typed: mm(((pumpTiming?.datum ?? 0) - 0.55).toFixed(3)),
      instrument: 'depth-0-100',
    });
};

/** Reads what is set when the engine is together again, each in the middle of its limits. */
const readWhatIsSet = (told: Story): void => {
  const { characteristics, valveSetting, pumpTiming } = told.job().sheet.engine;
  for (const [name, instrument, unit] of [
    [valveSetting?.inlet, 'feelers', 'mm'],
    [valveSetting?.exhaust, 'feelers', 'mm'],
    [pumpTiming?.check?.of, 'degree-disc', 'deg'],
  ] as const) {
    const known = characteristics.get(name ?? '');
    if (known === undefined) continue;
    const { least = 0, greatest = 0 } = known.limits?.new ?? {};
    const shown = { unit, decimals: unit === 'mm' ? 2 : 1 };
    for (const { id: place } of placesInQuestion(told.job(), known))
      told.tell(fitter, 4, {
        kind: 'take reading',
        cell: { place, characteristic: known.name, plane: '', axis: '' },
        typed: { text: bareFigure((least + greatest) / 2, shown), unit },
        instrument,
      });
  }
};

/** Builds, sets, runs and signs all that is left. */
export const buildAndRun = (told: Story): void => {
  readWhatIsSet(told);
  signAll(told, fitter, ['build', 'set']);
  // Where the first start is a gate it is signed before anything runs.
  signAll(told, fitter, ['run']);
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
