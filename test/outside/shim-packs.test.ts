/** @module Shim packs are as good as a general solver's, rank by rank, on the same box. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degrees, mm } from '../../src/quantity/brand.ts';
import { chooseShims, type PackSet } from '../../src/reckon/shim-pack.ts';
import { known } from '../known.ts';
import { outsideCheck } from '../outside-check.ts';
import { glpsol } from './glpsol.ts';
import { lacking } from './program.ts';
import { type Shims, shimModel, windowModel } from './shim-model.ts';

const boxes = (
  pumps: number,
  thicknesses: number,
  count: { readonly min: number; readonly max: number },
  step: number,
): fc.Arbitrary<Shims> =>
  fc.record({
    needs: fc.array(fc.integer({ min: 60, max: 150 }), { minLength: pumps, maxLength: pumps }),
    box: fc.uniqueArray(
      fc.record({
        thickness: fc.integer({ min: 10 / step, max: 80 / step }).map((steps) => steps * step),
        count: fc.integer(count),
      }),
      { minLength: thicknesses, maxLength: thicknesses, selector: ({ thickness }) => thickness },
    ),
    mostShims: fc.integer({ min: 3, max: 4 }),
  });

const ours = ({ needs, box, mostShims }: Shims): PackSet =>
  known(
    chooseShims({
      needs: needs.map((needed, at) => ({ pump: `pump.${at + 1}`, needed: mm(needed / 100) })),
      box: box.map(({ thickness, count }) => ({ thickness: mm(thickness / 100), count })),
      mostShims,
      rate: degrees(1),
      addingShims: 'retards',
    }),
  );

const ranksOf = ({ greatestError, spread, shimsUsed }: PackSet): readonly [number, number, number] => [
  Math.round(greatestError * 100),
  Math.round(spread * 100),
  shimsUsed,
];

const optimum = (model: string): number => {
  const { status, objective } = glpsol(model);
  if (status === 'stopped') throw new Error('glpsol ran out of time: the case is too hard to check by it');
  return status === 'optimal' ? Math.round(objective) : Infinity;
};

/** Each rank by glpsol, with the ranks before it held at what ours reached. */
const ranksByGlpsol = (asked: Shims, set: PackSet): readonly number[] => {
  const [greatest, spread] = ranksOf(set);
  return [
    optimum(shimModel(asked, { least: 'greatest error' })),
    optimum(shimModel(asked, { least: 'spread', greatest })),
    optimum(shimModel(asked, { least: 'number of shims', greatest, spread })),
  ];
};

/** The fewest shims with errors in a window, Infinity where none will do. */
const fewest = (asked: Shims, least: number, greatest: number): number => {
  const model = windowModel(asked, [least, greatest]);
  return model === undefined ? Infinity : optimum(model);
};

describe('shim packs held against glpsol', () => {
  const small: readonly [pumps: number, thicknesses: number, most: number][] = [
    [3, 8, 2],
    [4, 6, 3],
    [5, 7, 3],
  ];

  it.for(small)(
    'are best rank by rank for %i pumps, %i thicknesses, up to %i of each',
    { timeout: 120_000 },
    ([pumps, thicknesses, most], context) => {
      const lacks = lacking('glpsol');
      context.skip(lacks !== undefined, lacks);
      for (const asked of fc.sample(boxes(pumps, thicknesses, { min: 1, max: most }, 1), {
        seed: 1_234,
        numRuns: 8,
      })) {
        const set = ours(asked);
        expect(set.proved).toBe(true);
        const theirs = ranksByGlpsol(asked, set);
        const alike = outsideCheck('shim-pack', "glpsol's optimum, rank by rank", 'in its rank', 0);
        for (const [at, rank] of ranksOf(set).entries()) alike(rank, theirs[at] ?? Number.NaN);
      }
    },
  );

  const large: readonly [name: string, least: number, most: number, seed: number][] = [
    ['400 shims', 30, 36, 1],
    ['100 shims', 6, 10, 2],
    ['70 shims', 4, 7, 3],
  ];

  it.for(large)(
    'are best for 20 pumps from about %s in 12 thicknesses: no narrower window will do',
    { timeout: 120_000 },
    ([, min, max, seed], context) => {
      const lacks = lacking('glpsol');
      context.skip(lacks !== undefined, lacks);
      for (const asked of fc.sample(boxes(20, 12, { min, max }, 5), { seed, numRuns: 3 })) {
        const set = ours(asked);
        expect(set.proved).toBe(true);
        const [greatest, spread, used] = ranksOf(set);
        expect(fewest(asked, 1 - greatest, greatest - 1)).toBe(Infinity);
        const starts = Array.from({ length: 2 * greatest - spread + 2 }, (__, at) => at - greatest);
        for (const start of starts) expect(fewest(asked, start, start + spread - 1)).toBe(Infinity);
        const widest = starts.filter((start) => start + spread <= greatest);
        expect(Math.min(...widest.map((start) => fewest(asked, start, start + spread)))).toBe(used);
      }
    },
  );
});
