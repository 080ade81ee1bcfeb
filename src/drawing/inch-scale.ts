/** @module The scale of an inch micrometer as it looks at a reading: sleeve in fortieths, thimble of 25, vernier. */
import { type Barrel, barrelAt, type SleeveLine } from './barrel.ts';
import type { SvgNode } from './svg.ts';

/** All in ten-thousandths of an inch. */
const inch = 10_000;
const turn = 250;
const division = 10;
const fortieths = 40;

export interface InchFigure {
  /** What the frame begins at, in: 2 for one of 2 to 3 in. */
  readonly start: number;
  /** The figure shown, in, within the frame. */
  readonly figure: number;
  /** Whether a vernier on the sleeve gives ten-thousandths. */
  readonly vernier: boolean;
}

/** What a fitter reads off, in words: `sleeve 2.150, thimble 14, vernier 6`. */
export const inchWords = ({ start, figure, vernier }: InchFigure): string => {
  const steps = Math.round((figure - start) * inch);
  const onThimble = steps % turn;
  return [
    `sleeve ${(start + (steps - onThimble) / inch).toFixed(3)}`,
    `thimble ${vernier ? Math.floor(onThimble / division) : onThimble / division}`,
    ...(vernier ? [`vernier ${onThimble % division}`] : []),
  ].join(', ');
};

const sleeveLines: readonly SleeveLine[] = Array.from({ length: fortieths + 1 }, (_, line) => ({
  at: line,
  side: 'below' as const,
  length: line % 4 === 0 ? 20 : line % 2 === 0 ? 14 : 10,
  ...(line % 4 === 0 && { words: String((line / 4) % 10) }),
}));

/**
 * Sleeve, thimble and vernier at a reading: a line each 0.025 in along the sleeve, numbered in tenths; the thimble's
 * 25 divisions pass the line 0.001 in each.
 *
 * @param shown  figure within a frame of one inch
 * @returns drawing; undefined where the figure lies outside the frame
 */
export const inchScale = (shown: InchFigure): SvgNode | undefined => {
  const { start, figure, vernier } = shown;
  const steps = Math.round((figure - start) * inch);
  if (!(steps >= 0 && steps <= inch)) return undefined;
  const barrel: Barrel = {
    edge: steps / turn,
    from: Math.max(0, 4 * Math.floor((steps / turn - 3) / 4)),
    length: 16,
    lines: sleeveLines,
    divisions: 25,
    numbered: 5,
    atLine: (steps % turn) / division,
    vernier,
  };
  return barrelAt(barrel);
};
