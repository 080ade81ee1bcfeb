/** @module The slider-crank to scale: cylinder, piston, rod and crank at an angle, the travel below the top dimensioned. */
import { mm, radians, toDegrees } from '../../quantity/brand.ts';
import { type Crank, topAngle, topHeight } from '../../reckon/crank.ts';
import type { Values } from '../../reckon/reckoning.ts';
import { arrowHead, boxed, hatched, lettering, line, pens } from '../ink.ts';
import { round, type SvgNode, sheetOf, svg } from '../svg.ts';
import { lettered, numberIn, type Picture } from './picture.ts';

const width = 460;
const height = 520;
const top = 96;

const crankIn = ({ quantities }: Values): Crank => ({
  stroke: mm(quantities.stroke?.value ?? 0),
  rod: mm(quantities.rod?.value ?? 0),
  pinOffset: mm(quantities['pin-offset']?.value ?? 0),
});

/** The rim, no larger than there is room for, with the length from the top to where the crank stands. */
const rimDrawn = (
  rim: { readonly x: number; readonly y: number; readonly r: number },
  at: number,
  words: string,
): readonly SvgNode[] => {
  const turned = Math.atan2(Math.sin(at), Math.cos(at));
  const end = { x: rim.x + rim.r * Math.sin(turned), y: rim.y - rim.r * Math.cos(turned) };
  return [
    svg('path', {
      d: `M ${round(rim.x)} ${round(rim.y - rim.r)} A ${round(rim.r)} ${round(rim.r)} 0 0 ${turned >= 0 ? 1 : 0} ${round(end.x)} ${round(end.y)}`,
      fill: 'none',
      stroke: pens.accent,
      'stroke-width': 4,
    }),
    lettering(`${words} on the rim`, rim.x + rim.r + 10, rim.y + 36, { 'font-weight': 700, 'font-size': 14 }),
  ];
};

/** @param angle  from top dead centre, radians */
const drawn = (
  crank: Crank,
  angle: number,
  words: {
    readonly title: string;
    readonly travel: string;
    readonly angle: string;
    readonly rate: string;
    /** Along the rim of the flywheel, '' where no rim was given. */
    readonly rim: string;
  },
): SvgNode => {
  const { stroke, rod, pinOffset } = crank;
  const throwOf = stroke / 2;
  const highest = topHeight(crank);
  const at = topAngle(crank) + angle;
  // From the highest pin to the lowest crank pin, with the piston's crown above.
  const scale = (height - top - 40) / (highest + throwOf);
  const bore = Math.max(70, stroke * 0.85 * scale);
  const pinX = width / 2 - 40;
  const y = (above: number) => top + (highest - above) * scale;
  const crankX = pinX - pinOffset * scale;
  const crankPin = { x: crankX + throwOf * Math.sin(at) * scale, y: y(throwOf * Math.cos(at)) };
  const across = throwOf * Math.sin(at) - pinOffset;
  const pinHeight = throwOf * Math.cos(at) + Math.sqrt(rod ** 2 - across ** 2);
  const pin = y(pinHeight);
  const crown = 30;
  const walls = { y: top - crown - 26, height: Math.min(stroke * scale + crown + 60, height - 120) };
  const side = pinX + bore / 2 + 46;
  return sheetOf(
    { width, height },
    {
      title: words.title,
      description: `Crank ${words.angle} from top dead centre; the piston is ${words.travel} below it; ${words.rate} there${words.rim === '' ? '' : `; ${words.rim} along the rim`}.`,
    },
    ...[-1, 1].flatMap((which) => {
      const wall = {
        x: which < 0 ? pinX - bore / 2 - 16 : pinX + bore / 2,
        y: walls.y,
        width: 16,
        height: walls.height,
      };
      return [hatched(wall, 8, 'rising', pens.faint), boxed(wall, { fill: 'none', stroke: pens.ink })];
    }),
    line(pinX - bore / 2 - 16, top - crown, side + 60, top - crown, {
      'stroke-dasharray': '8 4',
      stroke: pens.faint,
    }),
    lettering('top dead centre', side + 62, top - crown - 6, {
      'text-anchor': 'end',
      'font-size': 13,
      fill: pens.faint,
    }),
    svg('circle', {
      cx: round(crankX),
      cy: round(y(0)),
      r: round(throwOf * scale),
      fill: 'none',
      stroke: pens.faint,
      'stroke-dasharray': '4 4',
    }),
    boxed(
      { x: pinX - bore / 2 + 1, y: pin - crown, width: bore - 2, height: crown * 2 },
      { fill: pens.paper, stroke: pens.ink, 'stroke-width': 2 },
    ),
    line(pinX, pin, crankPin.x, crankPin.y, { 'stroke-width': 7 }),
    line(crankX, y(0), crankPin.x, crankPin.y, { 'stroke-width': 9, stroke: pens.accent }),
    line(crankX, y(0), crankX, y(throwOf) - 14, { stroke: pens.faint, 'stroke-dasharray': '3 3' }),
    ...[
      { x: pinX, y: pin, r: 8 },
      { x: crankPin.x, y: crankPin.y, r: 9 },
      { x: crankX, y: y(0), r: 11 },
    ].map((circle) =>
      svg('circle', {
        cx: round(circle.x),
        cy: round(circle.y),
        r: circle.r,
        fill: pens.paper,
        stroke: pens.ink,
        'stroke-width': 2,
      }),
    ),
    line(side - 8, pin - crown, side + 60, pin - crown, { stroke: pens.accent }),
    line(side + 20, top - crown, side + 20, pin - crown, { stroke: pens.accent, 'stroke-width': 1.6 }),
    ...(pin - top > 22
      ? [
          arrowHead(side + 20, top - crown, 'up', pens.accent),
          arrowHead(side + 20, pin - crown, 'down', pens.accent),
        ]
      : []),
    lettering(words.travel, side + 30, pin - crown + 20, { 'font-weight': 700, 'font-size': 17 }),
    lettering(words.angle, crankX + throwOf * scale + 22, y(0) - 6, { 'font-weight': 700, 'font-size': 17 }),
    lettering(words.rate, crankX + throwOf * scale + 22, y(0) + 16, { 'font-size': 13, fill: pens.faint }),
    ...(words.rim === '' ? [] : rimDrawn({ x: crankX, y: y(0), r: throwOf * scale + 12 }, at, words.rim)),
  );
};

const angleWords = (angle: number): string => `${Number(toDegrees(radians(angle)).toFixed(3))}°`;

export const pistonTravelPicture: Picture = (given, reckoned) => {
  const angle = given.quantities.angle?.value ?? 0;
  return drawn(crankIn(given), angle, {
    title: 'The piston at this crank angle',
    travel: lettered(reckoned, 'travel'),
    angle: angleWords(angle),
    rate: lettered(reckoned, 'per-degree'),
    rim: lettered(reckoned, 'rim-length'),
  });
};

export const crankAnglePicture: Picture = (given, reckoned) => {
  const before = (numberIn(reckoned, 'before') * Math.PI) / 180;
  const travel = given.quantities.travel?.value ?? 0;
  return drawn(crankIn(given), -before, {
    title: 'The crank before top dead centre at this piston travel',
    travel: `${Number(travel.toFixed(4))} mm`,
    angle: angleWords(-before),
    rate: lettered(reckoned, 'per-degree'),
    rim: lettered(reckoned, 'rim-before'),
  });
};
