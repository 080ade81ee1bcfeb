/** @module A readings file, a table or JSON, to readings, instruments and everything that is wrong in it, row by row. */
import type { EngineType, Quantity } from '../engine/engine-type.ts';
import { chooseName } from '../engine/nearest-name.ts';
import { quantityOf } from '../engine/shown-in.ts';
import type { RowTrouble, TableRow } from '../engine/table-row.ts';
import { parseDecimal } from '../quantity/decimal.ts';
import { type Answer, answer } from '../quantity/refusal.ts';
import { amountOf, readTyped, type Typed, typedText } from '../quantity/typed.ts';
import { csvField } from './csv.ts';
import { placesOfComponent } from './fitted-size.ts';
import type { Instrument } from './instrument.ts';
import { readInstrument } from './instrument-file.ts';
import { cellKey, type Reading } from './reading.ts';
import { columns, error, type Row, rowsOf } from './readings-rows.ts';
import { cellOf, short } from './row-cell.ts';
import { type SheetBox, sheetBoxes, unitMeant } from './sheet-box.ts';
import { usualInstrument } from './usual-instrument.ts';

export interface ReadingsFile {
  /** In the order of the file. */
  readonly readings: readonly Reading[];
  /** Those that the readings were taken with. */
  readonly instruments: readonly Instrument[];
  /** Component, or `component@place`, to size, where the file says that one was found away from standard. */
  readonly sizesFound: ReadonlyMap<string, string>;
  readonly troubles: readonly RowTrouble[];
}

/** More troubles than this of either weight help nobody; the rest shows when these are mended. */
const mostTroubles = 100;

/** By row; however many warnings there are, no error is lost among them. */
const shown = (troubles: readonly RowTrouble[]): readonly RowTrouble[] => {
  const sorted = [...troubles].sort((a, b) => a.row - b.row);
  const most = (asked: RowTrouble['weight']) =>
    sorted.filter(({ weight }) => weight === asked).slice(0, mostTroubles);
  return [...most('error'), ...most('warning')].sort((a, b) => a.row - b.row);
};

/** A temperature may stand without its unit: the column is in °C. */
const temperatureOf = (text: string): Answer<Typed | undefined> => {
  if (text === '') return answer(undefined);
  return readTyped(/^[-+−]?[\d.,]+$/.test(text) ? `${text} °C` : text, 'temperature');
};

/** The unit may stand in its own column or beside the figure, and not in both. */
const figureIn = (figure: string, unit: string, quantity: Quantity): Answer<Typed> => {
  if (unit === '') return readTyped(figure, quantity);
  const bare = parseDecimal(figure);
  return bare.kind === 'refused' ? bare : readTyped(`${figure} ${unit}`, quantity);
};

const isBare = (figure: string): boolean => parseDecimal(figure).kind === 'answer';

const readingOf = (engine: EngineType, row: Row, boxes: readonly SheetBox[]): Answer<Reading> => {
  const cell = cellOf(engine, row, boxes);
  if (cell.kind === 'refused') return cell;
  const { fields } = row;
  const characteristic = engine.characteristics.get(cell.value.characteristic);
  // The printed sheet names the unit at every box.
  const onSheet = fields.box !== '' && fields.unit === '' && isBare(fields.reading);
  const typed = figureIn(
    fields.reading,
    onSheet ? unitMeant(characteristic) : fields.unit,
    quantityOf(characteristic),
  );
  if (typed.kind === 'refused') return typed;
  const temperature = temperatureOf(fields.temperature);
  if (temperature.kind === 'refused') return temperature;
  const kind = characteristic?.instrument ?? 'instrument';
  return answer({
    id: `row-${row.row}`,
    cell: cell.value,
    typed: typed.value,
    instrument: fields.instrument === '' ? `a usual ${kind}` : short(fields.instrument),
    ...(temperature.value && { temperature: temperature.value }),
  });
};

const rereadings = (taken: readonly Reading[]): readonly RowTrouble[] => {
  const last = new Map(taken.map((reading) => [cellKey(reading.cell), reading]));
  return taken.flatMap((reading) => {
    const counts = last.get(cellKey(reading.cell));
    if (!counts || counts === reading) return [];
    const { place, characteristic, plane, axis } = reading.cell;
    return [
      {
        ...error(
          rowOf(reading),
          `the cell is read again in ${counts.id.replace('-', ' ')}: the last reading counts, with those that repeat it`,
          [place, characteristic, plane, axis].filter(Boolean).join(' '),
          `leave out ${typedText(reading.typed)} if it is not meant`,
        ),
        weight: 'warning' as const,
      },
    ];
  });
};

const rowOf = ({ id }: Reading): number => Number(id.slice('row-'.length));

