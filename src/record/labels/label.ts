/** @module One label: the code to scan, the number to write and to call, the name and the home to read at arm's length. */
import { dot, moduleFor, type QrCode, qrCode, qrDrawn, widthOf } from '../../drawing/qr-code.ts';
import { type SvgNode, svg } from '../../drawing/svg.ts';
import type { Tag } from '../../job/home/tag.ts';
import { tagText } from '../../job/home/tag-text.ts';
import type { OpenJob } from '../../job/job.ts';
import { armsLength, baselines, capitalReadFrom, lettered, sizeForCapital } from './legible.ts';

/** Of the face of a name that is read at arm's length, mm. */
const readable = sizeForCapital(capitalReadFrom(armsLength));

type Size = Pick<Box, 'width' | 'height'>;

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** No label is cut quite where it is meant to be. */
const margin = 1.5;
/** A code is read from about ten times its width; what is larger than for an arm's length takes room from the words. */
const largestModule = 1.25;
/** Smaller ones a camera does not tell apart for certain. */
const leastModule = 0.5;

/** As it is coded: capitals take the least room, and the text is read back in either. */
export const scannedText = (job: OpenJob, tag: Tag): string => tagText(job, tag).toUpperCase();

const words = (text: string, x: number, y: number, size: number, more: SvgNode['attributes'] = {}): SvgNode =>
  svg('text', { x, y, 'font-size': size, ...more }, text);

/** Words in a box, as large as it takes them. */
export const filled = (
  text: string,
  box: Box,
  largest: number,
  more: SvgNode['attributes'] = {},
): { readonly drawn: readonly SvgNode[]; readonly size: number; readonly height: number } => {
  const set = lettered(text, box, largest);
  return {
    drawn: baselines(set).map((line) => words(line.words, box.x, box.y + line.down, set.size, more)),
    size: set.size,
    height: set.height,
  };
};

export interface DrawnLabel {
  readonly drawn: SvgNode;
  /** mm. */
  readonly module: number;
  /** Of the part's name, mm. */
  readonly nameSize: number;
}

const bold = { 'font-weight': 700 };

const drawnWith = (job: OpenJob, tag: Tag, size: Size, code: QrCode, module: number): DrawnLabel => {
  const square = widthOf(code, module);
  // On whole dots, as the modules are.
  const top = Math.round((size.height - square) * 4) / 8;
  const left = square + 0.5;
  const room = { x: left, y: margin, width: size.width - left - margin, height: size.height - 2 * margin };
  const numberSize = Math.min(2 * readable, room.height * 0.3);
  const jobSize = Math.min(readable * 0.7, numberSize * 0.7);
  const jobBox = { ...room, width: room.width * 0.6, height: numberSize };
  const jobWords = filled(job.booked.number, { ...jobBox, x: room.x + room.width }, jobSize, {
    'text-anchor': 'end',
  });
  const homeSize = Math.min(readable * 0.75, room.height * 0.12);
  const under = room.y + numberSize;
  const nameRoom = { ...room, y: under, height: room.height - numberSize };
  const roomForHome = { ...nameRoom, height: nameRoom.height - homeSize * 1.15 };
  const named = filled(tag.title, roomForHome, readable * 1.6, bold);
  // The name is what is read from afar: where both do not fit, the home stands on the tag's sheet alone.
  const both = named.size >= readable;
  const name = both ? named : filled(tag.title, nameRoom, readable * 1.6, bold);
  const home =
    both && tag.keeps
      ? filled(
          tag.home,
          {
            ...room,
            y: under + name.height,
            height: Math.max(homeSize, room.y + room.height - under - name.height),
          },
          homeSize,
        ).drawn
      : [];
  return {
    drawn: svg(
      'g',
      {},
      qrDrawn(code, 0, top, module),
      words(`${tag.number}`, room.x, room.y + numberSize * 0.8, numberSize, bold),
      ...jobWords.drawn,
      ...name.drawn,
      ...home,
    ),
    module,
    nameSize: name.size,
  };
};

/**
 * A label lying with its long side across, from (0, 0): its code as large as leaves the name readable at arm's length.
 *
 * @param size  mm
 */
export const labelDrawn = (job: OpenJob, tag: Tag, size: Size): DrawnLabel => {
  const code = qrCode(scannedText(job, tag));
  const side = Math.min(size.height - 2 * margin, size.width * 0.4);
  const most = moduleFor(code, side, largestModule);
  for (let module = most; module >= leastModule; module -= dot) {
    const drawn = drawnWith(job, tag, size, code, module);
    if (drawn.nameSize >= readable) return drawn;
  }
  return drawnWith(job, tag, size, code, Math.min(most, leastModule));
};
