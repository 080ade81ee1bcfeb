/** @module One card for a bag: the part and its home to read from two metres, and rows to write as found. */
import { moduleFor, qrCode, qrDrawn, widthOf } from '../../drawing/qr-code.ts';
import { type SvgNode, svg } from '../../drawing/svg.ts';
import type { Tag } from '../../job/home/tag.ts';
import { tagText } from '../../job/home/tag-text.ts';
import type { OpenJob } from '../../job/job.ts';
import { type DrawnLabel, filled, scannedText } from './label.ts';
import { capitalReadFrom, sizeForCapital } from './legible.ts';

const margin = 7;
/** A card hangs on a hook or lies in a tray, and is looked for from there. */
const trayDistance = 2;
/** A camera reads it from an arm's length. */
const largestModule = 1.25;

const rows = ['As found', 'Marks on it', 'Measured', 'Shims, washers with it', 'Bagged by, date'] as const;

const ruled = (x: number, y: number, width: number): SvgNode =>
  svg('line', { x1: x, y1: y, x2: x + width, y2: y, stroke: '#000', 'stroke-width': 0.25 });

/** @param size  mm */
export const cardDrawn = (
  job: OpenJob,
  tag: Tag,
  size: { readonly width: number; readonly height: number },
): DrawnLabel => {
  const code = qrCode(scannedText(job, tag));
  const width = size.width - 2 * margin;
  const module = moduleFor(code, width * 0.5, largestModule);
  const square = widthOf(code, module);
  const readable = sizeForCapital(capitalReadFrom(trayDistance));
  const right = { x: margin + square, width: width - square };
  const number = filled(`${tag.number}`, { ...right, y: margin, height: square * 0.7 }, square * 0.7, {
    'font-weight': 700,
  });
  const jobWords = filled(
    job.booked.number,
    { ...right, y: margin + square * 0.72, height: square * 0.28 },
    readable * 0.5,
  );
  const nameBox = { x: margin, y: margin + square, width, height: size.height * 0.26 };
  const name = filled(tag.title, nameBox, readable * 1.1, { 'font-weight': 700 });
  const homeBox = { x: margin, y: nameBox.y + name.height + 1, width, height: readable * 0.6 };
  const home = filled(tag.keeps ? tag.home : '', homeBox, readable * 0.5);
  const from = homeBox.y + home.height + 2;
  const each = (size.height - margin - 4 - from) / rows.length;
  const written = rows.flatMap((row, at) => [
    svg('text', { x: margin, y: from + each * at + 3.2, 'font-size': 3.2 }, row),
    ruled(margin, from + each * (at + 1), width),
  ]);
  const foot = filled(
    `${tagText(job, tag)}   ${job.sheet.engine.title}, plate ${job.booked.plate}`,
    { x: margin, y: size.height - margin - 2.6, width, height: 3.4 },
    3,
  );
  return {
    drawn: svg(
      'g',
      {},
      svg('rect', {
        x: 1,
        y: 1,
        width: size.width - 2,
        height: size.height - 2,
        fill: 'none',
        stroke: '#000',
        'stroke-width': 0.2,
        'stroke-dasharray': '2 2',
      }),
      qrDrawn(code, margin, margin, module),
      ...number.drawn,
      ...jobWords.drawn,
      ...name.drawn,
      ...home.drawn,
      ...written,
      ...foot.drawn,
    ),
    module,
    nameSize: name.size,
  };
};
