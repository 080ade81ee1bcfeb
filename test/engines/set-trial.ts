/** @module How well doubts do on sets of readings that are wrong together: rows copied, swapped or a turn out, a master set wrong. */
import { instruments } from '../../demo/instruments.ts';
import type { Characteristic, EngineType } from '../../src/engine/engine-type.ts';
import { doubtsOf } from '../../src/measure/doubts.ts';
import type { Instrument } from '../../src/measure/instrument.ts';
import type { Reading } from '../../src/measure/reading.ts';
import { layOut } from '../../src/measure/sheet.ts';
import type { Doubt } from '../../src/measure/verdict-model.ts';
import { instrumentOf } from './doubt-trial.ts';
import { readBy } from './slipped-reading.ts';
import { patterns, placesIn, type TrueSize, wornSizes } from './worn-engine.ts';
import { ringGaps } from './worn-ring-gaps.ts';

export interface SetTally {
  readonly tried: number;
  readonly found: number;
  /** Readings of the same sheets that are honest and were doubted, and how many are honest. */
  readonly honest: number;
  readonly doubted: number;
  /** Not tried, since the sheet with the slip in it is one that such an engine may honestly give. */
  readonly untold: number;
}

type Random = () => number;

interface Slipped {
  readonly readings: readonly Reading[];
  /** Ids of the readings that are wrong. */
  readonly wrong: ReadonlySet<string>;
  readonly told: boolean;
}

interface Worn {
  readonly engine: EngineType;
  readonly sizes: readonly TrueSize[];
  readonly instrument: Instrument;
  readonly wears: Characteristic['wears'];
}

export interface SetSlip {
  readonly name: string;
  /** Name of the doubt that must be raised. */
  readonly slip: string;
  readonly of: readonly string[];
  readonly make: (worn: Worn, random: Random) => Slipped;
}

const read = ({ sizes, instrument }: Worn, random: Random, name = 'r'): readonly Reading[] =>
  sizes.map(({ cell, size }, at) => readBy(instrument, cell, size, `${name}${at}`, random));

const moved = (reading: Reading, by: number): Reading => {
  const decimals = (reading.typed.text.split('.')[1] ?? '').length;
  const text = (Number(reading.typed.text) + by).toFixed(decimals);
  return { ...reading, typed: { ...reading.typed, text } };
};

const twoOf = (places: readonly string[], random: Random): readonly [string, string] => {
  const first = Math.floor(random() * places.length);
  const second = (first + 1 + Math.floor(random() * (places.length - 1))) % places.length;
  return [places[first] ?? '', places[second] ?? ''];
};

/** The figures of one row written in another, cell by cell. */
const inRow = (readings: readonly Reading[], from: string, to: string): readonly Reading[] => {
  const source = readings.filter(({ cell }) => cell.place === from);
  let at = 0;
  return readings.map((reading) =>
    reading.cell.place === to ? { ...reading, typed: source[at++]?.typed ?? reading.typed } : reading,
  );
};

const idsAt = (readings: readonly Reading[], places: readonly string[]): ReadonlySet<string> =>
  new Set(readings.filter(({ cell }) => places.includes(cell.place)).map(({ id }) => id));

const rowCopied: SetSlip = {
  name: 'row copied',
  slip: 'row copied',
  of: ['main-journal-diameter', 'bore-diameter'],
  make: (worn, random) => {
    const honest = read(worn, random);
    const places = placesIn(worn.sizes);
    const to = 1 + Math.floor(random() * (places.length - 1));
    const from = Math.floor(random() * to);
    const readings = inRow(honest, places[from] ?? '', places[to] ?? '');
    return { readings, wrong: idsAt(readings, [places[to] ?? '']), told: true };
  },
};

const rowATurnOut: SetSlip = {
  name: 'whole row a turn out',
  slip: 'thimble turn',
  of: ['main-journal-diameter', 'big-end-journal-diameter'],
  make: (worn, random) => {
    const honest = read(worn, random);
    const place = twoOf(placesIn(worn.sizes), random)[0];
    const by = random() < 0.5 ? 0.5 : -0.5;
    const readings = honest.map((each) => (each.cell.place === place ? moved(each, by) : each));
    return { readings, wrong: idsAt(readings, [place]), told: true };
  },
};

/** Less than dirt, a burr and the last digit may do together, mm. */
const dirt = 0.02;
/** What the goals speak of, mm. */
const gross = 0.1;

const masterSetWrong: SetSlip = {
  name: 'master set wrong by 0.1 to 0.5 mm',
  slip: 'constant offset',
  of: ['main-journal-diameter', 'bore-diameter', 'piston-diameter'],
  make: (worn, random) => {
    const by = (random() < 0.5 ? 1 : -1) * (0.1 + 0.4 * random());
    const readings = read(worn, random).map((each) => moved(each, by));
    // Told only on the side to which none wears: on the other, parts may have been machined to another size.
    const told = worn.sizes.every(({ size, anywhere: [least, greatest] }) =>
      worn.wears === 'smaller' ? size + by > greatest + dirt : size + by < least - dirt,
    );
    return { readings, wrong: new Set(readings.map(({ id }) => id)), told };
  },
};

