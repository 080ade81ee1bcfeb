/** @module The engine drawn in section along its crank, every place marked by how far it has been proved. */
import type { EngineType, Place, PlaceId, PlaceKind } from '../engine/engine-type.ts';
import { type EngineLayout, engineLayout } from './engine-layout.ts';
import { arrowHead, type Box, boxed, hatched, lettering, line, pens } from './ink.ts';
import { flagOver, legendHigh, legendOfWay, type MapWay, signWords } from './map-way.ts';
import { type Mark, marked, marks } from './mark.ts';
import { round, type SvgNode, sheetOf, svg } from './svg.ts';

/** Gloved fingers want about 10 mm: a place smaller than this is caught in a wider field. */
const reach = 48;

const caught = (box: Box): Box => {
  const width = Math.max(reach, box.width);
  const height = Math.max(reach, box.height);
  return {
    x: box.x - (width - box.width) / 2,
    y: box.y - (height - box.height) / 2,
    width,
    height,
  };
};

const wall = (box: Box): readonly SvgNode[] => [
  boxed(box, { fill: pens.paper, stroke: pens.ink, 'stroke-width': 1.4 }),
  hatched(box, 7, 'falling', pens.faint),
];

/** A bore is two cut walls with the piston's room between them; both are filled as it is proved. */
const boreDrawn = (box: Box, mark: Mark): readonly SvgNode[] => {
  const thick = 22;
  const right = { ...box, x: box.x + box.width - thick, width: thick };
  return [...marked({ ...box, width: thick }, mark), ...marked(right, mark)];
};

const pistonDrawn = (box: Box, mark: Mark): readonly SvgNode[] => [
  ...marked(box, mark),
  ...[6, 11].map((down) =>
    line(box.x, box.y + down, box.x + box.width, box.y + down, { 'stroke-width': 2.4 }),
  ),
];

const pumpDrawn = (box: Box, mark: Mark): readonly SvgNode[] => {
  const middle = box.x + box.width / 2;
  return [
    boxed({ x: middle - 5, y: box.y, width: 10, height: 12 }, { fill: pens.paper, stroke: pens.ink }),
    ...marked({ x: box.x + 8, y: box.y + 10, width: box.width - 16, height: box.height - 16 }, mark),
    line(box.x + 2, box.y + box.height - 5, box.x + box.width - 2, box.y + box.height - 5, {
      'stroke-width': 3,
    }),
  ];
};

const shape = (drawn: string, box: Box, mark: Mark): readonly SvgNode[] => {
  if (drawn === 'bore') return boreDrawn(box, mark);
  if (drawn === 'piston') return pistonDrawn(box, mark);
  if (drawn === 'pump') return pumpDrawn(box, mark);
  return marked(box, mark);
};

const standsAlone = ({ drawn }: PlaceKind): boolean => drawn === 'thrust' || drawn === 'gear';

/** Places beside others of their kind carry their number. */
const numbered = (place: Place, box: Box, kind: PlaceKind): readonly SvgNode[] => {
  if (kind.count === 1 || kind.drawn === 'head' || standsAlone(kind)) return [];
  const [x, y] = kind.drawn === 'bore' ? [box.x + 5, box.y + 15] : [box.x + 4, box.y + 14];
  const width = 7 + 8.5 * String(place.number).length;
  return [
    boxed({ x: x - 2, y: y - 13, width, height: 16 }, { fill: pens.paper }),
    lettering(String(place.number), x + 1, y, { 'font-weight': 700 }),
  ];
};

/** Those that have no row to stand in carry their name. */
const named = (box: Box, kind: PlaceKind): readonly SvgNode[] =>
  standsAlone(kind)
    ? kind.title.split(' ').map((word, at) =>
        lettering(word, box.x + box.width / 2, box.y + box.height + 16 + at * 15, {
          'text-anchor': 'middle',
          fill: pens.faint,
        }),
      )
    : [];

/** A place at which nothing is measured is drawn thin: it can be reached all the same. */
const bare = (box: Box, place: Place, kind: PlaceKind): readonly SvgNode[] => [
  boxed(box, { fill: 'none', stroke: pens.faint }),
  ...numbered(place, box, kind),
];

/** What cannot be measured but makes it an engine: centre line, webs, rods, flywheel. */
const crankwork = (layout: EngineLayout): readonly SvgNode[] => {
  const left = layout.mains[0]?.x ?? 0;
  const last = layout.mains.at(-1);
  const right = last ? last.x + last.width : layout.width;
  const webs = layout.throws.flatMap(({ centre, pin }) =>
    [-44, 32].map((across) =>
      boxed(
        {
          x: centre + across,
          y: layout.crankLine - Math.max(pin, 0) - 30,
          width: 12,
          height: Math.abs(pin) + 60,
        },
        { fill: pens.paper, stroke: pens.ink, 'stroke-width': 1.2 },
      ),
    ),
  );
  return [
    line(left - 14, layout.crankLine, right + 84, layout.crankLine, {
      'stroke-dasharray': '18 4 4 4',
      stroke: pens.faint,
    }),
    ...webs,
    ...wall({ x: right + 48, y: layout.crankLine - 66, width: 18, height: 132 }),
    lettering('flywheel', right + 80, layout.crankLine - 74, {
      'text-anchor': 'end',
      fill: pens.faint,
    }),
  ];
};

