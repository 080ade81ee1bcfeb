/** @module An instrument's scale as it would look for a figure; for two figures side by side, to hold against the one in the hand. */
import type { Instrument } from '../measure/instrument.ts';
import { lengthOf, type Typed, typedText } from '../quantity/typed.ts';
import { barrelSize } from './barrel.ts';
import { dialScale, dialWords } from './dial-scale.ts';
import { inchScale, inchWords } from './inch-scale.ts';
import { lettering, pens } from './ink.ts';
import { micrometerScale, micrometerWords } from './micrometer-scale.ts';
import { type SvgNode, sheetOf, svg } from './svg.ts';

/** A scale drawn, and what is read off it in words. */
export interface Scale {
  readonly drawing: SvgNode;
  readonly words: string;
}

const inch = 25.4;

const millimetres = (typed: Typed | undefined): number => {
  const length = typed && lengthOf(typed);
  return length?.kind === 'answer' ? length.value : Number.NaN;
};

const scale = (drawing: SvgNode | undefined, words: string): Scale | undefined =>
  drawing && { drawing, words };

const thimbleOf = ({ range, resolution, turn }: Instrument, figure: number): Scale | undefined => {
  const [start, step, once] = [range.least, resolution, turn].map(millimetres);
  if (start === undefined || step === undefined || once === undefined) return undefined;
  if (Math.abs(once - 0.5) < 1e-9) {
    const shown = { start: Math.round(start), figure, vernier: step < 0.01 - 1e-9 };
    return scale(micrometerScale(shown), micrometerWords(shown));
  }
  if (Math.abs(once - 0.025 * inch) < 1e-9) {
    const shown = {
      start: Math.round(start / inch),
      figure: figure / inch,
      vernier: step < 0.001 * inch - 1e-9,
    };
    return scale(inchScale(shown), inchWords(shown));
  }
  return undefined;
};

const dialOf = ({ resolution, turn }: Instrument, figure: number): Scale | undefined => {
  const shown = { figure, turn: millimetres(turn), division: millimetres(resolution) };
  return scale(dialScale(shown), dialWords(shown));
};

/**
 * The scale of an instrument at a figure.
 *
 * @param instrument  of the register: its kind, range, resolution and turn say which scale it has
 * @param typed       a length
 * @returns undefined where it has no such scale, or cannot show the figure
 */
export const scaleOf = (instrument: Instrument, typed: Typed): Scale | undefined => {
  const figure = millimetres(typed);
  if (!Number.isFinite(figure)) return undefined;
  if (instrument.kind.endsWith('micrometer')) return thimbleOf(instrument, figure);
  return instrument.kind === 'dial gauge' || instrument.setTo ? dialOf(instrument, figure) : undefined;
};

const { width, height } = barrelSize;
const gap = 20;
const head = 26;

/** What is read off, in as many lines as it takes. */
const readOff = (words: string): readonly SvgNode[] => {
  const parts = words.split(', ');
  const lines = parts.length > 2 ? [parts.slice(0, 2), parts.slice(2)] : [parts];
  return lines.map((part, at) =>
    lettering(part.join(', '), width / 2, head + height + 4 + 16 * at, {
      'font-size': 13,
      fill: pens.faint,
      'text-anchor': 'middle',
    }),
  );
};

const placed = ({ drawing, words }: Scale, heading: string, x: number): SvgNode =>
  svg(
    'g',
    { transform: `translate(${x} 0)` },
    lettering(heading, width / 2, 18, { 'font-size': 15, 'font-weight': 700, 'text-anchor': 'middle' }),
    svg('g', { transform: `translate(0 ${head - 4})` }, drawing),
    ...readOff(words),
  );

/**
 * The scale twice: as typed, and as it probably was.
 *
 * @param instrument  with which the reading was taken
 * @param typed       what was typed
 * @param likely      what it probably was
 * @returns undefined where either cannot be drawn, since one alone compares nothing
 */
export const scalePair = (instrument: Instrument, typed: Typed, likely: Typed): SvgNode | undefined => {
  const [was, would] = [scaleOf(instrument, typed), scaleOf(instrument, likely)];
  if (!was || !would) return undefined;
  return sheetOf(
    { width: 2 * width + gap, height: height + head + 28 },
    {
      title: `Scale of ${instrument.name} at ${typedText(typed)} and at ${typedText(likely)}`,
      description: `As typed: ${was.words}. As suspected: ${would.words}.`,
    },
    placed(was, `as typed: ${typedText(typed)}`, 0),
    placed(would, `as suspected: ${typedText(likely)}`, width + gap),
  );
};
