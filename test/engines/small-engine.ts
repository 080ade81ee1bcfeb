/** @module A small engine and its instruments, built by hand for the tests of measuring. All invented. */
import type { Characteristic, EngineType, Limits, Place, PlaceKind } from '../../src/engine/engine-type.ts';
import type { Instrument } from '../../src/measure/instrument.ts';
import { type Cell, cellKey, type Reading } from '../../src/measure/reading.ts';
import { cellsOf } from '../../src/measure/scheme.ts';
import type { Sheet } from '../../src/measure/sheet.ts';
import { hours, mm, radians } from '../../src/quantity/brand.ts';
import type { Typed } from '../../src/quantity/typed.ts';

export const typed = (text: string, unit = 'mm'): Typed => ({ text, unit });

const placeKind = (name: string, count: number): PlaceKind => ({
  name,
  title: name,
  count,
  along: 'cylinder',
  drawn: 'other',
});

const limits = (
  least: number | undefined,
  greatest: number | undefined,
  wear: { readonly least?: number; readonly greatest?: number } = {},
): Limits => {
  const bounds = (low: number | undefined, high: number | undefined) => ({
    ...(low !== undefined && { least: mm(low) }),
    ...(high !== undefined && { greatest: mm(high) }),
  });
  return {
    new: bounds(least, greatest),
    goesBack: bounds(wear.least ?? least, wear.greatest ?? greatest),
    printed: {},
  };
};

const characteristic = (
  name: string,
  at: string,
  wears: Characteristic['wears'],
  more: Partial<Characteristic> = {},
): Characteristic => ({ name, title: name, at, wears, planes: [''], axes: [''], ...more });

const kinds = [
  placeKind('main', 4),
  placeKind('bore', 3),
  placeKind('piston', 3),
  placeKind('pump', 3),
  placeKind('thrust', 1),
];

const placesOfKind = ({ name, count }: PlaceKind): readonly Place[] =>
  Array.from({ length: count }, (_, index) => ({
    id: `${name}.${index + 1}`,
    kind: name,
    number: index + 1,
    title: `${name} ${index + 1}`,
  }));

const journalScheme = { planes: ['front', 'rear'], axes: ['vertical', 'horizontal'] };

export const characteristics: readonly Characteristic[] = [
  characteristic('main-journal-diameter', 'main', 'smaller', {
    ...journalScheme,
    instrument: 'outside micrometer',
    limits: limits(54.981, 55, { least: 54.93 }),
  }),
  characteristic('main-journal-ovality', 'main', 'larger', {
    derived: { kind: 'range over axes', of: 'main-journal-diameter' },
    limits: limits(undefined, 0.01, { greatest: 0.03 }),
  }),
  characteristic('main-journal-taper', 'main', 'larger', {
    derived: { kind: 'range over planes', of: 'main-journal-diameter' },
    limits: limits(undefined, 0.01, { greatest: 0.03 }),
  }),
  characteristic('main-shell-bore', 'main', 'larger', {
    ...journalScheme,
    instrument: 'bore gauge',
    limits: limits(55.03, 55.055, { greatest: 55.1 }),
  }),
  characteristic('main-clearance', 'main', 'larger', {
    derived: {
      kind: 'difference',
      from: { kind: 'greatest', of: 'main-shell-bore' },
      less: { kind: 'least', of: 'main-journal-diameter' },
    },
    limits: limits(0.03, 0.074, { greatest: 0.13 }),
  }),
  characteristic('bore-diameter', 'bore', 'larger', {
    planes: ['top', 'middle', 'bottom'],
    axes: ['thrust', 'axial'],
    instrument: 'bore gauge',
    limits: limits(85, 85.022, { greatest: 85.2 }),
  }),
  characteristic('piston-diameter', 'piston', 'smaller', {
    instrument: 'outside micrometer',
    limits: limits(84.91, 84.93, { least: 84.8 }),
  }),
  characteristic('piston-clearance', 'bore', 'larger', {
    derived: {
      kind: 'difference',
      from: { kind: 'greatest', of: 'bore-diameter' },
      less: { kind: 'reading', of: 'piston-diameter' },
    },
    limits: limits(0.07, 0.112, { greatest: 0.35 }),
  }),
  characteristic('end-float', 'thrust', 'larger', {
    instrument: 'dial gauge',
    limits: limits(0.1, 0.25, { greatest: 0.4 }),
  }),
  characteristic('pump-depth', 'pump', 'either', { instrument: 'depth gauge' }),
  characteristic('pump-pack-found', 'pump', 'either', { instrument: 'outside micrometer' }),
];

