/** @module All readings of one instrument off by the same amount: its zero or its master was wrong. */
import type { Expectation } from '../expectation.ts';
import type { Instrument } from '../instrument.ts';
import { median } from '../neighbours.ts';
import type { Reading } from '../reading.ts';
import type { KnownSlip } from './slip.ts';

export const constantOffset: KnownSlip = {
  name: 'constant offset',
  says: 'all readings of one instrument off by the same amount',
  /** A zero or a master set wrong, once in a hundred sets of readings: common practice, no source. */
  chance: 0.01,
  of: 'sets of readings',
};

/** An instrument past the day it was due is off five times as often as one in time: common practice, no source. */
export const overdueTimes = 5;

/** The day by which an instrument was due for calibration, where a reading with it was taken later. */
export const overdueSince = ({
  reading,
  instrument,
}: {
  readonly reading: Reading;
  readonly instrument: Instrument;
}): string | undefined => {
  const due = instrument.calibration?.due;
  return due !== undefined && reading.on !== undefined && reading.on > due ? due : undefined;
};

/** The size of a place, mm, and what is expected of it. */
export interface Level {
  readonly own: Expectation;
  readonly level: number;
}

export interface Offset {
  /** To be taken off every reading, mm. */
  readonly by: number;
  readonly odds: number;
}

/** A zero may be off by anything within about a millimetre, each way: per mm. Common practice, no source. */
const anywhere = 0.5;
/** Of all zeros that are off, the share that is off by just one turn or one number, each way. */
const byOne = 0.1;

/**
 * How far all places together must be off, where they have all grown or all shrunk past what parts are made to.
 *
 * @param levels  size of each place, mm, two or more, with what is expected of it
 * @param steps   lengths by which a zero is easily set wrong, mm
 * @param chance  how often a zero or master is wrong
 * @param u       standard uncertainty of a level, mm
 * @returns undefined where any place may be as it was read
 * @source  Bayes's rule; a bore gauge set wrong makes every bore wrong by one constant (common practice, no source)
 */
export const offsetOf = (
  levels: readonly Level[],
  steps: readonly number[],
  chance: number,
  u: number,
): Offset | undefined => {
  const grown = levels.map(({ own, level }) => own.grownBy(level));
  const least = Math.min(...grown);
  if (levels.length < 2 || least <= 3 * u) return undefined;
  const firm = levels[grown.indexOf(least)];
  const asItStands = firm?.own.density(firm.level) ?? Number.NaN;
  const mean = (by: number) =>
    levels.reduce((sum, { own, level }) => sum + Math.log(own.density(level - by)), 0) / levels.length;
  const off = median(levels.map(({ own, level }) => level - own.middle));
  const way = Math.sign(off);
  const best = steps
    .map((step) => ({ by: way * step, density: Math.exp(mean(way * step)) * byOne }))
    .reduce((a, b) => (b.density > a.density ? b : a), {
      by: off,
      density: anywhere,
    });
  return { by: best.by, odds: (chance * best.density) / asItStands };
};
