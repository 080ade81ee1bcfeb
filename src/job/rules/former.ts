/** @module May this former overhaul be brought to the job? */

import { quantityOf } from '../../engine/shown-in.ts';
import { badFigure, blank, type Trouble, trouble } from '../../journal/trouble.ts';
import { cellKey } from '../../measure/reading.ts';
import { cellTitle } from '../cell-title.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';
import { sizeTrouble } from './finding.ts';
import { outsideEngine } from './reading.ts';

const where = 'former overhaul';

const cellTrouble = (
  { sheet: { engine } }: OpenJob,
  { cell, size, expanded }: RequestOf<'bring former overhaul'>['cells'][number],
): Trouble => {
  const outside = outsideEngine(engine, cell);
  if (outside) return outside;
  const quantity = quantityOf(engine.characteristics.get(cell.characteristic));
  const at = `${where}, ${cellTitle(engine, cell)}`;
  return badFigure(size, quantity, at) ?? badFigure(expanded, quantity, `${at}, ±`, { from: 0 });
};

export const bringFormerTrouble = (job: OpenJob, asked: RequestOf<'bring former overhaul'>): Trouble => {
  const { number, on, hoursRun, cells, sizes = [] } = asked;
  const seen = new Set<string>();
  const wrong =
    blank(number, where, 'name the job by its number') ??
    badFigure(hoursRun, 'time', `${where}, hours run`, { from: 0 }) ??
    (number === job.booked.number
      ? trouble(`${number} is this job itself`, where, 'name the job in which it was overhauled before')
      : undefined) ??
    (on > job.booked.at.slice(0, 10)
      ? trouble(`it went on ${on}, after this job was booked in`, where, 'name an earlier one')
      : undefined);
  if (wrong) return wrong;
  for (const one of cells) {
    const key = cellKey(one.cell);
    const twice = seen.has(key)
      ? trouble('a size is given twice', `${where}, ${one.cell.place}`, 'give each once')
      : undefined;
    const found = twice ?? cellTrouble(job, one);
    if (found) return found;
    seen.add(key);
  }
  for (const left of sizes) {
    const strange = sizeTrouble(job.sheet.engine, left);
    if (strange) return strange;
  }
  return undefined;
};
