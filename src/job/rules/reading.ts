/** @module May this reading be taken, or struck out? A strange figure may: it is doubted later, never refused. */
import type { EngineType, Quantity } from '../../engine/engine-type.ts';
import { kindOf } from '../../engine/instrument-kind.ts';
import { chooseName } from '../../engine/nearest-name.ts';
import { quantityOf } from '../../engine/shown-in.ts';
import { badFigure, blank, orList, type Trouble, trouble } from '../../journal/trouble.ts';
import type { Cell } from '../../measure/reading.ts';
import { dimensionText } from '../../quantity/unit.ts';
import { cellTitle } from '../cell-title.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';

const outsideScheme = (
  called: 'plane' | 'axis',
  given: string,
  names: readonly string[],
  where: string,
): Trouble => {
  if (names.includes(given)) return undefined;
  if (names.length === 1 && names[0] === '')
    return trouble(`no ${called} is named here, and “${given}” was given`, where, `leave the ${called} out`);
  return trouble(
    given === '' ? `the ${called} is missing` : `there is no ${called} “${given}” here`,
    where,
    `choose ${orList(names)}`,
  );
};

/** A cell that the engine has no measuring scheme for. */
export const outsideEngine = (engine: EngineType, cell: Cell): Trouble => {
  const place = engine.places.get(cell.place);
  if (place === undefined)
    return trouble(
      `${engine.title} has no place “${cell.place}”`,
      'reading',
      chooseName(cell.place, engine.places.keys()),
    );
  const asked = engine.characteristics.get(cell.characteristic);
  const here = [...engine.characteristics.values()].filter(
    ({ at, derived }) => at === place.kind && !derived,
  );
  const names = here.map(({ name }) => name);
  const choose = chooseName(cell.characteristic, names);
  if (asked === undefined)
    return trouble(`${engine.title} has no characteristic “${cell.characteristic}”`, place.title, choose);
  if (asked.at !== place.kind)
    return trouble(`${asked.title} is not measured at ${place.title}`, place.title, choose);
  if (asked.derived)
    return trouble(
      `${asked.title} is computed from other readings and not measured itself`,
      place.title,
      choose,
    );
  const where = `${place.title}, ${asked.title}`;
  return (
    outsideScheme('plane', cell.plane, asked.planes, where) ??
    outsideScheme('axis', cell.axis, asked.axes, where)
  );
};

/** A torque wrench may be brought, for the joints that it tightens, but no size is read with it. */
export const measuresOther = (job: OpenJob, name: string, quantity: Quantity, where: string): Trouble => {
  const { kind } = job.sheet.instruments.get(name) ?? { kind: '' };
  return kindOf(kind).measures === quantity
    ? undefined
    : trouble(
        `${name} is a ${kind} and measures no ${dimensionText(quantity)}`,
        where,
        'choose the one that it was read with',
      );
};

export const notBrought = (job: OpenJob, name: string, where: string): Trouble => {
  const brought = [...job.sheet.instruments.keys()];
  if (brought.includes(name)) return undefined;
  return trouble(
    `the instrument “${name}” has not been brought to this job`,
    where,
    brought.length === 0 ? 'bring the instrument first' : `bring it first, or ${chooseName(name, brought)}`,
  );
};

export const takeReadingTrouble = (job: OpenJob, asked: RequestOf<'take reading'>): Trouble => {
  const outside = outsideEngine(job.sheet.engine, asked.cell);
  if (outside !== undefined) return outside;
  const where = cellTitle(job.sheet.engine, asked.cell);
  const quantity = quantityOf(job.sheet.engine.characteristics.get(asked.cell.characteristic));
  return (
    badFigure(asked.typed, quantity, where) ??
    badFigure(asked.temperature, 'temperature', `${where}, temperature`) ??
    badFigure(asked.instrumentTemperature, 'temperature', `${where}, temperature of the instrument`) ??
    notBrought(job, asked.instrument, where) ??
    measuresOther(job, asked.instrument, quantity, where)
  );
};

export const strikeOutTrouble = (job: OpenJob, asked: RequestOf<'strike out reading'>): Trouble => {
  if (job.struckOut.some(({ reading }) => reading.id === asked.reading))
    return trouble('this reading has been struck out already', 'reading', 'nothing is left to do');
  if (!job.takenBy.has(asked.reading))
    return trouble(
      `there is no reading ${asked.reading} in this job`,
      'reading',
      'choose one from the sheet',
    );
  return blank(asked.why, 'strike out', 'write why the reading does not count');
};
