/** @module Readings as hands make them, honest and slipped: made without the program's own slips, to try them on. */
import type { Instrument } from '../../src/measure/instrument.ts';
import type { Cell, Reading } from '../../src/measure/reading.ts';
import type { Typed } from '../../src/quantity/typed.ts';
import { normalBy } from './worn-engine.ts';

const inch = 25.4;
const length = ({ text, unit }: Typed): number => Number(text) * (unit === 'in' ? inch : 1);

/** What the instrument shows of a true size, as a hand writes it: millimetres to its last digit. */
export const readBy = (
  instrument: Instrument,
  cell: Cell,
  size: number,
  id: string,
  random: () => number,
): Reading => {
  const zero = instrument.zero ? length(instrument.zero) : 0;
  const decimals = (instrument.resolution.text.split('.')[1] ?? '').length;
  const shown = size + zero + length(instrument.repeatability) * normalBy(random);
  return { id, cell, typed: { text: shown.toFixed(decimals), unit: 'mm' }, instrument: instrument.name };
};

/** None where a scale would have to be read below its zero. */
const moved = ({ text, unit }: Typed, by: number): Typed | undefined => {
  const figure = Number(text) + by;
  return figure < 0 ? undefined : { text: figure.toFixed((text.split('.')[1] ?? '').length), unit };
};

const pick = <T>(items: readonly T[], random: () => number): T | undefined =>
  items[Math.floor(random() * items.length)];

/** Two digits beside one another that differ, swapped. */
const transposed = (text: string, random: () => number): string => {
  const pairs = [...text].flatMap((sign, at) => {
    const rest = text.slice(at + 1).replace('.', '');
    const next = rest[0];
    return /\d/.test(sign) && next !== undefined && next !== sign ? [at] : [];
  });
  const at = pick(pairs, random);
  if (at === undefined) return text;
  const other = text[at + 1] === '.' ? at + 2 : at + 1;
  const signs = [...text];
  signs[at] = text[other] ?? '';
  signs[other] = text[at] ?? '';
  return signs.join('');
};

const markMoved = (text: string, by: number): string => {
  const [whole = '', part = ''] = text.split('.');
  const digits = whole + part;
  const at = whole.length + by;
  const padded = at <= 0 ? '0'.repeat(1 - at) + digits : digits.padEnd(at, '0');
  const mark = Math.max(1, at);
  const tail = padded.slice(mark);
  return padded.slice(0, mark).replace(/^0+(?=\d)/, '') + (tail === '' ? '' : `.${tail}`);
};

export const kinds = [
  'thimble turn',
  'misread number',
  'wrong frame',
  'wrong unit',
  'decimal shift',
  'digits transposed',
  'wrong sign',
] as const;
export type SlipKind = (typeof kinds)[number];

/** A figure with a slip in it; undefined where the instrument or the figure does not allow of such a slip. */
export const slipped = (
  { typed }: Reading,
  { kind, turn }: Instrument,
  slip: SlipKind,
  random: () => number,
): Typed | undefined => {
  const way = random() < 0.5 ? 1 : -1;
  switch (slip) {
    case 'thimble turn':
      return turn && moved(typed, way * length(turn));
    case 'misread number':
      return kind === 'feeler set' ? undefined : moved(typed, way * (random() < 0.6 ? 0.1 : 0.2));
    case 'wrong frame':
      return kind === 'outside micrometer' ? moved(typed, way * 25) : undefined;
    case 'wrong unit':
      return { text: typed.text, unit: 'in' };
    case 'decimal shift':
      return { text: markMoved(typed.text, pick([-2, -1, 1, 2, 3], random) ?? 1), unit: typed.unit };
    case 'digits transposed':
      return { text: transposed(typed.text, random), unit: typed.unit };
    case 'wrong sign':
      return kind === 'dial gauge' ? { text: `-${typed.text}`, unit: typed.unit } : undefined;
    default:
      return slip satisfies never;
  }
};

/** By how much a figure is off, mm. */
export const offBy = (typed: Typed, honest: Typed): number => length(typed) - length(honest);
