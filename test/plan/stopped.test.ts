/** @module A plan that is not proved is not shown: what a solver that runs out of time, or loses columns, leads to. */
import { describe, expect, it } from 'vitest';
import { planEngine } from '../../src/plan/plan.ts';
import type { LinearAnswer, Solve } from '../../src/plan/plan-model.ts';
import { hours } from '../../src/quantity/brand.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import { wornQuillfeather } from '../engines/worn-quillfeather.ts';

/** Nothing is left to the sweep, so that the solver is asked. */
const solverAlone = { widest: 0 };
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
    const planned = await planEngine(question, solve, solverAlone);
    expect(planned).toMatchObject({ kind: 'stopped', where: wornQuillfeather.engine.title });
  });
});

describe('a person who stops the work', () => {
  it('gets no plan, whichever method is at it', async () => {
    const solve = await highsSolver();
    for (const widest of [0, 1_000])
      expect(await planEngine(question, solve, { widest, stop: () => true })).toMatchObject({
        kind: 'stopped',
      });
  });

  it('gets no conflict either', async () => {
    let asked = 0;
    const stop = () => {
      asked += 1;
      return asked > 1;
    };
    const demands = { cents: 0 };
    expect(await planEngine({ ...question, demands }, await highsSolver(), { stop })).toMatchObject({
      kind: 'stopped',
    });
  });
});

describe('a solver that answers wrongly', () => {
  it('is a fault when it leaves out a column', async () => {
    const solve = await changedFrom(1, (answer) => ({ ...answer, columns: {} }));
    await expect(planEngine(question, solve, solverAlone)).rejects.toThrow('left out');
  });

  it('is a fault when it loses a plan that it had found', async () => {
    const solve = await changedFrom(2, (answer) => ({ ...answer, status: 'infeasible' }));
    await expect(planEngine(question, solve, solverAlone)).rejects.toThrow('lost a plan');
  });
});
