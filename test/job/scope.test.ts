/** @module A partial strip is a job as good as a full one: the top end only, one pump only, from booking in to handing over. */
import { describe, expect, it } from 'vitest';
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
import { Bench, booking, mm } from './bench.ts';
import { bookedToReach, planAndAgree, readAsWorn, readDepths, runIn, signAll } from './partial.ts';

const handOver = { kind: 'hand over', to: 'W. Heron', note: '' } as const;

const names = (bench: Bench) => operationsOf(bench.open).map(({ operation }) => operation.name);

const section = (bench: Bench, wanted: string) =>
  recordOf(bench.open, bench.events).sections.find(({ name }) => name === wanted);

describe('one pump only', () => {
  it('is carried from the booking to the hand-over with that pump alone', async () => {
    const bench = bookedToReach(['pump.2']);
    expect(phaseOf(bench.job)).toMatchObject({ name: 'Strip', of: 5 });
    expect(toMeasure(bench.open).left).toEqual([
      { place: 'pump.2', characteristic: 'pump-pack-found', plane: '', axis: '' },
    ]);
    signAll(bench, ['strip']);
    readAsWorn(bench);
    const plan = await planAndAgree(bench);
    expect(plan.choices.map(({ slot }) => slot)).toEqual(['pumps@pump.2']);
    expect(neededLines(bench.open).map(({ says, count }) => [says, count])).toEqual([
      ['manifold gaskets', 2],
    ]);
    expect(pumpPacksOf(bench.open).pumps.map(({ place }) => place)).toEqual(['pump.2']);
    readDepths(bench);
    signAll(bench, ['build', 'set']);
    runIn(bench);
    signAll(bench, ['run']);
    expect(bench.refused(handOver)).toContain('no shim pack is fitted under fuel pump 2');
    bench.done({
      kind: 'count shims',
      shims: [
        { thickness: mm('0.30'), count: 1 },
        { thickness: mm('0.25'), count: 2 },
      ],
    });
    bench.done({ kind: 'fit pack', place: 'pump.2', shims: [mm('0.30'), mm('0.25')] });
    expect(
      phasesOf(bench.job)
        .slice(0, 6)
        .every(({ state }) => state === 'done'),
    ).toBe(true);
    bench.done(handOver);

    const file = fileOf(bench.open, bench.events);
    expect(verifyRecord(file).kind).toBe('verified');
    expect(section(bench, 'scope')?.says[0]).toMatch(
      /^Not opened, not measured and not judged: main bearing, all 4; .*fuel pump 1, fuel pump 3/,
    );
    expect(section(bench, 'deviations')?.table?.rows.map(({ of }) => of)).toEqual([]);
  });
});

describe('the top end only', () => {
  it('is carried from the booking to the hand-over without a bearing looked at', async () => {
    const bench = bookedToReach(['valve']);
    expect(names(bench)).not.toContain('drop-sump');
    signAll(bench, ['strip']);
    readAsWorn(bench);
    const plan = await planAndAgree(bench);
    expect([...new Set(plan.choices.map(({ component }) => component))]).toEqual([
      'head',
      'head-gasket',
      'valves',
      'injector-nozzles',
    ]);
    // The head is lifted onto a block that was never open: what comes before it there counts as done.
    signAll(bench, ['build', 'set']);
    runIn(bench);
    signAll(bench, ['run']);
    bench.done(handOver);
    expect(notOpened(bench.open)).toContain('fuel pump, all 3');
    expect(verifyRecord(fileOf(bench.open, bench.events)).kind).toBe('verified');
  });

  it('is held back by what is in question, as a full one is', async () => {
    const bench = bookedToReach(['head']);
    signAll(bench, ['strip']);
    const { operations } = bench.open.sheet.engine;
    const fitHead = operations.get('fit-head');
    const lacking = () => {
      const standing = fitHead && standingOf(bench.open, fitHead);
      return standing?.kind === 'held' ? standing.lacking.map(({ says }) => says) : [];
    };
    expect(lacking()).toContain('no plan is chosen');
    readAsWorn(bench);
    await planAndAgree(bench);
    expect(lacking()).toEqual([]);
    expect(bench.refused(handOver)).toContain('“Fit gasket and head');
  });
});

describe('the scope of a job', () => {
  it('is the whole engine where none is set, and again once all is asked for', () => {
    const bench = bookedToReach(['head']);
    const all = [...bench.open.sheet.engine.operations.keys()];
    expect(names(bench).length).toBeLessThan(all.length);
    bench.done({ kind: 'set scope', reach: [], says: 'the owner wants all of it' });
    expect(names(bench)).toEqual(all);
    const whole = new Bench();
    whole.done({ ...booking, engineType: bench.open.booked.engineType });
    expect(names(whole)).toEqual(all);
    expect(toMeasure(whole.open)).toEqual(toMeasure(bench.open));
  });

  it('loses nothing when it is widened: what is signed and read stays, and a plan of less is asked for again', async () => {
    const bench = bookedToReach(['head']);
    signAll(bench, ['strip']);
    readAsWorn(bench);
    await planAndAgree(bench);
    const { done, sheet, plan } = bench.open;
    bench.done({ kind: 'set scope', reach: ['head', 'piston'], says: 'bore 2 is scored above the rings' });
    expect(bench.open.done).toEqual(done);
    expect(bench.open.sheet.readings).toEqual(sheet.readings);
    expect(bench.open.plan).toBe(plan);
    expect(names(bench)).toContain('draw-pistons');
    expect(phasesOf(bench.job).find(({ name }) => name === 'Decide')?.next).toBe('choose a plan');
    signAll(bench, ['strip']);
    expect(bench.refused({ kind: 'do operation', operation: 'ring-pistons', note: '' })).toContain(
      'the plan says nothing of',
    );
    readAsWorn(bench);
    const wider = await planAndAgree(bench);
    expect(wider.choices.map(({ component }) => component)).toContain('pistons');
    bench.done({ kind: 'do operation', operation: 'ring-pistons', note: '' });
  });

  it('is not narrowed over what is off already', () => {
    const bench = bookedToReach(['pump', 'head']);
    signAll(bench, ['strip']);
    expect(bench.refused({ kind: 'set scope', reach: ['pump.1', 'head'], says: 'one pump' })).toContain(
      'at fuel pump 2',
    );
    expect(bench.refused({ kind: 'set scope', reach: ['pump'], says: 'pumps' })).toContain(
      '“Slacken the head',
    );
    expect(bench.refused({ kind: 'set scope', reach: ['head', 'pump'], says: 'again' })).toContain(
      'the scope is this already',
    );
    expect(bench.refused({ kind: 'set scope', reach: ['head', 'pump', 'gear'], says: ' ' })).toContain('why');
  });

  it('holds what is beyond it, so that nobody opens it by the way', () => {
    const bench = bookedToReach(['pump.1']);
    signAll(bench, ['strip']);
    expect(bench.refused({ kind: 'do operation', operation: 'draw-injectors', note: '' })).toContain(
      'widen the scope',
    );
  });

  it('leaves a part as it is that is not opened, and asks for more once that one may not go back', async () => {
    const bench = bookedToReach(['pump.1']);
    signAll(bench, ['strip']);
    readAsWorn(bench);
    const plan = async () => planEngine(planQuestionOf(bench.open), await highsSolver());
    expect(await plan()).toMatchObject({ kind: 'plan', cents: 0 });
    bench.done({
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
    bench.done({ kind: 'set scope', reach: ['pump.1', 'pump.3'], says: 'a cracked flange' });
    readAsWorn(bench);
    expect((await plan()).kind).toBe('plan');
  });
});
