/** @module The program's solver and an independent one keep the same contract, and agree on the plans of large engines. */
import { describe, expect, it } from 'vitest';
import type { Coupling, Offer } from '../../src/engine/engine-type.ts';
import type { Sheet } from '../../src/measure/sheet.ts';
import { planEngine } from '../../src/plan/plan.ts';
import type { Planned, Solve } from '../../src/plan/plan-model.ts';
import type { PlanQuestion } from '../../src/plan/question.ts';
import { hours } from '../../src/quantity/brand.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import { wornEngineOf } from '../engines/many-cylinders.ts';
import { glpsol } from './glpsol.ts';
import { lacking } from './program.ts';
import { solverContract } from './solver-contract.ts';

const outside: Solve = async (model) => glpsol(model);
const lacks = lacking('glpsol');
/** The sweep alone must do: whoever asks a solver fails. */
const noSolver: Solve = async () => {
  throw new Error('the sweep left a plan to the solver');
};

/** All but the name of the proof. */
const provedAnyhow = (planned: Planned): object => {
  if (planned.kind !== 'plan') return planned;
  const { provedBy: _, ...plan } = planned;
  return plan;
};

solverContract('HiGHS', highsSolver);

if (lacks === undefined) solverContract('glpsol', async () => outside);
else it('keeps the contract with glpsol too', (context) => context.skip(true, lacks));

describe('plans of large engines by three methods', () => {
  const cases: readonly [cylinders: number, demands: PlanQuestion['demands']][] = [
    [3, {}],
    [6, {}],
    [6, { hours: 4_000, days: 9 }],
    [6, { hours: 6_000, days: 2 }],
    [16, { hours: 4_000 }],
    [16, { cents: 100_000 }],
    [20, { hours: 3_000, days: 12 }],
  ];
  const solverAlone = { widest: 0 };

  it.for(cases)(
    'are one and the same by the sweep and by HiGHS: %i cylinders, %j',
    { timeout: 120_000 },
    async ([cylinders, demands]) => {
      const question = { sheet: wornEngineOf(cylinders), findings: [], hoursRun: hours(6_000), demands };
      const ours = await planEngine(question, noSolver);
      const theirs = await planEngine(question, await highsSolver(), solverAlone);
      expect(provedAnyhow(theirs)).toEqual(provedAnyhow(ours));
    },
  );

  it.for(cases)(
    'are one and the same by the sweep and by glpsol: %i cylinders, %j',
    { timeout: 120_000 },
    async ([cylinders, demands], context) => {
      context.skip(lacks !== undefined, lacks);
      const question = { sheet: wornEngineOf(cylinders), findings: [], hoursRun: hours(6_000), demands };
      const ours = await planEngine(question, noSolver);
      const theirs = await planEngine(question, outside, solverAlone);
      expect(provedAnyhow(theirs)).toEqual(provedAnyhow(ours));
    },
  );

  /** Pistons of three sets whose masses go together by neighbours only, cheaper by the half dozen; pumps balanced unweighed. */
  const balanced = (cylinders: number): Sheet => {
    const sheet = wornEngineOf(cylinders);
    const sets = [
      { supplier: 'Oddy & Thrale Bearings', cents: 9_300, mass: { least: 1.236, greatest: 1.241 } },
      { supplier: 'Tump Lane Engine Parts', cents: 9_700, mass: { least: 1.24, greatest: 1.245 } },
      { supplier: 'Pellow & Daughter', cents: 9_100, mass: { least: 1.244, greatest: 1.249 } },
    ];
    const offers = sheet.engine.offers.flatMap((offer): readonly Offer[] =>
      offer.component === 'pistons'
        ? sets.map((set, index) => ({
            ...offer,
            ...set,
            quantity: [{ from: 2 + index, cents: set.cents - 600 * (index + 1) }],
          }))
        : [offer],
    );
    const couplings: readonly Coupling[] = [
      ...sheet.engine.couplings,
      { kind: 'balance', of: 'pistons', most: 0.01 },
      { kind: 'balance', of: 'pumps', most: 0.01 },
    ];
    return { ...sheet, engine: { ...sheet.engine, offers, couplings } };
  };

  it.for([3, 6, 20])(
    'are one and the same where parts are balanced and bought by quantity: %i cylinders',
    { timeout: 120_000 },
    async (cylinders, context) => {
      const demands = { hours: 4_000 };
      const question = { sheet: balanced(cylinders), findings: [], hoursRun: hours(6_000), demands };
      const ours = await planEngine(question, noSolver);
      expect(ours.kind).toBe('plan');
      const highs = await planEngine(question, await highsSolver(), solverAlone);
      expect(provedAnyhow(highs)).toEqual(provedAnyhow(ours));
      context.skip(lacks !== undefined, lacks);
      const theirs = await planEngine(question, outside, solverAlone);
      expect(provedAnyhow(theirs)).toEqual(provedAnyhow(ours));
    },
  );
});
