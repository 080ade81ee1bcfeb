/** @module Selective fitting against scipy's assignment and against a general solver. */
import { describe, expect, it } from 'vitest';
import { fitParts } from '../../src/reckon/fit.ts';
import { known } from '../known.ts';
import { outsideCheck } from '../outside-check.ts';
import { glpsol } from './glpsol.ts';
import { askPython, lacking } from './program.ts';
import { measuredStock, offInPython, pairModel, type Stock } from './stock.ts';

/** Least greatest deviation, and least sum without it being exceeded, by scipy's own algorithms; -1 where there is none. */
const scipyFit = (stock: Stock): { greatest: number; sum: number } =>
  askPython(`${offInPython(stock)}
import json
greatest = next((int(most) for most in np.unique(off) if most < 1000 and serves(most)), -1)
total = -1
if greatest >= 0:
    rows, columns = linear_sum_assignment(np.where(off <= greatest, off, 10**6))
    total = int(off[rows, columns].sum())
print(json.dumps({'greatest': greatest, 'sum': total}))
`) as { greatest: number; sum: number };

describe('one part to a place', () => {
  it.for<readonly [number, number, number]>([
    [1, 6, 9],
    [2, 12, 16],
    [3, 40, 60],
    [4, 40, 40],
    [5, 120, 160],
    [6, 120, 1000],
  ])(
    'seed %i, %i places and %i parts: as scipy has it',
    { timeout: 60_000 },
    ([seed, places, parts], context) => {
      const lacks = lacking('scipy');
      context.skip(lacks !== undefined, lacks);
      const stock = measuredStock(seed, places, parts);
      const { greatest, sum } = scipyFit(stock);
      const set = known(fitParts(stock.question));
      expect(set.kind).toBe(greatest < 0 ? 'lacking' : 'fitted');
      if (set.kind === 'lacking') return;
      const check = outsideCheck(
        'assign',
        'scipy.sparse.csgraph.maximum_bipartite_matching and scipy.optimize.linear_sum_assignment, up to 1,000 parts to 120 places',
        'µm',
        1e-6,
      );
      check(set.greatestOff * 1000, greatest);
      check(set.sumOff * 1000, sum);
    },
  );
});

describe('two parts to a place', () => {
  it.for<readonly [number, number, number]>([
    [1, 3, 8],
    [2, 4, 12],
    [3, 5, 14],
    [4, 7, 20],
    [5, 7, 14],
  ])(
    'seed %i, %i places and %i parts: as glpsol has it',
    { timeout: 240_000 },
    ([seed, places, parts], context) => {
      const lacks = lacking('glpsol');
      context.skip(lacks !== undefined, lacks);
      const stock = measuredStock(seed, places, parts, 2);
      const set = known(fitParts(stock.question));
      const greatest = glpsol(pairModel(stock));
      expect(set.kind).toBe(greatest.status === 'infeasible' ? 'lacking' : 'fitted');
      if (set.kind === 'lacking') return;
      expect(set.proved).toBe(true);
      const check = outsideCheck('assign', 'glpsol on the same pairs as a mixed-integer program', 'µm', 1e-6);
      check(set.greatestOff * 1000, greatest.objective);
      check(set.sumOff * 1000, glpsol(pairModel(stock, greatest.objective)).objective);
    },
  );
});
