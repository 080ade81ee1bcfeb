/** @module How well doubts do on worn engines that the program never saw: slips found, told rightly, and honest readings doubted. */
import { instruments } from '../../demo/instruments.ts';
import type { Characteristic, EngineType } from '../../src/engine/engine-type.ts';
import { doubtsOf } from '../../src/measure/doubts.ts';
import type { FormerOverhaul } from '../../src/measure/former-overhaul.ts';
import type { Instrument } from '../../src/measure/instrument.ts';
import type { Reading } from '../../src/measure/reading.ts';
import { layOut } from '../../src/measure/sheet.ts';
import { lengthOf } from '../../src/quantity/typed.ts';
import { offBy, readBy, type SlipKind, slipped } from './slipped-reading.ts';
import { normalBy, patterns, type TrueSize, wornSizes } from './worn-engine.ts';

/** What the goals speak of: an error of a tenth of a millimetre and more. */
const gross = 0.1;

export interface Tally {
  /** Slips that such an engine, with all else known of it, cannot honestly show. */
  readonly told: number;
  readonly found: number;
  /** Of those found: named with the figure that was honestly read. */
  readonly right: number;
  /** Slips whose figure such an engine may well show: nobody could know. */
  readonly untold: number;
  readonly untoldFound: number;
}

export interface Alarms {
  readonly honest: number;
  readonly doubted: number;
}

const millimetres = (typed: { readonly text: string; readonly unit: string }): number => {
  const read = lengthOf(typed);
  return read.kind === 'answer' ? read.value : Number.NaN;
};

/** The instrument of the workshop that is of the kind asked for and reaches the sizes. */
export const instrumentOf = ({ instrument, limits }: Characteristic): Instrument => {
  const size = limits?.new.greatest ?? 0;
  const found = instruments.find(
    ({ kind, range }) =>
      kind === instrument && millimetres(range.least) <= size && size <= millimetres(range.greatest),
  );
  if (!found) throw new Error(`no ${instrument} for ${size} mm`);
  return found;
};

const readAll = (sizes: readonly TrueSize[], instrument: Instrument, random: () => number) =>
  sizes.map(({ cell, size }, at) => readBy(instrument, cell, size, `r${at}`, random));

/** Hours that the trial's engines had run by a former overhaul, and by now, whatever they have worn in them. */
const hours = { before: 2000, now: 6500 };

/** The former overhaul of an engine, each cell read then by an honest hand. */
const formerOf = (
  sizes: readonly TrueSize[],
  instrument: Instrument,
  random: () => number,
): FormerOverhaul => ({
  number: 'J-0',
  on: '2021-05-03',
  hoursRun: { text: String(hours.before), unit: 'h' },
  cells: sizes.map(({ cell, before }) => ({
    cell,
    anew: false,
    size: {
      text: (before + millimetres(instrument.repeatability) * normalBy(random)).toFixed(3),
      unit: 'mm',
    },
    expanded: { text: '0.005', unit: 'mm' },
  })),
});

const doubted = (
  engine: EngineType,
  readings: readonly Reading[],
  instrument: Instrument,
  former: FormerOverhaul | undefined,
) =>
  doubtsOf({
    ...layOut(engine, readings, [...instruments, instrument]),
    ...(former && { former, hoursRun: hours.now }),
  });

/** Less than dirt, a burr and the last digit may do together, mm: common practice, no source. */
const dirt = 0.02;

/** Whether the slipped figure lies in what the engine may honestly show. */
const isUntold = (size: number, [least, greatest]: readonly [number, number]): boolean =>
  size > least - dirt && size < greatest + dirt;

/** One slip in one reading of a whole scheme, or in the very first reading. */
export const trySlip = (
  engine: EngineType,
  characteristic: Characteristic,
  slip: SlipKind,
  engines: number,
  when: 'whole scheme' | 'first reading',
  random: () => number,
  instrument: Instrument = instrumentOf(characteristic),
  withFormer = false,
): Tally => {
  let [told, found, right, untold, untoldFound] = [0, 0, 0, 0, 0];
  for (let count = 0; count < engines * patterns.length; count += 1) {
    const pattern = patterns[count % patterns.length] ?? 'even';
    const sizes = wornSizes(characteristic, pattern, random, engine);
    const all = readAll(sizes, instrument, random);
    const honest = when === 'first reading' ? all.slice(0, 1) : all;
    const at = Math.floor(random() * honest.length);
    const reading = honest[at];
    const truth = sizes[at];
    const typed = reading && slipped(reading, instrument, slip, random);
    if (!reading || !truth || !typed || Math.abs(offBy(typed, reading.typed)) < gross - 1e-9) continue;
    const former = withFormer ? formerOf(sizes, instrument, random) : undefined;
    const doubts = doubted(engine, honest.with(at, { ...reading, typed }), instrument, former).filter(
      ({ readings }) => readings.includes(reading.id),
    );
    const shown = truth.size + offBy(typed, reading.typed);
    const within = isUntold(shown, when === 'first reading' ? truth.anywhere : truth.leeway);
    if (within) {
      untold += 1;
      untoldFound += doubts.length > 0 ? 1 : 0;
      continue;
    }
    told += 1;
    found += doubts.length > 0 ? 1 : 0;
    const named = doubts.some(({ readings, likely }) => {
      const proposed = likely[readings.indexOf(reading.id)];
      return proposed && Math.abs(offBy(proposed, reading.typed)) < 1e-6;
    });
    right += named ? 1 : 0;
  }
  return { told, found, right, untold, untoldFound };
};

/** Honest readings that are doubted: when the scheme is whole, and at every entry on the way there. */
export const tryHonest = (
  engine: EngineType,
  characteristic: Characteristic,
  engines: number,
  when: 'whole scheme' | 'every entry',
  random: () => number,
  instrument: Instrument = instrumentOf(characteristic),
  withFormer = false,
): Alarms => {
  let [honest, alarms] = [0, 0];
  for (let count = 0; count < engines * patterns.length; count += 1) {
    const pattern = patterns[count % patterns.length] ?? 'even';
    const sizes = wornSizes(characteristic, pattern, random, engine);
    const all = readAll(sizes, instrument, random);
    const former = withFormer ? formerOf(sizes, instrument, random) : undefined;
    const known = (length: number) =>
      new Set(doubted(engine, all.slice(0, length), instrument, former).flatMap(({ readings }) => readings));
    honest += all.length;
    if (when === 'whole scheme') alarms += known(all.length).size;
    else alarms += all.filter(({ id }, at) => known(at + 1).has(id)).length;
  }
  return { honest, doubted: alarms };
};
