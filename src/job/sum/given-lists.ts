/** @module Lists that a job gives to a sum: a characteristic over its places, the pumps' needs, the box of shims. */

import type { Characteristic, EngineType } from '../../engine/engine-type.ts';
import type { GivenInput } from '../../engine/operation-sum.ts';
import { bareFigure, shownIn } from '../../engine/shown-in.ts';
import { sizeInCell } from '../../measure/cell-size.ts';
import type { Cell } from '../../measure/reading.ts';
import { cellsOf } from '../../measure/scheme.ts';
import { toDegrees } from '../../quantity/brand.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { shimsInAll } from '../box.ts';
import { cellTitle } from '../cell-title.ts';
import type { OpenJob } from '../job.ts';
import { pumpsAsFitted } from '../pumps.ts';
import { placesInQuestion } from '../scope.ts';
import { spillText } from './manual-text.ts';
import { measuredValue, readWith, valueWithSpread } from './measured-value.ts';

/** What a sum is given, or what must be done before it can be. */
export type GivenText =
  | { readonly kind: 'given'; readonly text: string; readonly from: string }
  | { readonly kind: 'first'; readonly says: string; readonly remedy: string };

const namedList = (job: OpenJob, characteristic: Characteristic): GivenText => {
  const entries: string[] = [];
  let from = '';
  for (const { id } of placesInQuestion(job, characteristic)) {
    const where = { place: id };
    const found = measuredValue(job, { kind: 'characteristic', name: characteristic.name, where }, undefined);
    if (found.kind === 'missing') return { kind: 'first', says: found.says, remedy: found.remedy };
    entries.push(`${id} ${valueWithSpread(found.value, characteristic)}`);
    from = found.from.slice(found.from.lastIndexOf(', ') + 2);
  }
  return { kind: 'given', text: entries.join(', '), from: `${characteristic.title}, ${from}` };
};

const rows = (job: OpenJob, characteristic: Characteristic): GivenText => {
  const shown = shownIn(characteristic);
  const cells: Cell[] = [];
  const lines: string[] = [];
  for (const { id } of placesInQuestion(job, characteristic)) {
    const figures: string[] = [];
    for (const cell of cellsOf(job.sheet.engine, characteristic.name, id)) {
      const size = sizeInCell(job.sheet, cell);
      if (!size)
        return {
          kind: 'first',
          says: `${characteristic.title} is not yet measured`,
          remedy: `read ${cellTitle(job.sheet.engine, cell)}`,
        };
      cells.push(cell);
      figures.push(bareFigure(size.value, shown));
    }
    lines.push(figures.join(', '));
  }
  return {
    kind: 'given',
    text: `${lines.join('; ')} ${shown.unit}`,
    from: `${characteristic.title}, read with ${readWith(job, cells)}`,
  };
};

/** A characteristic at every place of its kind. */
export const listedText = (job: OpenJob, { name, as }: Extract<GivenInput, { kind: 'list' }>): GivenText => {
  const characteristic = job.sheet.engine.characteristics.get(name);
  if (!characteristic)
    return { kind: 'first', says: `there is no characteristic ${name}`, remedy: 'correct the engine type' };
  return as === 'named' ? namedList(job, characteristic) : rows(job, characteristic);
};

const byTheManual = ({ source }: EngineType): string => `by the manual, ${source}`;

/** What is known of the pumps and of their shims. */
export const pumpsText = (job: OpenJob, { of }: Extract<GivenInput, { kind: 'pumps' }>): GivenText => {
  const { engine } = job.sheet;
  const timing = engine.pumpTiming;
  if (!timing) return { kind: 'first', says: 'no pump is timed by shims here', remedy: 'leave the sum out' };
  const manual = (text: string): GivenText => ({ kind: 'given', text, from: byTheManual(engine) });
  switch (of) {
    case 'needed': {
      const pumps = pumpsAsFitted(job);
      const [missing] = pumps.flatMap((pump) => pump.missing);
      if (missing !== undefined)
        return { kind: 'first', says: 'a depth is not yet measured', remedy: missing };
      const needs = pumps.map(({ needed = 0 }) => `${formatFigure(needed, 3)} mm`);
      return { kind: 'given', text: needs.join(', '), from: 'datum dimension and depths measured' };
    }
    case 'box': {
      const box = shimsInAll(job);
      if (box.length === 0)
        return { kind: 'first', says: 'no shims are counted', remedy: 'count the shims in the box' };
      const text = box.map(({ thickness, count }) => `${formatFigure(thickness, 3)}mm*${count}`).join(', ');
      return { kind: 'given', text, from: 'the box as counted, fitted shims included' };
    }
    case 'most':
      return manual(String(timing.mostShims));
    case 'rate':
      return manual(`${formatFigure(toDegrees(timing.rate), 4)} deg/mm`);
    case 'adding':
      return manual(timing.addingShims);
    case 'spill': {
      const text = spillText(engine);
      return text === undefined
        ? { kind: 'first', says: 'the manual gives no spill before the top', remedy: 'say it under check' }
        : manual(text);
    }
    case 'datum':
      return manual(`${formatFigure(timing.datum, 3)} mm`);
    default:
      return of satisfies never;
  }
};
