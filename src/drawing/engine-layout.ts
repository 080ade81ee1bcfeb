/** @module Where each place of an engine stands in the section along its crank. */
import type { EngineType, Place, PlaceId, PlaceKind } from '../engine/engine-type.ts';
import type { Box } from './ink.ts';

/** One throw of the crank: its column and how far its pin stands above the centre line (below: negative). */
export interface Throw {
  readonly centre: number;
  readonly pin: number;
}

export interface RowName {
  readonly words: string;
  readonly y: number;
}

export interface EngineLayout {
  readonly width: number;
  readonly height: number;
  readonly crankLine: number;
  readonly throws: readonly Throw[];
  readonly mains: readonly Box[];
  readonly places: ReadonlyMap<PlaceId, Box>;
  readonly rows: readonly RowName[];
  /** Bank of each cylinder: +1 above the crank, -1 below (a vee is opened out flat). */
  readonly banks: readonly (1 | -1)[];
}

const marginLeft = 128;
const marginRight = 88;
const mainWidth = 48;
const throwWidth = 104;
const radius = 34;
const rowHeight = 50;
const boreHeight = 136;
const rodLength = 134;
const crownAbovePin = 32;

/** Height of the pin above the crank's centre line, with cylinder 1 at top dead centre. */
const pinHeight = (engine: EngineType, cylinder: number): number => {
  const turns = engine.firingOrder.indexOf(cylinder);
  const angle = (Math.max(0, turns) * 4 * Math.PI) / engine.cylinders;
  return radius * Math.cos(angle);
};

/** From the crank's centre line to the gudgeon pin, for a throw whose big end stands at this height. */
const rodReach = (pin: number): number => pin + Math.sqrt(rodLength ** 2 - (radius ** 2 - pin ** 2));

const kindsDrawn = (engine: EngineType, ...drawn: readonly string[]): readonly PlaceKind[] =>
  [...engine.placeKinds.values()].filter((kind) => drawn.includes(kind.drawn));

const placesOf = (engine: EngineType, kind: PlaceKind): readonly Place[] =>
  [...engine.places.values()].filter((place) => place.kind === kind.name);

/** Splits the room between two abscissae evenly among places. */
const spread = (from: number, to: number, count: number, index: number, y: number, height: number): Box => {
  const share = (to - from) / count;
  const gap = Math.min(6, share * 0.08);
  return { x: from + share * index + gap, y, width: share - 2 * gap, height };
};

