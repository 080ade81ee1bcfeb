/** @module A new part against a used one: the clearance predicted, and what the plan makes of it. */
import { describe, expect, it } from 'vitest';
import { wornAs, wornQuillfeather } from '../../test/engines/worn-quillfeather.ts';
import { judge } from '../measure/judge.ts';
import { hours } from '../quantity/brand.ts';
import { highsSolver } from '../solver/highs.ts';
import { hoursTogether } from './fit-rows.ts';
import { optionsOf } from './options.ts';
import { planEngine } from './plan.ts';
import type { Demands } from './plan-model.ts';
import type { PlanQuestion } from './question.ts';

const { engine } = wornQuillfeather;

/** The engine with another wear limit of its main bearing clearance. */
const limitedTo = (greatest: number, demands: Demands = {}): PlanQuestion => {
  const clearance = engine.characteristics.get('main-clearance');
  if (!clearance?.limits) throw new Error('the engine has no main bearing clearance with limits');
  const limits = { ...clearance.limits, goesBack: { ...clearance.limits.goesBack, greatest } };
  return {
    sheet: wornAs({
      characteristics: new Map(engine.characteristics).set('main-clearance', { ...clearance, limits }),
    }),
    findings: [],
    hoursRun: hours(6000),
    demands,
  };
};

const shellsOf = (question: PlanQuestion) =>
  optionsOf(question).options.find(
    ({ component, does, size }) => component === 'main-shells' && does === 'replace' && size === 'standard',
  );

const planned = async (question: PlanQuestion) => {
  const plan = await planEngine(question, await highsSolver());
  if (plan.kind !== 'plan') throw new Error(`no plan but ${plan.kind}`);
  return plan;
};

const worstJournal = judge(wornQuillfeather, 'main-journal-diameter', 'main.2').value?.value ?? Number.NaN;
// source: by hand; shells made 55.030 to 55.060, 55.045 in the middle, on the journal as measured at its least
const expected = 55.045 - worstJournal;

describe('a new shell on a used journal', () => {
  it('is of no account where the fit lasts as long as either part', () => {
    expect(shellsOf(limitedTo(0.14))?.fits).toBeUndefined();
  });

  it('is barred where the clearance would be outside, in words', () => {
    const [oneFit, ...more] = shellsOf(limitedTo(0.09))?.fits ?? [];
    expect(more).toEqual([]);
    expect(oneFit).toEqual({
      with: 'mains:put back:standard:',
      hours: 0,
      says: expect.stringMatching(
        /^main bearing shells standard with main journals of the crankshaft as found: main bearing clearance at main\.2 0\.09\d mm would be outside 0\.090 mm$/,
      ),
    });
    expect(expected).toBeGreaterThan(0.09);
    expect(expected.toFixed(3)).toBe(/at main\.2 (\S+) mm/.exec(oneFit?.says ?? '')?.[1]);
  });

  it('is not planned then: the journals are ground although they are within their limits', async () => {
    const plan = await planned(limitedTo(0.09));
    expect(plan.choices.find(({ slot }) => slot === 'mains')?.does).not.toBe('put back');
    expect(plan.hours).toBe(Math.min(...plan.choices.map((choice) => choice.hours)));
  });

  it('gives fewer hours where it is within: the share of the usual wear that is left', async () => {
    const question = limitedTo(0.115);
    const [oneFit] = shellsOf(question)?.fits ?? [];
    // source: by hand; what is left to 0.115 of what was left from 0.065, the middle as made, of 6000 h
    const share = (0.115 - expected) / (0.115 - 0.065);
    expect(Math.abs((oneFit?.hours ?? 0) - 6000 * share)).toBeLessThan(30);
    const { options } = optionsOf(question);
    const shells = shellsOf(question);
    const mains = options.find(({ id }) => id === oneFit?.with);
    expect(hoursTogether(shells && mains ? [shells, mains] : [])).toBe(oneFit?.hours);
    expect(hoursTogether(shells ? [shells] : [])).toBe(shells?.hours);
  });

  it('is not planned where the hours wanted lie between those of the fit and of the parts', async () => {
    const wanted = 2800; // the journals by themselves are good for more
    const plan = await planned(limitedTo(0.115, { hours: wanted }));
    expect(plan.hours).toBeGreaterThanOrEqual(wanted);
    expect(plan.choices.find(({ slot }) => slot === 'mains')?.does).not.toBe('put back');
  });
});
