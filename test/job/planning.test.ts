/** @module What the plan gives for a job is what the job takes. */
import { describe, expect, it } from 'vitest';
import type { OpenJob } from '../../src/job/job.ts';
import { choosePlan, demandsOf, planQuestionOf } from '../../src/job/planning.ts';
import { choosePlanTrouble } from '../../src/job/rules/plan.ts';
import { planEngine } from '../../src/plan/plan.ts';
import type { Demands } from '../../src/plan/plan-model.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import { wornAs, wornQuillfeather } from '../engines/worn-quillfeather.ts';
import { Bench, bookedIn, booking, measured } from './bench.ts';

const planned = async (bench: Bench) => planEngine(planQuestionOf(bench.open), await highsSolver());

describe('the plan of a job', () => {
  it('asks what was wanted at the booking', async () => {
    const bench = new Bench();
    bench.done({ ...booking, hoursWanted: { text: '5000', unit: 'h' }, daysWanted: 6 });
    expect(demandsOf(bench.open)).toEqual({ hours: 5000, days: 6 });
    expect(planQuestionOf(bench.open)).toMatchObject({ hoursRun: 4200, findings: [] });
  });

  it('puts sound parts back for nothing', async () => {
    const bench = measured();
    const plan = await planned(bench);
    if (plan.kind !== 'plan') throw new Error(plan.kind);
    const { fact } = bench.done(choosePlan(plan));
    expect(fact).toMatchObject({ kind: 'plan chosen', cents: 0, days: 0 });
    expect(bench.open.plan?.choices.map(({ slot }) => slot)).toEqual([
      'mains',
      'main-shells',
      'pumps@pump.1',
      'pumps@pump.2',
    ]);
  });

  // source: the prices of the engine type added by hand: grinding 180.00, shells 40.00, their carriage 6.00
  it('grinds worn journals and brings new shells, with the words and prices shown', async () => {
    const bench = measured();
    bench.read('main.2', '49.900', 'horizontal');
    const plan = await planned(bench);
    if (plan.kind !== 'plan') throw new Error(plan.kind);
    bench.done(choosePlan(plan));
    expect(bench.open.plan).toMatchObject({ cents: 22_600, days: 4 });
    expect(bench.open.plan?.choices[0]?.says).toContain('machine to 0.25, by Ashlar Grinding');
  });

  it('bars what a finding bars', async () => {
    const bench = measured();
    bench.done({
      kind: 'note finding',
      place: 'main.1',
      component: 'mains',
      finding: 'cracked',
      mayGoBack: false,
      says: 'crack at the fillet',
    });
    expect(planQuestionOf(bench.open).findings).toMatchObject([{ cracked: true, mayGoBack: false }]);
    expect((await planned(bench)).kind).toBe('conflict');
  });

  it('waits for readings', async () => {
    expect((await planned(bookedIn())).kind).toBe('not yet');
  });
});

describe('a plan whose parts are good alone but fit one another badly', () => {
  const limitedTo = (greatest: number): OpenJob => {
    const clearance = wornQuillfeather.engine.characteristics.get('main-clearance');
    if (!clearance?.limits) throw new Error('the engine has no main bearing clearance with limits');
    const limits = { ...clearance.limits, goesBack: { ...clearance.limits.goesBack, greatest } };
    const characteristics = new Map(wornQuillfeather.engine.characteristics);
    const { open } = bookedIn();
    return {
      ...open,
      booked: { ...open.booked, hoursRun: { text: '6000', unit: 'h' } },
      sheet: wornAs({ characteristics: characteristics.set('main-clearance', { ...clearance, limits }) }),
    };
  };
  const fixed = {
    mains: 'mains:put back:standard:',
    'main-shells': 'main-shells:replace:standard:Tump Lane Engine Parts',
  };
  const asked = async (job: OpenJob, demands: Demands) => {
    const plan = await planEngine(planQuestionOf(job, demands), await highsSolver());
    if (plan.kind !== 'plan') throw new Error(plan.kind);
    return plan;
  };

  it('is taken with the hours of the fit where that only wears out sooner', async () => {
    const job = limitedTo(0.115);
    const plan = await asked(job, { fixed, hours: 2500 });
    expect(plan.hours).toBeLessThan(Math.min(...plan.choices.map((choice) => choice.hours)));
    expect(choosePlanTrouble(job, choosePlan(plan))).toBeUndefined();
    const promised = { ...choosePlan(plan), hours: plan.hours + 100 };
    expect(choosePlanTrouble(job, promised)?.what).toContain('hours are not what the choices come to');
  });

  it('is refused where they would not fit', async () => {
    const plan = await asked(limitedTo(0.14), { fixed });
    expect(choosePlanTrouble(limitedTo(0.09), choosePlan(plan))?.what).toContain('would be outside 0.090 mm');
  });
});
