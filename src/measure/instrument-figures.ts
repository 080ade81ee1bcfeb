/** @module An instrument's figures in the core's unit, its master's errors among its own. */

import { kindOf } from '../engine/instrument-kind.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { amountOf, resolutionOf, type Typed } from '../quantity/typed.ts';
import type { Term } from '../quantity/uncertain.ts';
import { type Dimension, dimensionText } from '../quantity/unit.ts';
import type { Instrument, Setting } from './instrument.ts';

/** Instruments by name. */
export type Register = ReadonlyMap<string, Instrument>;

/** What holds for every reading of an instrument, in the core's unit of what it measures: mm for a length. */
export interface Figures {
  readonly measures: Dimension;
  readonly resolution: number;
  readonly repeatability: number;
  /** What is added to what it shows. */
  readonly offset: number;
  /** Its influences in order of name: those that sort before a reading's own, then those among them, then those after. */
  readonly calibrations: readonly Term[];
  readonly settings: readonly Term[];
  readonly zeros: readonly Term[];
}

/** Standard uncertainty of a quantity that is only known to lie within ± the half-width (JCGM 100, 4.3.7). */
export const rectangular = (halfWidth: number): number => halfWidth / Math.sqrt(3);

/** They hold one size and show nothing, so that there is no zero to check. */
const solid: ReadonlySet<string> = new Set(['setting ring', 'length bar', 'gauge block']);
/** Nobody sets a gauge in a gauge set in a gauge; a longer way is a circle. */
const longestWay = 4;

const byName = (a: Term, b: Term): number => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0);

const term = (name: string, share: number): readonly Term[] =>
  share === 0 ? [] : [{ name, share, freedom: Number.POSITIVE_INFINITY }];

const unreadable = ({ name, kind }: Instrument): Answer<never> =>
  refuse(
    `the register has a figure that is no ${dimensionText(kindOf(kind).measures)}`,
    `instrument ${name}`,
    'correct its resolution, permissible error, repeatability, zero, setting or correction in the register',
  );

/** Several figures in the core's unit; undefined where one of them is of another kind. */
const amounts = (
  typed: readonly (Typed | undefined)[],
  measures: Dimension,
): readonly number[] | undefined => {
  const read: number[] = [];
  for (const each of typed) {
    const amount = each ? amountOf(each, measures) : answer(0);
    if (amount.kind === 'refused') return undefined;
    read.push(amount.value);
  }
  return read;
};

interface Own {
  readonly measures: Dimension;
  readonly resolution: number;
  readonly permissibleError: number;
  readonly repeatability: number;
  readonly zero: number;
  readonly correction: number;
  readonly calibration: readonly Term[];
}

const ownFigures = (instrument: Instrument): Answer<Own> => {
  const { measures } = kindOf(instrument.kind);
  const read = amounts(
    [
      instrument.resolution,
      instrument.permissibleError,
      instrument.repeatability,
      instrument.zero,
      instrument.correction,
      instrument.correctionUncertainty,
    ],
    measures,
  );
  if (!read) return unreadable(instrument);
  const [resolution = 0, error = 0, repeatability = 0, zero = 0, correction = 0, certified = 0] = read;
  const permissibleError = Math.abs(error);
  const share = instrument.correctionUncertainty ? Math.abs(certified) / 2 : rectangular(permissibleError);
  return answer({
    measures,
    resolution: Math.abs(resolution),
    permissibleError,
    repeatability: Math.abs(repeatability),
    zero,
    correction,
    calibration: term(`calibration of ${instrument.name}`, share),
  });
};

/** How well a gauge was set: what both it and its master repeat and resolve to. */
const settingShare = (own: Own, master: Figures, { size, shown }: Setting): number =>
  Math.hypot(
    own.repeatability,
    rectangular(Math.max(own.resolution, resolutionOf(shown)) / 2),
    master.repeatability,
    // The size engraved on a ring is exact as far as it goes; what a micrometer stood at was read off it.
    master.resolution === 0 ? 0 : rectangular(Math.max(master.resolution, resolutionOf(size)) / 2),
  );

const compared = (
  instrument: Instrument,
  own: Own,
  setting: Setting,
  register: Register,
  way: number,
): Answer<Figures> => {
  const master = register.get(setting.master);
  if (!master || way >= longestWay) {
    return refuse(
      master
        ? `it is set in ${setting.master}, and that in the end in itself`
        : `it was set in ${setting.master}, which is not in the register`,
      `instrument ${instrument.name}`,
      'bring what it was set in, or set it again in a ring or a micrometer of the register',
    );
  }
  const above = figuresOf(master, register, way + 1);
  if (above.kind === 'refused') return above;
  const read = above.value.measures === own.measures && amounts([setting.size, setting.shown], own.measures);
  if (!read) return unreadable(instrument);
  const [size = 0, shown = 0] = read;
  return answer({
    measures: own.measures,
    resolution: own.resolution,
    repeatability: own.repeatability,
    offset: size + above.value.offset - shown + own.correction,
    calibrations: [...own.calibration, ...above.value.calibrations].sort(byName),
    settings: [
      ...term(`setting of ${instrument.name}`, settingShare(own, above.value, setting)),
      ...above.value.settings,
    ].sort(byName),
    zeros: above.value.zeros,
  });
};

const zeroShare = (instrument: Instrument, own: Own): number => {
  if (solid.has(instrument.kind)) return 0;
  return instrument.zero
    ? Math.hypot(own.repeatability, rectangular(own.resolution / 2))
    : rectangular(own.permissibleError);
};

const readFigures = (instrument: Instrument, register: Register, way: number): Answer<Figures> => {
  const own = ownFigures(instrument);
  if (own.kind === 'refused') return own;
  if (instrument.setTo) return compared(instrument, own.value, instrument.setTo, register, way);
  const { measures, resolution, repeatability, zero, correction, calibration } = own.value;
  return answer({
    measures,
    resolution,
    repeatability,
    offset: correction - zero,
    calibrations: calibration,
    settings: [],
    zeros: term(`zero of ${instrument.name}`, zeroShare(instrument, own.value)),
  });
};

interface Kept {
  readonly register: Register | undefined;
  readonly figures: Answer<Figures>;
}

const kept = new WeakMap<Instrument, Kept>();

/**
 * Figures of an instrument as they enter every size taken with it.
 *
 * Influences, each by its name:
 * - `calibration of X`: rectangular over ± the maximum permissible error; where its certificate gives a correction
 *   with an expanded uncertainty (k = 2), half of that;
 * - `zero of X`: how well the zero was checked (one repeat and half a unit); where it never was, rectangular over
 *   ± the maximum permissible error once more; none for a ring, a bar or a block;
 * - `setting of X`, for one that compares: what it and its master repeat and resolve to, once each. The master's own
 *   calibration and zero are passed on by name, so that sizes taken with the master share them.
 *
 * @param instrument  from the register
 * @param register    where its master is found
 * @param way         how many instruments have been set in one another up to here
 * @returns in the core's unit, mm for a length; refuses a figure of another kind than it measures, a master that is not there, masters that go round in a circle
 * @source  JCGM 100:2008, 4.3.7, F.2.2.1, F.2.4.5 and H.1 (comparison: the size is the master's and the difference)
 */
export const figuresOf = (instrument: Instrument, register: Register, way = 0): Answer<Figures> => {
  const before = kept.get(instrument);
  // Only one that compares depends on the rest of the register.
  if (before && (before.register === undefined || before.register === register)) return before.figures;
  const figures = readFigures(instrument, register, way);
  kept.set(instrument, { register: instrument.setTo ? register : undefined, figures });
  return figures;
};
