/** @module A partial strip is a job as good as a full one: the top end only, one pump only, from booking in to handing over. */

import { describe, expect, it } from 'vitest';
import { fitter } from '../../demo/people.ts';
import type { Story } from '../../demo/story.ts';
import { operationsOf, standingOf } from '../../src/job/holds.ts';
import { neededLines } from '../../src/job/order/needed.ts';
import { phaseOf, phasesOf } from '../../src/job/phase.ts';
import { planQuestionOf } from '../../src/job/planning.ts';
import { pumpPacksOf } from '../../src/job/pumps.ts';
import { notOpened } from '../../src/job/scope-words.ts';
import { toMeasure } from '../../src/job/to-measure.ts';
import { planEngine } from '../../src/plan/plan.ts';
import { fileOf, recordOf } from '../../src/record/record.ts';
import { verifyRecord } from '../../src/record/verify.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import { Bench, booking } from './bench.ts';
import {
  bookedToReach,
  buildAndRun,
  planAndAgree,
  readAsWorn,
  refusedOf,
  strip,
  timePumps,
} from './partial.ts';

const handOver = { kind: 'hand over', to: 'W. Heron', note: '' } as const;

const names = (told: Story) => operationsOf(told.job()).map(({ operation }) => operation.name);

const section = (told: Story, wanted: string) =>
  recordOf(told.job(), told.events()).sections.find(({ name }) => name === wanted);

describe('one pump only', () => {
  it('is carried from the booking to the hand-over with that pump alone', async () => {
    const told = bookedToReach(['pump.2']);
    expect(phaseOf(told.job())).toMatchObject({ name: 'Strip', of: 5 });
    expect(toMeasure(told.job()).left).toEqual([
      { place: 'pump.2', characteristic: 'pump-pack-found', plane: '', axis: '' },
    ]);
    strip(told);
    readAsWorn(told);
    const plan = await planAndAgree(told);
    expect(plan.choices.map(({ slot }) => slot)).toEqual(['pumps@pump.2']);
    expect(neededLines(told.job()).map(({ says, count }) => [says, count])).toEqual([
      ['manifold gaskets', 2],
    ]);
    expect(pumpPacksOf(told.job()).pumps.map(({ place }) => place)).toEqual(['pump.2']);
    timePumps(told);
    buildAndRun(told);
    expect(
      phasesOf(told.job())
        .slice(0, 6)
        .every(({ state }) => state === 'done'),
    ).toBe(true);
    told.tell(fitter, 1, handOver);

    const file = fileOf(told.job(), told.events());
    expect(verifyRecord(file).kind).toBe('verified');
    expect(section(told, 'scope')?.says[0]).toMatch(
      /^Not opened, not measured and not judged: main bearing, all 4; .*fuel pump 1, fuel pump 3/,
    );
    expect(section(told, 'deviations')?.table?.rows.map(({ of }) => of)).toEqual([]);
  });
});

describe('the top end only', () => {
  it('is carried from the booking to the hand-over without a bearing looked at', async () => {
    const told = bookedToReach(['valve']);
    expect(names(told)).not.toContain('drop-sump');
    strip(told);
    readAsWorn(told);
    const plan = await planAndAgree(told);
    expect([...new Set(plan.choices.map(({ component }) => component))]).toEqual([
      'head',
      'head-gasket',
      'valves',
      'injector-nozzles',
    ]);
    // The head is lifted onto a block that was never open: what comes before it there counts as done.
    buildAndRun(told);
    told.tell(fitter, 1, handOver);
    expect(notOpened(told.job())).toContain('fuel pump, all 3');
    expect(verifyRecord(fileOf(told.job(), told.events())).kind).toBe('verified');
  });

  it('is held back by what is in question, as a full one is', async () => {
    const told = bookedToReach(['head']);
    strip(told);
    const { operations } = told.job().sheet.engine;
    const fitHead = operations.get('fit-head');
    const lacking = () => {
      const standing = fitHead && standingOf(told.job(), fitHead);
      return standing?.kind === 'held' ? standing.lacking.map(({ says }) => says) : [];
    };
    expect(lacking()).toContain('no plan is chosen');
    readAsWorn(told);
    await planAndAgree(told);
    expect(lacking().filter((says) => /plan|not yet known|is not done/.test(says))).toEqual([]);
    expect(refusedOf(told, handOver)).toContain('“Fit gasket and head');
  });
});

