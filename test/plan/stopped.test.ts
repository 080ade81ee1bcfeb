/** @module A plan that is not proved is not shown: what a solver that runs out of time, or loses columns, leads to. */
import { describe, expect, it } from 'vitest';
import { planEngine } from '../../src/plan/plan.ts';
import type { LinearAnswer, Solve } from '../../src/plan/plan-model.ts';
import { hours } from '../../src/quantity/brand.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import { wornQuillfeather } from '../engines/worn-quillfeather.ts';

const question = { sheet: wornQuillfeather, findings: [], hoursRun: hours(6000), demands: {} };

/** HiGHS, but from the given call on every answer is changed. */
const changedFrom = async (call: number, change: (answer: LinearAnswer) => LinearAnswer): Promise<Solve> => {
  const solve = await highsSolver();
  let calls = 0;
  return async (model) => {
    calls += 1;
    const answer = await solve(model);
    return calls >= call ? change(answer) : answer;
  };
};

describe('a solver whose time runs out', () => {
  it.each([1, 2, 3, 4])('gives no plan, at stage %i as at any other', async (call) => {
    const solve = await changedFrom(call, (answer) => ({ ...answer, status: 'stopped' }));
    const planned = await planEngine(question, solve);
    expect(planned).toMatchObject({ kind: 'stopped', where: wornQuillfeather.engine.title });
  });
});

describe('a solver that answers wrongly', () => {
  it('is a fault when it leaves out a column', async () => {
    const solve = await changedFrom(1, (answer) => ({ ...answer, columns: {} }));
    await expect(planEngine(question, solve)).rejects.toThrow('left out');
  });

  it('is a fault when it loses a plan that it had found', async () => {
    const solve = await changedFrom(2, (answer) => ({ ...answer, status: 'infeasible' }));
    await expect(planEngine(question, solve)).rejects.toThrow('lost a plan');
  });
});
