/** @module Selective fitting: a thousand measured parts to 120 places, against scipy's assignment and a general solver. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fitParts } from '../src/reckon/fit.ts';
import { ask, askPython, lacking } from '../test/outside/program.ts';
import { assignmentModel, measuredStock, offInPython, pairModel } from '../test/outside/stock.ts';
import { type BenchRow, inTurns } from './bench.ts';

export const name = 'selective fitting';

/** A solver that is asked stops here; ours is then held against this time as a least. */
const mostSeconds = 20;

const stock = measuredStock(6, 120, 1000);
const pairs = measuredStock(4, 7, 40, 2);

const proved = (question: typeof stock.question): void => {
  const set = fitParts(question);
  if (set.kind === 'refused' || set.value.kind === 'lacking' || !set.value.proved)
    throw new Error('the stock of the bench serves every place, and the best way is proved');
};

/** Milliseconds that scipy itself takes for the same two ranks, without starting Python and reading figures. */
const scipyTime = (): number =>
  askPython(`${offInPython(stock)}
import time
began = time.perf_counter()
values = np.unique(off)
low, high = 0, len(values) - 1
while low < high:
    middle = (low + high) // 2
    if serves(values[middle]): high = middle
    else: low = middle + 1
linear_sum_assignment(np.where(off <= values[low], off, 10**6))
print(1000 * (time.perf_counter() - began))
`) as number;

const middleOf = (figures: readonly number[]): number =>
  figures.toSorted((a, b) => a - b)[Math.floor(figures.length / 2)] ?? Number.NaN;

export const run = async (): Promise<readonly BenchRow[]> => {
  const lacks = lacking('glpsol') ?? lacking('scipy');
  if (lacks) throw new Error(lacks);
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-bench-fitting-'));
  const solver = (label: string, model: string): (() => string) => {
    const file = join(folder, `${label}.lp`);
    writeFileSync(file, model);
    return () => ask('glpsol', ['--lp', file, '-o', `${file}.out`, '--tmlim', `${mostSeconds}`]);
  };
  const stopped = (told: string) =>
    /TIME LIMIT EXCEEDED/.test(told) ? { note: `glpsol was stopped after ${mostSeconds} s, not done` } : {};
  try {
    const scipy: number[] = [];
    const what = '1,000 parts to 120 places, all ranks, uncertainties to proof';
    const bySide = await inTurns(
      () => proved(stock.question),
      () => scipy.push(scipyTime()),
      7,
    );
    const wide = solver('places', assignmentModel(stock));
    const wideTold = wide();
    const bySolver = await inTurns(() => proved(stock.question), wide, 1);
    const narrow = solver('pairs', pairModel(pairs));
    const narrowTold = narrow();
    const byPairs = await inTurns(() => proved(pairs.question), narrow, 3);
    return [
      {
        what,
        against: 'scipy, greatest by halving and then linear_sum_assignment',
        unit: 'ms',
        ours: bySide.ours,
        other: middleOf(scipy),
        note: 'scipy from a finished table, without limits by uncertainty and without the order of ties',
      },
      { what, against: 'glpsol, least sum alone', unit: 'ms', ...bySolver, ...stopped(wideTold) },
      {
        what: '40 half shells, two to each of 7 places, all ranks proved',
        against: 'glpsol, least greatest deviation alone',
        unit: 'ms',
        ...byPairs,
        ...stopped(narrowTold),
      },
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
};