/** One that the register does not know, with the usual figures of the kind that it is used as. */
const assumed = (
  engine: EngineType,
  name: string,
  readings: readonly Reading[],
): readonly [Instrument, RowTrouble] => {
  const [first] = readings;
  const asked = first && engine.characteristics.get(first.cell.characteristic);
  const kind = asked?.instrument ?? 'instrument';
  const sizes = readings
    .map(({ typed }) => amountOf(typed, quantityOf(asked)))
    .map((size) => (size.kind === 'answer' ? size.value : 0));
  return [
    usualInstrument(kind, name, Math.max(...sizes)),
    {
      ...error(
        first ? rowOf(first) : 0,
        `the register has no instrument ${name}: the usual figures of an instrument of the kind “${kind}” are taken, and its zero as never checked`,
        name,
        'put it in the register with the figures of its certificate',
      ),
      weight: 'warning',
    },
  ];
};

/**
 * Reads a readings file.
 *
 * A table (CSV, or the rows of a workbook): a first line with the columns place, characteristic, plane, axis, reading, unit, instrument,
 * temperature, box in any order (reading must be there, and place with characteristic, or box); CSV is separated by comma, semicolon or
 * tab, whichever the first line uses; decimals with point or comma. A row without a reading has not been read
 * yet and is passed over. JSON: a list of objects with the same names, or `{ readings, instruments,
 * sizes-found }`. Every row stands by itself: a bad one is told and left out, and no figure is changed.
 *
 * @param source    text of the file, or the rows of a workbook
 * @param engine    whose places and characteristics the rows name
 * @param register  instruments that are known; the file's own come before them
 * @returns readings named `row-N`, the instruments they were taken with, and troubles with row, cause and
 *   remedy; never throws
 * @source  RFC 4180 for the table
 */
export const readReadings = (
  source: string | readonly TableRow[],
  engine: EngineType,
  register: readonly Instrument[] = [],
): ReadingsFile => {
  const file = rowsOf(source);
  const boxes = sheetBoxes(engine);
  const troubles: RowTrouble[] = [...file.troubles];
  const known = new Map(register.map((instrument) => [instrument.name, instrument]));
  for (const [index, value] of file.instruments.entries()) {
    const read = readInstrument(value);
    if (read.kind === 'answer') known.set(read.value.name, read.value);
    else {
      const { what, where, remedy } = read.refusal;
      troubles.push(error(0, what, `instrument ${index + 1}, ${where}`, remedy));
    }
  }
  const readings: Reading[] = [];
  for (const row of file.rows) {
    if (row.fields.reading === '') continue;
    const read = readingOf(engine, row, boxes);
    if (read.kind === 'answer') readings.push(read.value);
    else troubles.push(error(row.row, read.refusal.what, read.refusal.where, read.refusal.remedy));
  }
  const instruments = [...Map.groupBy(readings, ({ instrument }) => instrument)].map(([name, used]) => {
    const registered = known.get(name);
    if (registered) return registered;
    const [instrument, trouble] = assumed(engine, name, used);
    troubles.push(trouble);
    return instrument;
  });
  const { kept, faults } = sizesKept(engine, file.sizesFound);
  const all = [...troubles, ...faults, ...rereadings(readings)];
  return { readings, instruments, sizesFound: kept, troubles: shown(all) };
};

const sizesKept = (engine: EngineType, sizes: ReadonlyMap<string, string>) => {
  const kept = new Map<string, string>();
  const faults: RowTrouble[] = [];
  for (const [key, size] of sizes) {
    const [name = '', place] = key.split('@');
    const component = engine.components.get(name);
    const steps = ['standard', ...(component?.sizes?.steps.map((step) => step.name) ?? [])];
    const places = component ? placesOfComponent(engine, component) : [];
    if (!component) {
      faults.push(
        error(0, 'there is no such component', short(name), chooseName(name, engine.components.keys())),
      );
    } else if (place !== undefined && !places.includes(place)) {
      faults.push(error(0, `${name} has no such place`, short(place), chooseName(place, places)));
    } else if (!steps.includes(size)) {
      faults.push(error(0, `${name} has no such size`, short(size), `write one of ${steps.join(', ')}`));
    } else if (size !== 'standard' || place !== undefined) {
      kept.set(key, size);
    }
  }
  return { kept, faults };
};

/**
 * An empty readings file for an engine: all cells in the order in which hands go, in millimetres, with their boxes.
 *
 * @param engine  engine type
 * @returns CSV text with a row for each cell and the reading left empty
 */
export const readingsTemplate = (engine: EngineType): string =>
  [
    columns,
    ...sheetBoxes(engine).map(({ code, cell }) => [
      cell.place,
      cell.characteristic,
      cell.plane,
      cell.axis,
      '',
      'mm',
      '',
      '',
      code,
    ]),
  ]
    .map((fields) => fields.map(csvField).join(','))
    .join('\n')
    .concat('\n');
