/** @module A shim pack drawn as a stack, each shim with its thickness, beside the thickness needed. */
import { type Radians, toDegrees } from '../quantity/brand.ts';
import { boxed, hatched, lettering, line, pens } from './ink.ts';
import { type SvgNode, sheetOf } from './svg.ts';

export interface Stack {
  /** The pump, as it is called: `pump 2`. */
  readonly title: string;
  /** Thickest first, mm. */
  readonly shims: readonly number[];
  /** mm. */
  readonly needed: number;
  /** Fitted less needed, mm. */
  readonly error: number;
  /** The same as crank angle; positive is early. */
  readonly timingError?: Radians;
}

const signed = (value: number, places: number): string => {
  const size = Math.abs(value).toFixed(places);
  const sign = Number(size) === 0 ? '±' : value < 0 ? '−' : '+';
  return `${sign}${size}`;
};

/** `+0.005 mm, 0.01° early`. */
export const errorWords = ({ error, timingError }: Pick<Stack, 'error' | 'timingError'>): string => {
  if (timingError === undefined) return `${signed(error, 3)} mm`;
  const angle = toDegrees(timingError);
  const way = Math.abs(angle) < 0.005 ? 'on time' : angle > 0 ? 'early' : 'late';
  return `${signed(error, 3)} mm, ${Math.abs(angle).toFixed(2)}° ${way}`;
};

const width = 300;
const stackLeft = 20;
const stackWidth = 130;
/** A shim thinner than this could not be lettered. */
const leastHeight = 22;

export const shimStack = (stack: Stack): SvgNode => {
  const total = stack.shims.reduce((sum, shim) => sum + shim, 0);
  const scale = 70 / Math.max(total, stack.needed, 0.001);
  const heights = stack.shims.map((shim) => Math.max(leastHeight, shim * scale));
  const tall = heights.reduce((sum, height) => sum + height, 0);
  const foot = 34 + Math.max(tall, leastHeight);
  let top = foot;
  const layers = stack.shims.flatMap((shim, at) => {
    const high = heights[at] ?? leastHeight;
    top -= high;
    const box = { x: stackLeft, y: top, width: stackWidth, height: high };
    return [
      boxed(box, { fill: pens.paper, stroke: pens.ink, 'stroke-width': 1.4 }),
      hatched({ ...box, width: 46 }, 6, at % 2 === 0 ? 'rising' : 'falling', pens.faint),
      lettering(shim.toFixed(3), stackLeft + 56, top + high / 2 + 5, { 'font-weight': 600 }),
    ];
  });
  const wordsX = stackLeft + stackWidth + 16;
  return sheetOf(
    { width, height: foot + 40 },
    {
      title: `Shim pack of ${stack.title}`,
      description: `${stack.shims.map((shim) => shim.toFixed(3)).join(' + ')} = ${total.toFixed(3)} mm; needed ${stack.needed.toFixed(3)} mm; ${errorWords(stack)}.`,
    },
    lettering(stack.title, stackLeft, 20, { 'font-weight': 700, 'font-size': 16 }),
    ...layers,
    line(8, foot, stackLeft + stackWidth + 12, foot, { 'stroke-width': 3 }),
    lettering('pack', wordsX, foot - 46, { fill: pens.faint, 'font-size': 13 }),
    lettering(`${total.toFixed(3)} mm`, wordsX, foot - 30, { 'font-weight': 700 }),
    lettering('needed', wordsX, foot - 12, { fill: pens.faint, 'font-size': 13 }),
    lettering(`${stack.needed.toFixed(3)} mm`, wordsX, foot + 4),
    lettering(errorWords(stack), stackLeft, foot + 28, { 'font-weight': 600 }),
  );
};
