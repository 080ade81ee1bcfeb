/** @module A way to settle a verdict: what is asked, tried on the sheet, and proposed in words. */
import type { Characteristic, Place } from '../engine/engine-type.ts';
import { figureText, shownIn } from '../engine/shown-in.ts';
import type { Uncertain } from '../quantity/uncertain.ts';
import { sizeInCell } from './cell-size.ts';
import { judgementOfCells, judgementOfSum } from './judgement.ts';
import { limitsOf } from './limits.ts';
import { type Cell, cellKey } from './reading.ts';
import { cellsOf } from './scheme.ts';
import { ruleOf, type Sheet } from './sheet.ts';
import type { Judged, JudgedCell } from './verdict-model.ts';
import { weigh } from './weigh.ts';

export interface Proposal {
  readonly kind: 'axis' | 'zero' | 'repeats' | 'instrument' | 'setting' | 'cool' | 'nothing';
  /** What to do and what comes of it, in words. */
  readonly says: string;
  /** What it takes, roughly: common practice, no source. The order goes by it. */
  readonly minutes: number;
  /** Cells to read, or to read again. */
  readonly cells: readonly Cell[];
  /** What the verdict would be if the sizes stayed where they are; missing where that is open. */
  readonly verdict?: 'within' | 'outside';
  /** How many readings of each cell. */
  readonly times?: number;
  /** Name of the instrument to take. */
  readonly instrument?: string;
}

/** Minutes: common practice, no source. */
export const takes = { reading: 0.5, fetching: 3, zero: 2, setting: 5, cooling: 60 };

type SizeIn = (cell: Cell) => Uncertain | undefined;

/** What is asked, and what bears on it. */
export interface Asked {
  readonly sheet: Sheet;
  readonly characteristic: Characteristic;
  readonly place: Place;
  readonly judged: Judged;
  /** Cells that bear on the value, with those that leave it unsure among them. */
  readonly cells: readonly Cell[];
  readonly deciding: readonly Cell[];
}

/** The verdict as it would be with other sizes in the cells. */
const judgedWith = ({ sheet, characteristic, place }: Asked, sizeIn: SizeIn): Judged => {
  if (characteristic.derived) return judgementOfSum(sheet, characteristic, place, sizeIn);
  const limits = limitsOf(sheet, characteristic.name, place.id);
  const cells = cellsOf(sheet.engine, characteristic.name, place.id).map((cell): JudgedCell => {
    const size = sizeIn(cell);
    return size ? { cell, size, ...weigh(size, limits, ruleOf(sheet)) } : { cell, verdict: 'not yet known' };
  });
  return judgementOfCells(sheet, characteristic, place, cells);
};

export const among = (cells: readonly Cell[]): ((cell: Cell) => boolean) => {
  const keys = new Set(cells.map(cellKey));
  return (cell) => keys.has(cellKey(cell));
};

/** Judged with some cells read otherwise, the others as they are. */
export const changed = (asked: Asked, cells: readonly Cell[], otherwise: SizeIn): Judged => {
  const isOne = among(cells);
  return judgedWith(asked, (cell) => (isOne(cell) ? otherwise(cell) : sizeInCell(asked.sheet, cell)));
};

/** One digit finer than figures are shown, since proposals differ by little. */
export const finely = (value: number | undefined, { characteristic }: Asked): string => {
  const shown = shownIn(characteristic);
  return figureText(value ?? 0, { ...shown, decimals: shown.decimals + 1 });
};

export const named = (cells: readonly Cell[]): string => {
  const names = cells.map(({ plane, axis }) => [plane, axis].filter((word) => word !== '').join(' '));
  const known = names.filter((name) => name !== '');
  if (known.length === 0 || known.length > 3) return known.length > 3 ? `the ${known.length} sizes` : 'it';
  return known.join(' and ');
};

const outcome = (asked: Asked, then: Judged): string =>
  `known to ±${finely(then.expanded, asked)} instead of ±${finely(asked.judged.expanded, asked)}, and ${then.verdict} if it stays where it is`;

/** A proposal where it settles the verdict, and nothing where it does not. */
export const offered = (
  asked: Asked,
  then: Judged,
  proposal: Omit<Proposal, 'says' | 'verdict'> & { readonly todo: string },
): readonly Proposal[] => {
  const { verdict } = then;
  if (verdict !== 'within' && verdict !== 'outside') return [];
  const { todo, ...rest } = proposal;
  return [{ ...rest, verdict, says: `${todo}: ${outcome(asked, then)}.` }];
};