const rods = (layout: EngineLayout, engine: EngineType): readonly SvgNode[] =>
  [...engine.places.values()].flatMap((place) => {
    const box = layout.places.get(place.id);
    const pin =
      layout.throws[
        layout.throws.length === engine.cylinders ? place.number - 1 : Math.floor((place.number - 1) / 2)
      ];
    if (engine.placeKinds.get(place.kind)?.drawn !== 'piston' || !box || !pin) return [];
    const bank = layout.banks[place.number - 1] ?? 1;
    const small = bank === 1 ? box.y + box.height : box.y;
    const big = layout.crankLine - pin.pin;
    return [-9, 9].map((across) => line(pin.centre + across * 0.7, small, pin.centre + across, big));
  });

const here = (box: Box): SvgNode =>
  svg(
    'g',
    { 'data-here': 'yes' },
    boxed(
      { x: box.x - 5, y: box.y - 5, width: box.width + 10, height: box.height + 10 },
      { fill: 'none', stroke: pens.accent, 'stroke-width': 3 },
    ),
    arrowHead(box.x + box.width / 2, box.y - 6, 'down', pens.accent),
  );

const legendLine = 34;

/** Room for a mark and its word, with what keeps it from the next; lettering is about half as wide as high. */
const roomFor = (mark: Mark): number => 36 + mark.length * 8.5 + 14;

/** The marks line by line: a narrow engine has no room for all of them beside one another. */
const legendLines = (shown: readonly Mark[], width: number): readonly (readonly Mark[])[] => {
  const lines: Mark[][] = [];
  let taken = width;
  for (const mark of shown) {
    taken += roomFor(mark);
    if (taken > width) {
      lines.push([]);
      taken = roomFor(mark);
    }
    lines.at(-1)?.push(mark);
  }
  return lines;
};

const legend = (lines: readonly (readonly Mark[])[], top: number): readonly SvgNode[] =>
  lines.flatMap((line, row) => {
    const y = top + row * legendLine;
    return line.flatMap((mark, at) => {
      const x = 4 + line.slice(0, at).reduce((sum, each) => sum + roomFor(each), 0);
      return [
        ...marked({ x, y, width: 30, height: 26 }, mark),
        lettering(mark, x + 36, y + 19, { 'font-size': 16 }),
      ];
    });
  });

/**
 * The map of an engine, with the way to a place where one is asked for. Each place is a group that carries `data-place` and its name in words, so that a screen
 * can make it a button and a page can leave it a picture.
 */
export const engineMap = (
  engine: EngineType,
  placeMarks: ReadonlyMap<PlaceId, Mark>,
  at?: PlaceId,
  way?: MapWay,
): SvgNode => {
  const layout = engineLayout(engine);
  // Pistons and pins lie over the bores and webs they stand in.
  const order = ['head', 'valve', 'bore', 'piston', 'main', 'big-end'];
  const depth = (place: Place) =>
    order.indexOf(engine.placeKinds.get(place.kind)?.drawn ?? '') + 1 || order.length + 1;
  const sorted = [...engine.places.values()].sort((a, b) => depth(a) - depth(b));
  const measured = new Set([...engine.characteristics.values()].map((one) => one.at));
  const drawn = sorted.flatMap((place) => {
    const box = layout.places.get(place.id);
    const kind = engine.placeKinds.get(place.kind);
    if (!box || !kind) return [];
    const mark = measured.has(kind.name) ? (placeMarks.get(place.id) ?? 'nothing yet') : undefined;
    const sign = way?.signs.get(place.id);
    const words = `${place.title}: ${mark ?? 'nothing is measured here'}${sign ? `; ${signWords(sign)}` : ''}`;
    return [
      svg(
        'g',
        { 'data-place': place.id, role: 'img', 'aria-label': words },
        svg('title', {}, words),
        boxed(caught(box), { fill: 'transparent' }),
        ...(mark === undefined
          ? bare(box, place, kind)
          : [...shape(kind.drawn, box, mark), ...numbered(place, box, kind)]),
      ),
      ...named(box, kind),
    ];
  });
  const countOf = (mark: Mark): number =>
    sorted.filter((place) => measured.has(place.kind) && (placeMarks.get(place.id) ?? 'nothing yet') === mark)
      .length;
  // Only a job that goes part of the way leaves any place alone.
  const shown = marks.filter((mark) => mark !== 'not opened' || countOf(mark) > 0);
  const lines = legendLines(shown, layout.width);
  const foot = layout.height + 10 + lines.length * legendLine;
  const counted = shown.map((mark) => `${countOf(mark)} ${mark}`).join(', ');
  const box = at === undefined ? undefined : layout.places.get(at);
  const rows = layout.rows.map(({ words, y }) =>
    lettering(words, 4, round(y), { 'font-size': words.length > 15 ? 13 : 16, fill: pens.faint }),
  );
  const folded = engine.layout === 'vee' ? ' The second bank is folded down.' : '';
  const lit = way === undefined ? '' : ` The way to ${way.to} is marked.`;
  return sheetOf(
    { width: layout.width, height: foot + (way === undefined ? 0 : legendHigh) },
    {
      title: `${engine.title}, section along the crank`,
      description: `Places: ${counted}.${folded}${lit}`,
    },
    ...crankwork(layout),
    ...rods(layout, engine),
    ...rows,
    ...drawn,
    ...[...(way?.signs ?? [])].flatMap(([id, sign]) => {
      const flagged = layout.places.get(id);
      return flagged ? [flagOver(flagged, sign)] : [];
    }),
    ...(box ? [here(box)] : []),
    ...legend(lines, layout.height + 8),
    ...(way ? legendOfWay(foot, layout.width, way) : []),
  );
};
