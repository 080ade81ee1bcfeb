/** @module Limits of an engine type: as printed, as made, and as a used part may go back. */
import type { z } from 'zod';
import type { Typed } from '../quantity/typed.ts';
import type { Bounds, Characteristic, Limits, Quantity } from './engine-type.ts';
import { type FigureReader, readFigure } from './figure-reader.ts';
import type { FilePath } from './file-path.ts';
import type { limitsFile } from './file-terms.ts';

type LimitsFile = z.infer<typeof limitsFile>;
type BoundsFile = NonNullable<LimitsFile['new']>;

/** Bounds in the core's unit of their quantity; each figure is also put down as printed, under `under.least` and `under.greatest`. */
export const readBounds = (
  reader: FigureReader,
  bounds: BoundsFile | undefined,
  path: FilePath,
  printed: Record<string, Typed> = {},
  under = '',
  quantity: Quantity = 'length',
): Bounds => {
  const read = (side: 'least' | 'greatest') => {
    const text = bounds?.[side];
    if (text === undefined) return {};
    const figure = readFigure(reader, text, quantity, [...path, side]);
    printed[`${under}.${side}`] = figure.typed;
    return { [side]: figure.amount };
  };
  return { ...read('least'), ...read('greatest') };
};

/**
 * How far a used part may go: the wear limit on the side to which it wears, and where there is none the
 * limit as made; on the other side always the limit as made.
 */
const goesBack = (made: Bounds, wear: Bounds, wears: Characteristic['wears']): Bounds => {
  const least = wears === 'larger' ? made.least : (wear.least ?? made.least);
  const greatest = wears === 'smaller' ? made.greatest : (wear.greatest ?? made.greatest);
  return { ...(least === undefined ? {} : { least }), ...(greatest === undefined ? {} : { greatest }) };
};

/** Limits of a characteristic that wears one way, from the file. */
export const readLimits = (
  reader: FigureReader,
  file: LimitsFile,
  wears: Characteristic['wears'],
  path: FilePath,
  quantity?: Quantity,
): Limits => {
  const printed: Record<string, Typed> = {};
  const made = readBounds(reader, file.new, [...path, 'new'], printed, 'new', quantity);
  const wear = readBounds(reader, file.wear, [...path, 'wear'], printed, 'wear', quantity);
  return { new: made, goesBack: goesBack(made, wear, wears), printed };
};
