/** @module A Quillfeather of which one cylinder was bored to 0.50 before: booked in, its instruments brought, measured all over. */
import { instruments } from '../../demo/instruments.ts';
import type { RequestOf } from '../../src/job/command.ts';
import type { Cell } from '../../src/measure/reading.ts';
import { entryOrder } from '../../src/measure/scheme.ts';
import { readingOf } from '../browser/sound-engine.ts';
import { quillfeatherText } from '../engines/demo-engines.ts';
import { Bench } from './bench.ts';

export const bookOversize = (): Bench => {
  const bench = new Bench();
  bench.done({
    kind: 'book in',
    number: '26-050',
    engineType: quillfeatherText,
    owner: 'Long Withy Growers',
    plate: 'QF-0950',
    hoursRun: { text: '2100', unit: 'h' },
    complaint: 'smokes on one cylinder',
    currency: 'crowns',
    conformance: 0.95,
  });
  for (const instrument of instruments) bench.done({ kind: 'bring instrument', instrument });
  return bench;
};

/** How much larger than standard a cell is, mm: bore and piston of the second cylinder, as the engine type's sizes are. */
const secondBored = ({ place, characteristic }: Cell): number =>
  (place === 'bore.2' && characteristic === 'bore-diameter') ||
  (place === 'piston.2' && characteristic === 'piston-diameter')
    ? 0.5
    : 0;

/** A reading about the middle of the limits as made, of the size that the part is of. */
const readingAt = (bench: Bench, cell: Cell, at: number, larger: number): RequestOf<'take reading'> => {
  const reading = readingOf(bench.open.sheet.engine, cell, at);
  if (larger === 0) return reading;
  const { text, unit } = reading.typed;
  return {
    ...reading,
    typed: { text: (Number(text) + larger).toFixed(text.split('.')[1]?.length ?? 0), unit },
  };
};

/** Reads every cell. */
export const measureOversize = (bench: Bench, larger: (cell: Cell) => number = secondBored): Bench => {
  for (const [at, cell] of entryOrder(bench.open.sheet.engine).entries())
    bench.done(readingAt(bench, cell, at, larger(cell)));
  return bench;
};

/** Notes that the second bore stands at 0.50. */
export const foundOversize: RequestOf<'note size found'> = {
  kind: 'note size found',
  component: 'bores',
  place: 'bore.2',
  size: '0.50',
};

/** The same engine with the size noted, and measured. */
export const knownOversize = (): Bench => {
  const bench = bookOversize();
  bench.done(foundOversize);
  return measureOversize(bench);
};
