/** @module HiGHS behind the core's `Solve`: model text in, proved optimum out, anything else told apart. */
import type { LegacyHighs } from 'highs';
import type { LinearAnswer, Solve } from '../plan/plan-model.ts';

/** A plan of a large engine takes well under a second; past this something is wrong with the model. */
const secondsAtMost = 60;

const statusOf = (status: string): LinearAnswer['status'] => {
  switch (status) {
    case 'Optimal':
      return 'optimal';
    case 'Infeasible':
    case 'Primal infeasible or unbounded':
      return 'infeasible';
    case 'Time limit reached':
      return 'stopped';
    default:
      // Rubbish for a model comes back as `Empty`: a fault of the program, never an answer.
      throw new Error(`the solver answered ${status}`);
  }
};

const options = {
  time_limit: secondsAtMost,
  mip_rel_gap: 0,
  mip_abs_gap: 0,
  threads: 1,
  random_seed: 0,
} as const;

/**
 * HiGHS 1.15.1 simplifies some models to nothing and cannot find its way back to a point that keeps their rows. It sees
 * so and gives up with an error; the model as it stands it solves.
 */
const solveAnyhow = (highs: LegacyHighs, model: string): ReturnType<LegacyHighs['solve']> => {
  try {
    return highs.solve(model, options);
  } catch {
    return highs.solve(model, { ...options, presolve: 'off' });
  }
};

/** @param highs  the loaded solver; the same in Node and in a browser's worker */
export const solveWith =
  (highs: LegacyHighs): Solve =>
  async (model) => {
    const solution = solveAnyhow(highs, model);
    const columns: Record<string, number> = {};
    for (const [name, column] of Object.entries(solution.Columns)) {
      columns[name] = 'Primal' in column ? column.Primal : Number.NaN;
    }
    return { status: statusOf(solution.Status), objective: solution.ObjectiveValue, columns };
  };