describe('the scope of a job', () => {
  it('is the whole engine where none is set, and again once all is asked for', () => {
    const told = bookedToReach(['head']);
    const all = [...told.job().sheet.engine.operations.keys()];
    expect(names(told).length).toBeLessThan(all.length);
    told.tell(fitter, 1, { kind: 'set scope', reach: [], says: 'the owner wants all of it' });
    expect(names(told)).toEqual(all);
    const whole = new Bench();
    whole.done({ ...booking, engineType: told.job().booked.engineType });
    expect(operationsOf(whole.open).map(({ operation }) => operation.name)).toEqual(all);
    expect(toMeasure(whole.open)).toEqual(toMeasure(told.job()));
  });

  it('loses nothing when it is widened: what is signed and read stays, and a plan of less is asked for again', async () => {
    const told = bookedToReach(['head']);
    strip(told);
    readAsWorn(told);
    await planAndAgree(told);
    const { done, sheet, plan } = told.job();
    told.tell(fitter, 1, {
      kind: 'set scope',
      reach: ['head', 'piston'],
      says: 'bore 2 is scored above the rings',
    });
    expect(told.job().done).toEqual(done);
    expect(told.job().sheet.readings).toEqual(sheet.readings);
    expect(told.job().plan).toBe(plan);
    expect(names(told)).toContain('draw-pistons');
    expect(phasesOf(told.job()).find(({ name }) => name === 'Decide')?.next).toBe('choose a plan');
    strip(told);
    expect(refusedOf(told, { kind: 'do operation', operation: 'ring-pistons', note: '' })).toContain(
      'the plan says nothing of',
    );
    readAsWorn(told);
    const wider = await planAndAgree(told);
    expect(wider.choices.map(({ component }) => component)).toContain('pistons');
    expect(refusedOf(told, { kind: 'do operation', operation: 'ring-pistons', note: '' })).not.toContain(
      'the plan says nothing of',
    );
  });

  it('is not narrowed over what is off already', () => {
    const told = bookedToReach(['pump', 'head']);
    strip(told);
    expect(refusedOf(told, { kind: 'set scope', reach: ['pump.1', 'head'], says: 'one pump' })).toContain(
      'at fuel pump 2',
    );
    expect(refusedOf(told, { kind: 'set scope', reach: ['pump'], says: 'pumps' })).toContain(
      '“Slacken the head',
    );
    expect(refusedOf(told, { kind: 'set scope', reach: ['head', 'pump'], says: 'again' })).toContain(
      'the scope is this already',
    );
    expect(refusedOf(told, { kind: 'set scope', reach: ['head', 'pump', 'gear'], says: ' ' })).toContain(
      'why',
    );
  });

  it('holds what is beyond it, so that nobody opens it by the way', () => {
    const told = bookedToReach(['pump.1']);
    strip(told);
    expect(refusedOf(told, { kind: 'do operation', operation: 'draw-injectors', note: '' })).toContain(
      'widen the scope',
    );
  });

  it('leaves a part as it is that is not opened, and asks for more once that one may not go back', async () => {
    const told = bookedToReach(['pump.1']);
    strip(told);
    readAsWorn(told);
    const plan = async () => planEngine(planQuestionOf(told.job()), await highsSolver());
    expect(await plan()).toMatchObject({ kind: 'plan', cents: 0 });
    told.tell(fitter, 1, {
      kind: 'note finding',
      place: 'pump.3',
      component: 'pumps',
      finding: 'cracked',
      mayGoBack: false,
      says: 'the flange is cracked through',
    });
    expect(await plan()).toMatchObject({
      kind: 'conflict',
      demands: [expect.stringContaining('fuel pump 3 is not laid open in this job')],
    });
    told.tell(fitter, 1, { kind: 'set scope', reach: ['pump.1', 'pump.3'], says: 'a cracked flange' });
    readAsWorn(told);
    expect((await plan()).kind).toBe('plan');
  });
});
