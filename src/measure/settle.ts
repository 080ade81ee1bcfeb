/** @module What would settle a verdict that is unsure, cheapest first, and what the verdict could then be. */
import { normalQuantile } from '../quantity/normal.ts';
import { countingReading, sizeInCell } from './cell-size.ts';
import { operandCells } from './expression.ts';
import type { Instrument } from './instrument.ts';
import { judge } from './judge.ts';
import { type Asked, among, finely, type Proposal } from './proposal.ts';
import type { Cell } from './reading.ts';
import { cellsOf } from './scheme.ts';
import { byInstrument, bySetting, byZero } from './settle-by-instrument.ts';
import { byAxes, byCooling, byRepeats } from './settle-by-reading.ts';
import { ruleOf, type Sheet } from './sheet.ts';
import type { Judged } from './verdict-model.ts';

/** Known to so much or better it would be settled, as far as one limit goes; nothing for rules that do not guard. */
const needed = ({ sheet, judged }: Asked): number | undefined => {
  const rule = ruleOf(sheet);
  const { least = Number.NEGATIVE_INFINITY, greatest = Number.POSITIVE_INFINITY } =
    judged.limits?.goesBack ?? {};
  const value = judged.value?.value ?? Number.NaN;
  const room = Math.min(Math.abs(value - least), Math.abs(greatest - value));
  if (rule.kind !== 'guarded' || !(rule.conformance > 0.5) || !Number.isFinite(room)) return undefined;
  return (room * normalQuantile(0.975)) / normalQuantile(rule.conformance);
};

const givenUp = (asked: Asked): Proposal => {
  const enough = needed(asked);
  const asks =
    enough === undefined || enough === 0 ? '' : ` It would have to be known to ±${finely(enough, asked)}.`;
  return {
    kind: 'nothing',
    says: `Nothing in the register settles it: at ${finely(asked.judged.value?.value, asked)} it lies too near its limit.${asks} Take it as outside, or ask whoever answers for the limit.`,
    minutes: 0,
    cells: [],
  };
};

/** Share of the largest repeat from which on a cell has a say in the value. */
const hasASay = 0.3;

/** The cells whose repeats weigh most in the value, and those that are unsure by themselves. */
const decidingCells = (sheet: Sheet, judged: Judged, cells: readonly Cell[]): readonly Cell[] => {
  const shares = new Map(judged.value?.terms.map(({ name, share }) => [name, Math.abs(share)]));
  const shareOf = (cell: Cell) => shares.get(`repeat ${countingReading(sheet, cell)?.id}`) ?? 0;
  const largest = Math.max(0, ...cells.map(shareOf));
  const unsure = among(judged.cells.filter(({ verdict }) => verdict === 'unsure').map(({ cell }) => cell));
  return cells.filter((cell) => (largest > 0 && shareOf(cell) >= hasASay * largest) || unsure(cell));
};

/**
 * What would settle an unsure verdict.
 *
 * Each way is tried on the sheet itself: the sizes stay where they are, what is known of them is taken as it would
 * then be, and the verdict is judged anew by the shop's rule. Only what settles it is proposed: a zero check that is
 * lacking (with more repeats, if it takes them), more repeats, another instrument of the same kind, the gauge set in the micrometer that took the other
 * part, waiting for the part to cool, and, where cells are unread, reading those.
 *
 * @param sheet           measuring sheet
 * @param characteristic  name in the engine type
 * @param place           id of a place of its kind
 * @param register        instruments that the shop has
 * @returns proposals, cheapest first, in words; none where the verdict is not unsure; where nothing settles it, one
 *   that says so
 * @source  ISO 14253-1:2017 (an unsure result asks for less uncertainty); minutes: common practice, no source
 */
export const settle = (
  sheet: Sheet,
  characteristic: string,
  place: string,
  register: readonly Instrument[],
): readonly Proposal[] => {
  const known = sheet.engine.characteristics.get(characteristic);
  const at = sheet.engine.places.get(place);
  const judged = judge(sheet, characteristic, place);
  const unread = judged.cells.some(({ verdict }) => verdict === 'unsure') && judged.missing.length > 0;
  if (!known || !at || !(judged.verdict === 'unsure' || unread)) return [];
  const cells = known.derived
    ? operandCells(known.derived, at, sheet.engine)
    : cellsOf(sheet.engine, characteristic, place).filter((cell) => sizeInCell(sheet, cell));
  const deciding = decidingCells(sheet, judged, cells);
  const asked: Asked = { sheet, characteristic: known, place: at, judged, cells, deciding };
  if (unread) return byAxes(asked);
  const ways = [
    ...byZero(asked),
    ...byRepeats(asked),
    ...byInstrument(asked, register),
    ...bySetting(asked),
    ...byCooling(asked),
  ];
  return ways.length === 0 ? [givenUp(asked)] : ways.toSorted((a, b) => a.minutes - b.minutes);
};
