/** @module A reading evaluated to a verdict: against plain arithmetic on the same figures, and against the library `uncertainties`. */
import { spawnSync } from 'node:child_process';
import type { EngineType } from '../src/engine/engine-type.ts';
import { judgeAll, judgeCell } from '../src/measure/judge.ts';
import { type Cell, cellKey, type Reading } from '../src/measure/reading.ts';
import { entryOrder } from '../src/measure/scheme.ts';
import type { Sheet } from '../src/measure/sheet.ts';
import { instruments, smallEngine } from '../test/engines/small-engine.ts';
import { type BenchRow, inTurns } from './bench.ts';

export const name = 'measure';

const evaluations = 50_000;
const rounds = 11;
const goal = 1_000_000;

/** A long engine, so that a job of thousands of readings has a cell for each. */
const longEngine = (mains: number): EngineType => ({
  ...smallEngine,
  places: new Map(
    Array.from({ length: mains }, (_, index) => {
      const id = `main.${index + 1}`;
      return [id, { id, kind: 'main', number: index + 1, title: id }] as const;
    }),
  ),
});

/** Sizes all over the tolerance and somewhat beyond, so that no verdict is a foregone one. */
const readingOf = (cell: Cell, index: number): Reading => ({
  id: String(index),
  cell,
  typed: { text: `54.${920 + ((index * 7919) % 90)}`, unit: 'mm' },
  instrument: 'mic-50-75',
});

const sheetOf = (engine: EngineType, readings: readonly Reading[]): Sheet => ({
  engine,
  instruments: new Map(instruments.map((each) => [each.name, each])),
  readings: new Map(readings.map((reading) => [cellKey(reading.cell), [reading]])),
  sizesFound: new Map(),
  conformance: 0.95,
});

/*
 * The same by hand, for this one instrument and these limits, as a calculator would have it: no names, no units but
 * mm, nothing shared, nothing refused, and a normal value instead of Student's.
 */
const byHand = (text: string): { readonly size: number; readonly half: number; readonly verdict: string } => {
  const size = Number(text) - 0;
  const step = 0.001 / 2 / Math.sqrt(3);
  const zero = Math.hypot(0.0015, step);
  const heat = (11.5e-6 * size) / Math.sqrt(3);
  const u = Math.sqrt((0.005 * 0.005) / 3 + zero * zero + 0.0015 * 0.0015 + step * step + heat * heat);
  const band = 1.6449 * u;
  const verdict =
    size >= 54.93 + band && size <= 55 - band
      ? 'within'
      : size < 54.93 - band || size > 55 + band
        ? 'outside'
        : 'unsure';
  return { size, half: 1.96 * u, verdict };
};

const python = `
import sys, time
from uncertainties import ufloat
n = int(sys.argv[1])
start = time.perf_counter()
for i in range(n):
  size = ufloat(54.92 + (i * 7919 % 90) / 1000, 0) - ufloat(0, 0.00153)
  size = size + ufloat(0, 0.00289) + ufloat(0, 0.0015) + ufloat(0, 0.00029) + size.n * 11.5e-6 * ufloat(0, 0.577)
  u = size.s
  verdict = 'within' if 54.93 + 1.645 * u <= size.n <= 55 - 1.645 * u else 'unsure'
print((time.perf_counter() - start) * 1000 / n)
`;

/** Milliseconds for one evaluation by the library; undefined where it is not on this machine. */
const byLibrary = (): number | undefined => {
  const run = spawnSync('/usr/bin/python3', ['-W', 'ignore', '-c', python, '5000'], { encoding: 'utf8' });
  return run.status === 0 ? Number(run.stdout) : undefined;
};

const perSecond = (milliseconds: number): string =>
  `${Math.round(1000 / milliseconds / 1000)} thousand a second`;

const evaluated = async (): Promise<readonly BenchRow[]> => {
  const [cell] = entryOrder(smallEngine);
  if (!cell) throw new Error('the engine has no cells');
  // Typed afresh for every round, the one that warms up among them: making them is not timed.
  const typed = Array.from({ length: rounds + 1 }, (_, round) =>
    Array.from({ length: evaluations }, (__, index) => readingOf(cell, round * evaluations + index)),
  );
  const empty = sheetOf(smallEngine, []);
  // A sheet whose one cell is another reading each time: nothing that was kept of a former one is of use.
  const key = cellKey(cell);
  let told = 0;
  const { ours, other } = await inTurns(
    () => {
      const held = new Map(empty.readings);
      const sheet = { ...empty, readings: held };
      for (const reading of typed.pop() ?? []) {
        held.set(key, [reading]);
        if (judgeCell(sheet, cell).verdict === 'unsure') told += 1;
      }
    },
    () => {
      for (let index = 0; index < evaluations; index += 1) {
        if (byHand(`54.${920 + ((index * 7919) % 90)}`).verdict === 'unsure') told += 1;
      }
    },
    rounds,
  );
  const [one, hand] = [ours / evaluations, other / evaluations];
  const library = byLibrary();
  const unit = 'µs';
  const what = 'one reading, typed text to verdict';
  return [
    {
      what,
      against: 'plain arithmetic by hand',
      unit,
      ours: one * 1000,
      other: hand * 1000,
      note: `${perSecond(one)}; by hand nothing is named, refused or shared`,
    },
    { what, against: 'the goal, a million a second', unit, ours: one * 1000, other: 1e6 / goal },
    ...(library === undefined
      ? []
      : [{ what, against: 'Python uncertainties', unit, ours: one * 1000, other: library * 1000 }]),
    ...(told === 0
      ? [{ what: 'nothing was unsure: the bench is wrong', against: '', unit, ours: 1, other: 0 }]
      : []),
  ];
};

const frame = 1000 / 60;

/** One more reading on a sheet of thousands: its cell alone, then its place with all that is derived there. */
const oneMore = async (): Promise<readonly BenchRow[]> => {
  const engine = longEngine(625);
  const cells = entryOrder(engine).slice(0, 5000);
  const sheet = sheetOf(engine, cells.map(readingOf));
  judgeAll(sheet);
  const [cell] = cells;
  if (!cell) throw new Error('the engine has no cells');
  let count = 0;
  const grown = (): Sheet => {
    count += 1;
    const readings = new Map(sheet.readings).set(cellKey(cell), [readingOf(cell, count)]);
    return { ...sheet, readings };
  };
  const alone = await inTurns(
    () => judgeCell(grown(), cell),
    () => undefined,
    51,
  );
  const whole = await inTurns(
    () => judgeAll(grown()),
    () => undefined,
    21,
  );
  return [
    {
      what: `one more reading among ${cells.length}, its verdict`,
      against: 'one frame',
      unit: 'ms',
      ours: alone.ours,
      other: frame,
      note: 'copying the sheet is part of it',
    },
    {
      what: `one more reading among ${cells.length}, every verdict anew`,
      against: 'one frame',
      unit: 'ms',
      ours: whole.ours,
      other: frame,
      note: `${engine.places.size} places, five characteristics each`,
    },
  ];
};

export const run = async (): Promise<readonly BenchRow[]> => [...(await evaluated()), ...(await oneMore())];
