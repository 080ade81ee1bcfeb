/** @module The sweep and the general solver keep one contract as finders of best plans. */
import { bySolver } from '../../src/plan/by-solver.ts';
import { sweepModel } from '../../src/plan/sweep/sweep-model.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import { finderContract, type OpenFinder } from './finder-contract.ts';

/** A model that the sweep cannot take is a failure here: all that the contract asks is within its reach. */
const swept: OpenFinder = async (slots, model) => {
  const find = sweepModel(slots, model);
  if (!find) throw new Error('the sweep cannot take the model');
  return async (open) => {
    const found = find(open);
    if (found === 'too wide') throw new Error('the sweep became too wide');
    return found;
  };
};

finderContract('the sweep', swept, 3_000);
finderContract('HiGHS', async (slots, model) => bySolver(slots, model, await highsSolver()), 300);
