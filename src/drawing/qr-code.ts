/** @module A text as a QR code to ISO/IEC 18004: its modules, and how they are drawn to a size that a printer keeps. */
import { encodeQR } from 'qr';
import { type SvgNode, svg } from './svg.ts';

/** Rows of modules from the top, dark ones true; with the quiet zone round it. */
export type QrCode = readonly (readonly boolean[])[];

/** The standard asks for as many light modules round the code (ISO/IEC 18004, quiet zone). */
const quietZone = 4;

/**
 * The code of a text with the highest error correction (level H): about 30 % of its code words may be lost to dirt.
 * Capitals, figures and a few marks take the least room.
 */
export const qrCode = (text: string): QrCode =>
  encodeQR(text, 'raw', {
    ecc: 'high',
    border: quietZone,
  });

/** One dot of a label printer with 8 dots a millimetre (203 dpi); a module of whole dots has no ragged edge. */
export const dot = 0.125;

/**
 * The largest module with which a code and its quiet zone keep to a side, in whole dots.
 *
 * @param code   from `qrCode`
 * @param side   what there is room for, mm
 * @param most   no larger than this, mm: what is larger takes room from the words
 * @returns mm, 0 where there is no room at all
 */
export const moduleFor = (code: QrCode, side: number, most: number): number =>
  Math.floor(Math.min(most, side / code.length) / dot) * dot;

/** The width of a code with its quiet zone, in the unit of its module. */
export const widthOf = (code: QrCode, module: number): number => code.length * module;

/** The dark modules as one path, runs of a row joined; (x, y) is the corner of the quiet zone. */
export const qrDrawn = (code: QrCode, x: number, y: number, module: number): SvgNode => {
  const runs = code.flatMap((row, down) => {
    const top = y + down * module;
    const strokes: string[] = [];
    for (let from = 0; from < row.length; from += 1) {
      if (!row[from]) continue;
      let to = from;
      while (row[to]) to += 1;
      const left = x + from * module;
      strokes.push(
        `M${thousandths(left)} ${thousandths(top)}h${thousandths((to - from) * module)}v${thousandths(module)}h${thousandths((from - to) * module)}z`,
      );
      from = to;
    }
    return strokes;
  });
  return svg('path', { d: runs.join(''), fill: '#000', 'shape-rendering': 'crispEdges' });
};

/** A dot is an eighth of a millimetre: hundredths would shift it. */
const thousandths = (value: number): number => Math.round(value * 1000) / 1000;
