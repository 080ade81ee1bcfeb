/** @module What the other cells of a place say of one: its level, its run along the planes, its lean over the axes. */
import { invert } from './inverse.ts';

/** A size of the place; the same number stands for the same plane, the same axis. */
export interface ShapeCell {
  readonly size: number;
  readonly plane: number;
  readonly axis: number;
}

/** Sizes of the same cells at another place, mm: its shape may be this one's, more or less worn. */
export type Template = readonly number[];

/** How sizes of a place may differ honestly, standard deviations in mm. */
export interface Spread {
  /** Of the level of the place about `middle`. */
  readonly level: number;
  readonly middle: number;
  /** Of one more wear, as it goes along planes or over axes. */
  readonly wear: number;
  /** Of a cell about what planes and axes make of it, where nothing is the matter. */
  readonly noise: number;
}

/** A mixture of bells: density per mm at a size. */
export interface Bells {
  readonly density: (size: number) => number;
  /** No greater density than this. */
  readonly peak: number;
}

interface Supposition {
  readonly chance: number;
  readonly planes: number;
  readonly axes: number;
  readonly noise: number;
  /** What each cell is expected to lie above the level, mm; nothing where no other place is followed. */
  readonly shape?: readonly number[];
}

/*
 * What may be the matter with a place: it may be worn the same along its planes or not, over its axes or not, and
 * its cells may lie as smoothly as they can be measured, a little rough, or as ragged as a seizure leaves them.
 * Chances and sizes: common practice, no source.
 */
const quiet = 0.04;
const marked = 0.6;
const roughness = [
  [0.8, 1, 0],
  [0.12, 2, 0.06],
  [0.05, 2, 0.18],
  [0.03, 2, 0.45],
] as const;

/** Of the engines whose other places are known, the share that is worn alike: common practice, no source. */
const likeOther = 0.85;
/** How much more or less worn a place is than the one it is like: standard deviation of the ratio. */
const moreOrLess = 0.4;

const suppositionsOf = ({ wear, noise }: Spread, templates: readonly Template[]): readonly Supposition[] => {
  const followed = templates.length > 0 ? likeOther : 0;
  const rough = roughness.map(([chance, times, share]) => ({
    chance,
    noise: Math.hypot(times * noise, share * wear),
  }));
  const own = [quiet, marked].flatMap((planes) =>
    [quiet, marked].flatMap((axes) =>
      rough.map(({ chance, noise: each }) => ({
        chance: ((1 - followed) * chance) / 4,
        planes: planes * wear,
        axes: axes * wear,
        noise: each,
      })),
    ),
  );
  const like = templates.flatMap((template) => {
    const middle = template.reduce((sum, size) => sum + size, 0) / template.length;
    return rough.map(({ chance, noise: each }) => ({
      chance: (followed * chance) / templates.length,
      planes: 0,
      axes: 0,
      noise: Math.SQRT2 * each,
      shape: template.map((size) => size - middle),
    }));
  });
  return [...own, ...like];
};

const bell = (off: number, deviation: number): number =>
  Math.exp(-0.5 * (off / deviation) ** 2) / (deviation * Math.sqrt(2 * Math.PI));

interface Told {
  /** Of the supposition, by all cells together, logarithm. */
  readonly evidence: number;
  /** For each cell, from all the others. */
  readonly expected: readonly { readonly mean: number; readonly deviation: number; readonly own: number }[];
}

const toldBy = (cells: readonly ShapeCell[], spread: Spread, supposed: Supposition): Told => {
  const matrix = cells.map((one, row) =>
    cells.map(
      (other, column) =>
        spread.level ** 2 +
        (one.plane === other.plane ? supposed.planes ** 2 : 0) +
        (one.axis === other.axis ? supposed.axes ** 2 : 0) +
        moreOrLess ** 2 * (supposed.shape?.[row] ?? 0) * (supposed.shape?.[column] ?? 0) +
        (row === column ? supposed.noise ** 2 : 0),
    ),
  );
  const { entries, logDeterminant } = invert(matrix);
  const off = cells.map(({ size }, at) => size - spread.middle - (supposed.shape?.[at] ?? 0));
  const weighed = entries.map((row) => row.reduce((sum, entry, at) => sum + entry * (off[at] ?? 0), 0));
  const square = weighed.reduce((sum, each, at) => sum + each * (off[at] ?? 0), 0);
  return {
    evidence: Math.log(supposed.chance) - (square + logDeterminant) / 2,
    expected: weighed.map((each, at) => {
      const variance = 1 / (entries[at]?.[at] ?? Number.NaN);
      const surprise = each * variance;
      return {
        mean: (cells[at]?.size ?? Number.NaN) - surprise,
        deviation: Math.sqrt(variance),
        own: -0.5 * (surprise ** 2 / variance + Math.log(variance)),
      };
    }),
  };
};

/**
 * What is to be expected in each cell of a place from the others there.
 *
 * A size is the level of the place + what its plane adds + what its axis adds + noise, all normal; or the place is
 * worn like another one, more or less. Under each supposition of how large these are, the expected size of a cell
 * left out follows from the others; suppositions count as far as the others bear them out.
 *
 * @param cells      sizes of one place, mm, two or more
 * @param spread     how far they may differ, mm, each above 0
 * @param templates  other places of the same cells that it may be worn like
 * @returns for each cell the density of its size given the others, per mm
 * @source  leave-one-out prediction of a normal model: C. E. Rasmussen and C. K. I. Williams, Gaussian
 *   Processes for Machine Learning (2006), 5.4.2; how much wear is uneven is common practice, no source
 */
export const shapeOf = (
  cells: readonly ShapeCell[],
  spread: Spread,
  templates: readonly Template[],
): readonly Bells[] => {
  const told = suppositionsOf(spread, templates).map((supposed) => toldBy(cells, spread, supposed));
  return cells.map((_, at) => {
    const borne = told.map(({ evidence, expected }) => evidence - (expected[at]?.own ?? 0));
    const most = Math.max(...borne);
    const weights = borne.map((each) => Math.exp(each - most));
    const sum = weights.reduce((total, weight) => total + weight, 0);
    const bells = told.flatMap(({ expected }, index) => {
      const own = expected[at];
      const weight = (weights[index] ?? 0) / sum;
      return own && weight > 1e-9 ? [{ ...own, weight }] : [];
    });
    return {
      density: (size) =>
        bells.reduce(
          (total, { weight, mean, deviation }) => total + weight * bell(size - mean, deviation),
          0,
        ),
      peak: bells.reduce((total, { weight, deviation }) => total + weight * bell(0, deviation), 0),
    };
  });
};
