/** @module The oil film: the journal where it lies in its clearance with the pressure around it, and film and pressure along the turn. */
import { filmPressure } from '../../reckon/film-pressure.ts';
import { chart } from '../chart.ts';
import { lettering, line, pens } from '../ink.ts';
import { sideBySide } from '../side-by-side.ts';
import { round, type SvgNode, sheetOf, svg } from '../svg.ts';
import { lettered, numberIn, type Picture } from './picture.ts';

const width = 640;
const height = 400;

/** The load points down; angles count from the widest gap in the direction of turning, which is anticlockwise. */
const journalInBearing = (
  eccentricity: number,
  attitude: number,
  pressureAt: (angle: number) => number,
  words: { readonly film: string; readonly pressure: string },
): SvgNode => {
  const [cx, cy, bearing, play] = [width / 2, 205, 120, 30];
  const journal = bearing - play;
  // The narrowest gap stands past the load's line by the attitude; on paper, angles grow clockwise from the right.
  const narrowest = Math.PI / 2 - attitude;
  const towards = (angle: number, far: number) =>
    [cx + far * Math.cos(angle), cy + far * Math.sin(angle)] as const;
  const [jx, jy] = towards(narrowest, play * eccentricity);
  const outline = Array.from({ length: 121 }, (_, step) => {
    const angle = (2 * Math.PI * step) / 120;
    const [x, y] = towards(narrowest + Math.PI - angle, bearing + 12 + 60 * pressureAt(angle));
    return `${round(x)} ${round(y)}`;
  });
  const [fx, fy] = towards(narrowest, bearing);
  return sheetOf(
    { width, height },
    { title: 'The journal in its clearance, drawn large', description: `Least film ${words.film}.` },
    svg('path', { d: `M${outline.join('L')}Z`, fill: 'none', stroke: pens.accent, 'stroke-width': 2 }),
    svg('circle', { cx, cy, r: bearing + 12, fill: pens.paper, stroke: pens.faint }),
    svg('circle', { cx, cy, r: bearing, fill: pens.paper, stroke: pens.ink, 'stroke-width': 2 }),
    svg('circle', {
      cx: round(jx),
      cy: round(jy),
      r: journal,
      fill: 'none',
      stroke: pens.ink,
      'stroke-width': 2.4,
    }),
    line(jx - 12, jy, jx + 12, jy),
    line(jx, jy - 12, jx, jy + 12),
    line(jx, jy - 70, jx, jy - 24, { 'stroke-width': 2.4 }),
    svg('path', { d: `M${round(jx)} ${round(jy - 14)}l-5 -14h10Z`, fill: pens.ink }),
    lettering('load', jx + 12, jy - 50, { 'font-size': 13 }),
    line(fx, fy, 70, cy + 130, { stroke: pens.faint }),
    lettering('least film', 12, cy + 148, { 'font-size': 13, fill: pens.faint }),
    lettering(words.film, 12, cy + 170, { 'font-weight': 700 }),
    lettering('turns anticlockwise', 12, 24, { 'font-size': 13, fill: pens.faint }),
    lettering('pressure, greatest', width - 12, 24, {
      'font-size': 13,
      fill: pens.faint,
      'text-anchor': 'end',
    }),
    lettering(words.pressure, width - 12, 46, {
      'font-weight': 700,
      'text-anchor': 'end',
      fill: pens.accent,
    }),
  );
};

export const oilFilmPicture: Picture = ({ quantities }, reckoned) => {
  const eccentricity = numberIn(reckoned, 'eccentricity');
  const clearance = quantities.clearance?.value ?? 0;
  const lengthOverDiameter = (quantities.length?.value ?? 1) / (quantities.diameter?.value ?? 1);
  const { angles, pressures, grid } = filmPressure(
    { eccentricity, lengthOverDiameter },
    { around: 128, across: 8 },
  );
  const along = [...angles].map((angle, i) => [angle, pressures[i * grid.across] ?? 0] as const);
  const most = Math.max(...along.map(([, pressure]) => pressure));
  const pressureAt = (angle: number): number => {
    const ahead = along.findIndex(([at]) => at >= angle);
    const [after = [0, 0], before = after] = [along[ahead], along[ahead - 1]];
    const part = after[0] > before[0] ? (angle - before[0]) / (after[0] - before[0]) : 0;
    return (before[1] + part * (after[1] - before[1])) / most;
  };
  const degrees = Array.from({ length: 181 }, (_, step) => 2 * step);
  const widest = (clearance / 2) * (1 + eccentricity) * 1000;
  const film = (gap: number, off: number) =>
    degrees.map((at) => [at, (gap / 2) * 1000 * (1 + off * Math.cos((at * Math.PI) / 180))] as const);
  return sideBySide(
    'The oil film',
    [
      journalInBearing(eccentricity, (numberIn(reckoned, 'attitude') * Math.PI) / 180, pressureAt, {
        film: lettered(reckoned, 'least-film'),
        pressure: lettered(reckoned, 'greatest-pressure'),
      }),
      chart({
        title: 'Film and pressure around the bearing',
        description: `Thinnest ${lettered(reckoned, 'least-film')}; greatest pressure ${lettered(reckoned, 'greatest-pressure')}.`,
        x: { words: 'from the widest gap, degrees', from: 0, to: 360 },
        y: { words: 'film, µm', from: 0, to: widest * 1.1 },
        curves: [
          { points: film(clearance, eccentricity), words: 'film' },
          {
            points: degrees.map((at) => [at, pressureAt((at * Math.PI) / 180) * widest] as const),
            stroke: 'accent',
          },
        ],
        marks: [
          { at: [180, (clearance / 2) * (1 - eccentricity) * 1000], words: lettered(reckoned, 'least-film') },
        ],
      }),
    ],
    1,
  );
};