export const engineLayout = (engine: EngineType): EngineLayout => {
  const vee = engine.layout === 'vee';
  const banks = Array.from({ length: engine.cylinders }, (_, at): 1 | -1 => (vee && at % 2 === 1 ? -1 : 1));
  const columns = vee ? Math.ceil(engine.cylinders / 2) : engine.cylinders;
  const columnOf = (cylinder: number) => (vee ? Math.floor((cylinder - 1) / 2) : cylinder - 1);
  const pitch = throwWidth + mainWidth;
  const columnStart = (column: number) => marginLeft + mainWidth + column * pitch;
  const crankEnd = marginLeft + columns * pitch + mainWidth;
  const heads = kindsDrawn(engine, 'head');
  const valves = kindsDrawn(engine, 'valve');
  const headTop = 6;
  const headHeight = heads.length > 0 ? 44 : 0;
  const valveTop = headTop + headHeight + 4;
  const boreTop = valveTop + valves.length * rowHeight + 6;
  const crankLine = boreTop + boreHeight + radius + 40;
  const flip = (box: Box, bank: 1 | -1): Box =>
    bank === 1 ? box : { ...box, y: 2 * crankLine - box.y - box.height };
  const places = new Map<PlaceId, Box>();
  const rows: RowName[] = [];

  const throwAt = (column: number): Throw => ({
    centre: columnStart(column) + throwWidth / 2,
    pin: pinHeight(engine, vee ? 2 * column + 1 : column + 1),
  });
  const throws = Array.from({ length: columns }, (_, column) => throwAt(column));
  const mains = Array.from({ length: columns + 1 }, (_, at) => ({
    x: marginLeft + at * pitch,
    y: crankLine - 27,
    width: mainWidth,
    height: 54,
  }));

  /** Puts each place of a kind into a strip that runs beside the cylinders. */
  const putInStrip = (kind: PlaceKind, y: number, height: number, turned: boolean) => {
    const of = placesOf(engine, kind);
    const perCylinder = Math.max(1, Math.ceil(of.length / engine.cylinders));
    for (const [at, place] of of.entries()) {
      if (kind.along !== 'cylinder') {
        places.set(place.id, spread(marginLeft, crankEnd, of.length, at, y, height));
        continue;
      }
      const cylinder = Math.floor(at / perCylinder) + 1;
      const bank = banks[cylinder - 1] ?? 1;
      const start = columnStart(columnOf(cylinder));
      const shared = vee && !turned ? 2 : 1;
      const within = (at % perCylinder) + (shared === 2 && bank === -1 ? perCylinder : 0);
      const box = spread(start, start + throwWidth, perCylinder * shared, within, y, height);
      places.set(place.id, turned ? flip(box, bank) : box);
    }
    rows.push({ words: kind.title, y: y + height / 2 + 5 });
  };

  for (const kind of heads) putInStrip(kind, headTop, headHeight, true);
  for (const [at, kind] of valves.entries()) putInStrip(kind, valveTop + at * rowHeight, rowHeight - 4, true);

  for (const kind of kindsDrawn(engine, 'bore')) {
    putInStrip(kind, boreTop, boreHeight, true);
    rows[rows.length - 1] = { words: kind.title, y: boreTop + 20 };
  }
  for (const kind of kindsDrawn(engine, 'piston')) {
    putInStrip(kind, boreTop, boreHeight, true);
    for (const [at, place] of placesOf(engine, kind).entries()) {
      const cylinder = at + 1;
      const column = columnOf(cylinder);
      const bank = banks[at] ?? 1;
      const top = crankLine - rodReach((throws[column]?.pin ?? 0) * bank) - crownAbovePin;
      const box = { x: columnStart(column) + 26, y: top, width: throwWidth - 52, height: 48 };
      places.set(place.id, flip(box, bank));
    }
    rows[rows.length - 1] = { words: kind.title, y: boreTop + 52 };
  }
  for (const kind of kindsDrawn(engine, 'main')) {
    for (const [at, place] of placesOf(engine, kind).entries()) {
      const box = mains[Math.min(at, mains.length - 1)];
      if (box) places.set(place.id, box);
    }
    rows.push({ words: kind.title, y: crankLine + 5 });
  }
  for (const kind of kindsDrawn(engine, 'big-end')) {
    const of = placesOf(engine, kind);
    for (const [at, place] of of.entries()) {
      const column = vee && of.length > columns ? columnOf(at + 1) : Math.min(at, columns - 1);
      const pin = throws[column];
      if (!pin) continue;
      const sharing = of.length > columns ? 2 : 1;
      const across = spread(
        pin.centre - 30,
        pin.centre + 30,
        sharing,
        vee && sharing === 2 ? at % 2 : 0,
        0,
        44,
      );
      places.set(place.id, { ...across, y: crankLine - pin.pin - 22 });
    }
    rows.push({ words: kind.title, y: crankLine - radius - 4 });
  }
  for (const kind of kindsDrawn(engine, 'thrust'))
    for (const [at, place] of placesOf(engine, kind).entries())
      places.set(place.id, { x: crankEnd + 4 + at * 26, y: crankLine - 40, width: 22, height: 80 });
  for (const kind of kindsDrawn(engine, 'gear'))
    for (const [at, place] of placesOf(engine, kind).entries())
      places.set(place.id, { x: marginLeft - 26 - at * 24, y: crankLine - 48, width: 20, height: 96 });

  let below = vee ? 2 * crankLine - headTop + 8 : crankLine + radius + 46;
  for (const kind of kindsDrawn(engine, 'cam', 'pump', 'other')) {
    putInStrip(kind, below, rowHeight - 4, false);
    below += rowHeight + 2;
  }
  return { width: crankEnd + marginRight, height: below, crankLine, throws, mains, places, rows, banks };
};
