/** @module Which fields of an engine type hold a figure with a unit, and of which kind. */
import type { Quantity } from './engine-type.ts';
import type { FilePath } from './file-path.ts';
import { gaugeNamed } from './gauge.ts';

export type FigureKind =
  | Quantity
  | 'time'
  | 'speed'
  | 'ratio'
  | 'temperature'
  | 'volume-per-time'
  | 'angle-per-length'
  | 'length-per-angle';

const kinds: ReadonlyMap<string, FigureKind> = new Map([
  ['stroke', 'length'],
  ['rod', 'length'],
  ['pin-offset', 'length'],
  ['least', 'length'],
  ['greatest', 'length'],
  ['clean-up', 'length'],
  ['datum', 'length'],
  ['tolerance', 'length'],
  ['shims', 'length'],
  ['as-made', 'length'],
  ['bored-to', 'length'],
  ['most', 'mass'],
  ['life', 'time'],
  ['counted-on', 'time'],
  ['usual', 'time'],
  ['stages', 'torque'],
  ['x', 'length'],
  ['y', 'length'],
  ['ring', 'length'],
  ['spacing', 'length'],
  ['apart', 'length'],
  ['longest', 'length'],
  ['hours', 'time'],
  ['rate', 'angle-per-length'],
  ['rim', 'length-per-angle'],
  ['timing-point', 'angle'],
  ['base-radius', 'length'],
  ['inlet-opens', 'angle'],
  ['inlet-closes', 'angle'],
  ['exhaust-opens', 'angle'],
  ['exhaust-closes', 'angle'],
  ['rest', 'angle'],
]);

const ends = ['least', 'greatest'];

/** What a gauge that a manual gives limits for is a figure of. */
export const gaugeKind = (gauge: string): FigureKind => (gaugeNamed(gauge)?.of[0] ?? 'length') as FigureKind;

const inRunIn: ReadonlyMap<string, FigureKind> = new Map([
  ['speed', 'speed'],
  ['load', 'ratio'],
  ['set-within', 'ratio'],
  ['with-oil-at', 'temperature'],
  ['spread', 'temperature'],
  ['no-oil-pressure-within', 'time'],
]);

const runInKind = (path: FilePath): FigureKind | undefined => {
  const [key, before] = [String(path.at(-1)), String(path.at(-2))];
  if (ends.includes(key)) return gaugeKind(before);
  return before === 'within' ? 'temperature' : inRunIn.get(key);
};

const quantities: readonly Quantity[] = ['length', 'angle', 'force', 'torque', 'pressure', 'mass'];

/**
 * The kind of figure wanted at a path, by the key or by the list that it stands in.
 *
 * @param quantity  of the characteristic that the path leads through, where the file gives one
 */
export const figureKindAt = (path: FilePath, quantity?: unknown): FigureKind | undefined => {
  if (path[0] === 'characteristics' && path[2] === 'derived') return undefined;
  // What a sum is given and keeps may be a figure of any kind.
  if (path[0] === 'operations') return undefined;
  if (path[0] === 'run-in') return runInKind(path);
  const key = typeof path.at(-1) === 'number' ? path.at(-2) : path.at(-1);
  if (path[0] === 'offers' && path[2] === 'mass') return 'mass';
  const own = path[0] === 'characteristics' ? quantities.find((one) => one === quantity) : undefined;
  return own !== undefined && ends.includes(String(key)) ? own : kinds.get(String(key));
};
