/** @module The record's sizes of a former overhaul: how the engine was left then, and what it has worn since. */
import { bareFigure, figureText, shownIn } from '../../engine/shown-in.ts';
import type { OpenJob } from '../../job/job.ts';
import { formerWords, wearSince } from '../../measure/former.ts';
import { judgeCell } from '../../measure/judge.ts';
import type { Cell } from '../../measure/reading.ts';
import type { RecordSection } from '../record-model.ts';
import { characteristicTitle, placeTitle, whereIn } from './named.ts';

export interface WearTold {
  readonly cell: Cell;
  readonly left: string;
  readonly now: string;
  readonly wear: string;
  /** By the thousand hours. */
  readonly rate: string;
}

/** What each cell that was read then and now was left at, is, and has worn. */
export const wearTold = (job: OpenJob): readonly WearTold[] =>
  (job.sheet.former?.cells ?? []).flatMap(({ cell, anew }) => {
    const { size } = judgeCell(job.sheet, cell);
    const since = size && wearSince(job.sheet, cell, size.value);
    if (!size || !since) return [];
    const shown = shownIn(job.sheet.engine.characteristics.get(cell.characteristic));
    return [
      {
        cell,
        left: `${bareFigure(since.left.size, shown)}${anew ? ', new or machined then' : ''}`,
        now: bareFigure(size.value, shown),
        wear: figureText(since.wear, shown),
        rate: since.perThousand === undefined ? '' : figureText(since.perThousand, shown),
      },
    ];
  });

/** None where the engine was not here before. */
export const formerSection = (job: OpenJob): readonly RecordSection[] => {
  const { former, engine } = job.sheet;
  if (!former) return [];
  const rows = wearTold(job).map(({ cell, left, now, wear, rate }) => ({
    of: `${cell.place} ${cell.characteristic} ${cell.plane} ${cell.axis}`.trim(),
    cells: [
      placeTitle(engine, cell.place),
      characteristicTitle(engine, cell.characteristic),
      whereIn(cell),
      left,
      now,
      wear,
      rate,
    ],
  }));
  return [
    {
      name: 'former overhaul',
      title: 'Since the former overhaul',
      says: [
        `As it was left by ${formerWords(former)}.`,
        ...(rows.length === 0 ? ['Nothing of it has been read again.'] : []),
      ],
      table: { heads: ['Place', 'Characteristic', 'Where', 'Left at', 'Now', 'Worn', 'By 1000 h'], rows },
      derived: true,
    },
  ];
};