const rowsSwapped: SetSlip = {
  name: 'rows swapped on taking them again',
  slip: 'rows swapped',
  of: ['main-journal-diameter', 'bore-diameter'],
  make: (worn, random) => {
    const again = read(worn, random, 'again');
    const [one, other] = twoOf(placesIn(worn.sizes), random);
    const swapped = again.map((reading, at) => {
      const { place } = reading.cell;
      return place === one
        ? inRow(again, other, one)[at]
        : place === other
          ? inRow(again, one, other)[at]
          : reading;
    });
    const readings = swapped.flatMap((reading) => reading ?? []);
    const row = (place: string) => worn.sizes.filter(({ cell }) => cell.place === place);
    // Alike to within what instruments repeat to, rows may stand either way.
    const told = row(one).some(({ size }, at) => Math.abs(size - (row(other)[at]?.size ?? size)) > 2 * dirt);
    return { readings: [...read(worn, random), ...readings], wrong: idsAt(readings, [one, other]), told };
  },
};

const gapOffItsBore: SetSlip = {
  name: 'ring gap read in a bore that is not worn',
  slip: 'ring gap off its bore',
  of: ['bore-diameter'],
  make: (worn, random) => {
    const gaps = ringGaps(worn.engine, worn.sizes, random);
    const at = Math.floor(random() * gaps.length);
    const { least: gap = 0, greatest: gapMost = 0 } =
      worn.engine.characteristics.get('ring-gap')?.limits?.new ?? {};
    const unworn = (gap + (gapMost - gap) * random()).toFixed(2);
    const readings = gaps.map((each, index) =>
      index === at ? { ...each, typed: { text: unworn, unit: 'mm' } } : each,
    );
    const wrong = readings[at];
    const made = worn.engine.characteristics.get('bore-diameter')?.limits?.new.greatest ?? 0;
    const bore = wrong?.cell.place.replace('piston', 'bore');
    const least = Math.min(...worn.sizes.filter(({ cell }) => cell.place === bore).map(({ size }) => size));
    const figure = Number(wrong?.typed.text);
    const told = figure < gap + Math.PI * (least - made) - gross && figure >= gap;
    return {
      readings: [...read(worn, random), ...readings],
      wrong: new Set(wrong ? [wrong.id] : []),
      told,
    };
  },
};

export const setSlips: readonly SetSlip[] = [
  rowCopied,
  rowATurnOut,
  masterSetWrong,
  rowsSwapped,
  gapOffItsBore,
];

const fits = (doubt: Doubt, slip: string, wrong: ReadonlySet<string>): boolean =>
  doubt.slip === slip && doubt.readings.some((id) => wrong.has(id));

/** One such slip in each of so many engines of every pattern. */
export const trySet = (
  engine: EngineType,
  characteristic: Characteristic,
  { slip, make }: SetSlip,
  engines: number,
  random: Random,
): SetTally => {
  let [tried, found, honest, doubted, untold] = [0, 0, 0, 0, 0];
  const instrument = instrumentOf(characteristic);
  for (let count = 0; count < engines * patterns.length; count += 1) {
    const pattern = patterns[count % patterns.length] ?? 'even';
    const sizes = wornSizes(characteristic, pattern, random, engine);
    const { readings, wrong, told } = make(
      { engine, sizes, instrument, wears: characteristic.wears },
      random,
    );
    if (!told) {
      untold += 1;
      continue;
    }
    const doubts = doubtsOf(layOut(engine, readings, instruments));
    tried += 1;
    found += doubts.some((doubt) => fits(doubt, slip, wrong)) ? 1 : 0;
    const named = new Set(doubts.flatMap((doubt) => doubt.readings));
    honest += readings.filter(({ id }) => !wrong.has(id)).length;
    doubted += readings.filter(({ id }) => !wrong.has(id) && named.has(id)).length;
  }
  return { tried, found, honest, doubted, untold };
};

/** Honest sheets with everything on them that sets of readings are held against: rows taken twice, and ring gaps. */
export const tryHonestSets = (
  engine: EngineType,
  bore: Characteristic,
  engines: number,
  random: Random,
): { readonly honest: number; readonly doubted: number } => {
  let [honest, doubted] = [0, 0];
  const instrument = instrumentOf(bore);
  for (let count = 0; count < engines * patterns.length; count += 1) {
    const pattern = patterns[count % patterns.length] ?? 'even';
    const sizes = wornSizes(bore, pattern, random, engine);
    const worn = { engine, sizes, instrument, wears: bore.wears };
    const counting = [...read(worn, random, 'again'), ...ringGaps(worn.engine, worn.sizes, random)];
    const doubts = doubtsOf(layOut(engine, [...read(worn, random), ...counting], instruments));
    const named = new Set(doubts.flatMap((doubt) => doubt.readings));
    honest += counting.length;
    doubted += counting.filter(({ id }) => named.has(id)).length;
  }
  return { honest, doubted };
};
