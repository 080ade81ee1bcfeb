/** @module What a cell was left at by the former overhaul, and what it has worn since: beside the reading. */
import { figureText, shownIn } from '../../engine/shown-in.ts';
import { wearSince } from '../../measure/former.ts';
import type { Cell } from '../../measure/reading.ts';
import type { Sheet } from '../../measure/sheet.ts';

export const WearShown = ({
  sheet,
  cell,
  now,
}: {
  readonly sheet: Sheet;
  readonly cell: Cell;
  readonly now: number | undefined;
}) => {
  const since = now === undefined ? undefined : wearSince(sheet, cell, now);
  if (!since || !sheet.former) return null;
  const shown = shownIn(sheet.engine.characteristics.get(cell.characteristic));
  const { left, wear, perThousand } = since;
  return (
    <p data-former>
      {sheet.former.number}, handed over {sheet.former.on}, left it at{' '}
      <span className="figure">{figureText(left.size, shown)}</span>
      {left.anew ? ', new or machined then' : ''}; worn since{' '}
      <span className="figure">{figureText(wear, shown)}</span>
      {perThousand === undefined
        ? ', over hours that are not known'
        : `, ${figureText(perThousand, shown)} by 1,000 h`}
      .
    </p>
  );
};
