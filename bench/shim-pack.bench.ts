/** @module Shim packs: twenty pumps from four hundred shims, against general solvers: all ranks proved by HiGHS, one rank by glpsol. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { degrees, mm } from '../src/quantity/brand.ts';
import { chooseShims } from '../src/reckon/shim-pack.ts';
import { highsSolver } from '../src/solver/highs.ts';
import { seeded } from '../test/engines/worn-engine.ts';
import { ask, lacking } from '../test/outside/program.ts';
import { type Asked, type Shims, shimModel, windowModel } from '../test/outside/shim-model.ts';
import { type BenchRow, inTurns } from './bench.ts';

export const name = 'shim packs';

/** The one solver that is asked stops here; ours is then held against this time as a least. */
const mostSeconds = 5;

const random = seeded(20);
const thicknesses = [10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100];
const twentyPumps: Shims = {
  needs: Array.from({ length: 20 }, () => 90 + Math.floor(80 * random())),
  box: thicknesses.map((thickness) => ({ thickness, count: thickness < 50 ? 36 : 30 })),
  mostShims: 4,
};

const ours = ({ needs, box, mostShims }: Shims) =>
  chooseShims({
    needs: needs.map((needed, at) => ({ pump: `pump.${at + 1}`, needed: mm(needed / 100) })),
    box: box.map(({ thickness, count }) => ({ thickness: mm(thickness / 100), count })),
    mostShims,
    rate: degrees(0.95),
    addingShims: 'retards',
  });

/** The same ranks one after another by the general solver, each held as the next is asked for. */
const byHighs = async (shims: Shims): Promise<readonly number[]> => {
  const solve = await highsSolver();
  const least = async (asked: Asked): Promise<number> => {
    const { status, objective } = await solve(shimModel(shims, asked));
    if (status !== 'optimal') throw new Error(`HiGHS did not prove the ${asked.least}: ${status}`);
    return Math.round(objective);
  };
  const greatest = await least({ least: 'greatest error' });
  const spread = await least({ least: 'spread', greatest });
  return [greatest, spread, await least({ least: 'number of shims', greatest, spread })];
};

export const run = async (): Promise<readonly BenchRow[]> => {
  const lacks = lacking('glpsol');
  if (lacks) throw new Error(lacks);
  const set = ours(twentyPumps);
  if (set.kind === 'refused' || !set.value.proved)
    throw new Error('the packs of twenty pumps are not proved');
  const greatest = Math.round(set.value.greatestError * 100);
  const spread = Math.round(set.value.spread * 100);
  const ranks = [greatest, spread, set.value.shimsUsed];
  const theirs = await byHighs(twentyPumps);
  if (theirs.join() !== ranks.join())
    throw new Error(`ours comes to ${ranks.join(', ')}, HiGHS to ${theirs.join(', ')}`);
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-bench-shims-'));
  const solve = (model: string): (() => string) => {
    const file = join(folder, `${model.length}.lp`);
    writeFileSync(file, model);
    return () => ask('glpsol', ['--lp', file, '-o', `${file}.out`, '--tmlim', `${mostSeconds}`]);
  };
  const shims = twentyPumps.box.reduce((sum, { count }) => sum + count, 0);
  const what = `packs of 20 pumps from ${shims} shims, all ranks proved`;
  try {
    const whole = await inTurns(
      () => ours(twentyPumps),
      () => byHighs(twentyPumps),
      5,
    );
    const plain = solve(shimModel(twentyPumps, { least: 'greatest error' }));
    const short = /TIME LIMIT EXCEEDED/.test(plain());
    const first = await inTurns(() => ours(twentyPumps), plain, short ? 1 : 5);
    const window = windowModel(twentyPumps, [-greatest, spread - greatest]);
    const last = window && (await inTurns(() => ours(twentyPumps), solve(window), 5));
    return [
      {
        what,
        against: 'HiGHS, greatest error, spread and number of shims one after another',
        unit: 'ms',
        ...whole,
        note: `both come to ${greatest / 100} mm, ${spread / 100} mm, ${set.value.shimsUsed} shims`,
      },
      {
        what,
        against: 'glpsol, least greatest error alone',
        unit: 'ms',
        ...first,
        ...(short && { note: `glpsol was stopped after ${mostSeconds} s, not done` }),
      },
      ...(last
        ? [
            {
              what,
              against: 'glpsol, fewest shims in the window that ours found',
              unit: 'ms',
              ...last,
              note: 'given error and spread, which ours finds first',
            },
          ]
        : []),
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
};