export const smallEngine: EngineType = {
  id: 'small-engine',
  title: 'Small engine',
  version: 1,
  source: 'invented',
  cylinders: 3,
  layout: 'in line',
  stroke: mm(95),
  rod: mm(160),
  pinOffset: mm(0),
  firingOrder: [1, 3, 2],
  differs: [],
  printedPairs: [],
  placeKinds: new Map(kinds.map((kind) => [kind.name, kind])),
  places: new Map(kinds.flatMap(placesOfKind).map((place) => [place.id, place])),
  characteristics: new Map(characteristics.map((each) => [each.name, each])),
  components: new Map([
    [
      'mains',
      {
        name: 'mains',
        title: 'Main journals',
        at: 'main',
        together: true,
        judgedBy: ['main-journal-diameter'],
        putBack: true,
        life: hours(8000),
        sizes: {
          of: 'main-journal-diameter',
          cleanUp: mm(0.05),
          steps: [{ name: '0.25', limits: limits(54.731, 54.75, { least: 54.68 }) }],
        },
      },
    ],
  ]),
  offers: [],
  couplings: [],
  oneUse: new Map(),
  fasteners: new Map(),
  operations: new Map(),
  pumpTiming: {
    at: 'pump',
    datum: mm(83),
    depth: 'pump-depth',
    found: 'pump-pack-found',
    shimsSit: 'under the pump flange',
    addingShims: 'retards',
    rate: radians(0.0166),
    tolerance: mm(0.05),
    mostShims: 4,
    range: { least: mm(0.2), greatest: mm(2) },
    shims: [mm(0.1), mm(0.2), mm(0.5)],
  },
};

const instrument = (name: string, kind: string, more: Partial<Instrument> = {}): Instrument => ({
  name,
  kind,
  range: { least: typed('50'), greatest: typed('75') },
  resolution: typed('0.001'),
  permissibleError: typed('0.005'),
  repeatability: typed('0.0015'),
  zero: typed('0.000'),
  turn: typed('0.5'),
  ...more,
});

export const micrometer = instrument('mic-50-75', 'outside micrometer');
export const inchMicrometer = instrument('mic-2-3', 'outside micrometer', { turn: typed('0.025', 'in') });
const boreGauge: Instrument = {
  name: 'bore-gauge',
  kind: 'bore gauge',
  range: micrometer.range,
  resolution: typed('0.001'),
  permissibleError: typed('0.005'),
  repeatability: typed('0.002'),
  zero: typed('0.000'),
};
const smallMicrometer = instrument('mic-0-25', 'outside micrometer', {
  range: { least: typed('0'), greatest: typed('25') },
});
const depthGauge = instrument('depth-0-100', 'depth gauge', {
  range: { least: typed('0'), greatest: typed('100') },
  resolution: typed('0.01'),
});
const dialGauge = instrument('dial-0-10', 'dial gauge', {
  range: { least: typed('0'), greatest: typed('10') },
  turn: typed('1'),
});
export const instruments = [micrometer, inchMicrometer, boreGauge, smallMicrometer, depthGauge, dialGauge];

/** `main.1 main-journal-diameter front vertical`; plane and axis left out where the scheme names none. */
export const cell = (words: string): Cell => {
  const [place = '', name = '', plane = '', axis = ''] = words.split(' ');
  return { place, characteristic: name, plane, axis };
};

export const reading = (words: string, figure: Typed, instrumentName = 'mic-50-75'): Reading => ({
  id: `r:${words}`,
  cell: cell(words),
  typed: figure,
  instrument: instrumentName,
});

/** Readings of one characteristic at a place in the order of its scheme, as far as there are figures. */
export const readAll = (
  place: string,
  name: string,
  figures: readonly string[],
  instrumentName = 'mic-50-75',
): readonly Reading[] =>
  cellsOf(smallEngine, name, place).flatMap(({ plane, axis }, index) => {
    const figure = figures[index];
    return figure === undefined
      ? []
      : [reading(`${place} ${name} ${plane} ${axis}`.trim(), typed(figure), instrumentName)];
  });

export const sheetOf = (readings: readonly Reading[], more: Partial<Sheet> = {}): Sheet => ({
  engine: smallEngine,
  instruments: new Map(instruments.map((each) => [each.name, each])),
  readings: Map.groupBy(readings, (each) => cellKey(each.cell)),
  sizesFound: new Map(),
  conformance: 0.95,
  ...more,
});
