/** @module Sizes that an engine was left with at a former overhaul, for what is read now to be held against. */
import type { Characteristic, EngineType } from '../engine/engine-type.ts';
import { quantityOf } from '../engine/shown-in.ts';
import { sizesOffered } from '../engine/sizes-offered.ts';
import { amountOf, type Typed, typedText } from '../quantity/typed.ts';
import type { FormerCell, FormerOverhaul } from './former-overhaul.ts';
import { type Cell, cellKey } from './reading.ts';
import type { Sheet } from './sheet.ts';

/** In the core's units. */
export interface FormerSize {
  readonly size: number;
  /** Standard uncertainty. */
  readonly u: number;
  readonly anew: boolean;
}

const kept = new WeakMap<FormerOverhaul, ReadonlyMap<string, FormerCell>>();

const cellsOf = (former: FormerOverhaul): ReadonlyMap<string, FormerCell> => {
  const before = kept.get(former);
  if (before) return before;
  const cells = new Map(former.cells.map((one) => [cellKey(one.cell), one]));
  kept.set(former, cells);
  return cells;
};

/** How a cell was left at the former overhaul; undefined where there was none, or the cell was not read then. */
const formerCellAt = ({ former }: Pick<Sheet, 'former'>, cell: Cell): FormerCell | undefined =>
  former && cellsOf(former).get(cellKey(cell));

const amount = (typed: Typed | undefined, characteristic: Characteristic | undefined): number | undefined => {
  const read = typed && amountOf(typed, quantityOf(characteristic));
  return read?.kind === 'answer' ? read.value : undefined;
};

/** The size that a cell was left with. */
export const formerSizeAt = (sheet: Sheet, cell: Cell): FormerSize | undefined => {
  const found = formerCellAt(sheet, cell);
  const characteristic = sheet.engine.characteristics.get(cell.characteristic);
  const size = amount(found?.size, characteristic);
  return size === undefined || found === undefined
    ? undefined
    : { size, u: (amount(found.expanded, characteristic) ?? 0) / 2, anew: found.anew };
};

/** Hours run since the former overhaul; undefined where they are not known, or the counter was changed between. */
export const hoursSince = ({ former, hoursRun }: Sheet): number | undefined => {
  const then = former && amountOf(former.hoursRun, 'time');
  const hours = then?.kind === 'answer' && hoursRun !== undefined ? hoursRun - then.value : Number.NaN;
  return hours > 0 ? hours : undefined;
};

/** What a cell has worn since the former overhaul, in the core's unit, and that by the thousand hours. */
export interface WearSince {
  readonly left: FormerSize;
  /** Below nothing where it seems to have grown; either way where wear goes both ways. */
  readonly wear: number;
  readonly perThousand?: number;
}

/**
 * Wear of a cell since the former overhaul.
 *
 * @param sheet  with the former overhaul
 * @param cell   that was read then
 * @param now    its size now, in the core's unit
 * @returns undefined where it was not read then; no rate where the hours between are not known
 */
export const wearSince = (sheet: Sheet, cell: Cell, now: number): WearSince | undefined => {
  const left = formerSizeAt(sheet, cell);
  if (!left) return undefined;
  const { wears } = sheet.engine.characteristics.get(cell.characteristic) ?? {};
  const grown = now - left.size;
  const wear = wears === 'either' ? Math.abs(grown) : wears === 'smaller' ? -grown : grown;
  const hours = hoursSince(sheet);
  return { left, wear, ...(hours !== undefined && { perThousand: (1000 * wear) / hours }) };
};

/** The same, without cells that the engine type, as it is now, does not measure, and sizes that it does not have. */
export const fittingTo = (former: FormerOverhaul, engine: EngineType): FormerOverhaul => ({
  ...former,
  ...(former.sizes && {
    sizes: former.sizes.filter(
      ({ component, place, size }) =>
        engine.places.get(place)?.kind === engine.components.get(component)?.at &&
        sizesOffered(engine.components.get(component)).includes(size),
    ),
  }),
  cells: former.cells.filter(({ cell }) => {
    const measured = engine.characteristics.get(cell.characteristic);
    return (
      measured !== undefined &&
      !measured.derived &&
      engine.places.get(cell.place)?.kind === measured.at &&
      measured.planes.includes(cell.plane) &&
      measured.axes.includes(cell.axis)
    );
  }),
});

/** `J-3, handed over 2021-05-03, at 2000 h: 46 sizes`. */
export const formerWords = ({ number, on, hoursRun, cells }: FormerOverhaul): string =>
  `${number}, handed over ${on}, at ${typedText(hoursRun)}: ${cells.filter(({ size }) => size).length} sizes`;
