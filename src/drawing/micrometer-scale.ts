/** @module The scale of a metric micrometer as it looks at a reading: sleeve with half-millimetre line, thimble of 50, vernier. */
import { type Barrel, barrelAt, type SleeveLine } from './barrel.ts';
import type { SvgNode } from './svg.ts';

/** All in thousandths of a millimetre, so that no figure is rounded on the way. */
const turn = 500;
const division = 10;
const millimetre = 1000;
const frame = 25;

export interface MicrometerFigure {
  /** What the frame begins at, mm: 50 for one of 50 to 75 mm. */
  readonly start: number;
  /** The figure shown, mm, within the frame. */
  readonly figure: number;
  /** Whether a vernier on the sleeve gives thousandths. */
  readonly vernier: boolean;
}

/** What a fitter reads off, in words: `sleeve 54, half-millimetre line showing, thimble 47, vernier 2`. */
export const micrometerWords = ({ start, figure, vernier }: MicrometerFigure): string => {
  const steps = Math.round((figure - start) * millimetre);
  const turns = Math.floor(steps / turn);
  const onThimble = steps - turns * turn;
  const words = [
    `sleeve ${start + Math.floor(turns / 2)}`,
    turns % 2 === 1 ? 'half-millimetre line showing' : 'half-millimetre line not showing',
    `thimble ${vernier ? Math.floor(onThimble / division) : onThimble / division}`,
  ];
  return [...words, ...(vernier ? [`vernier ${onThimble % division}`] : [])].join(', ');
};

const sleeveLines = (start: number): readonly SleeveLine[] =>
  Array.from({ length: 2 * frame + 1 }, (_, half) => {
    const whole = half % 2 === 0;
    const five = half % 10 === 0;
    return {
      at: half / 2,
      side: whole ? ('above' as const) : ('below' as const),
      length: five ? 20 : 13,
      ...(five && { words: String(start + half / 2) }),
    };
  });

/**
 * Sleeve, thimble and vernier at a reading: whole millimetres above the line along the sleeve, the lines of the
 * halves below it; the thimble's edge stands where the figure is, and its 50 divisions pass the line 0.01 mm each.
 *
 * @param shown  figure within a frame of 25 mm
 * @returns drawing; undefined where the figure lies outside the frame
 */
export const micrometerScale = (shown: MicrometerFigure): SvgNode | undefined => {
  const { start, figure, vernier } = shown;
  const steps = Math.round((figure - start) * millimetre);
  if (!(steps >= 0 && steps <= frame * millimetre)) return undefined;
  const barrel: Barrel = {
    edge: steps / millimetre,
    from: Math.max(0, 5 * Math.floor((steps / millimetre - 2) / 5)),
    length: 10,
    lines: sleeveLines(start),
    divisions: 50,
    numbered: 5,
    atLine: (steps % turn) / division,
    vernier,
  };
  return barrelAt(barrel);
};
