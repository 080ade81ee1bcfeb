/** @module The boxes of a printed measuring sheet: numbered in the order of entry, each with a letter that proves its number. */
import type { Characteristic, EngineType } from '../engine/engine-type.ts';
import { shownIn } from '../engine/shown-in.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { type Cell, cellKey } from './reading.ts';
import { entryOrder } from './scheme.ts';

export interface SheetBox {
  /** As printed in the box: `17K`. */
  readonly code: string;
  readonly cell: Cell;
}

/** None that a pen makes look like a digit or like another. */
const letters = 'ABCDEFGHKLMNPRTUVWXY';

/** From the cell that a box stands for (FNV-1a), so that a number from a sheet of another version shows. */
const hashOf = (cell: Cell): number => {
  let hash = 0x811c9dc5;
  for (const letter of cellKey(cell)) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), 0x01000193) >>> 0;
  return hash >>> 8;
};

/** A box never has the letter of the two before it: a number that is one or two off always shows. */
const lettersOf = (cells: readonly Cell[]): readonly string[] => {
  const given: string[] = [];
  for (const cell of cells) {
    let at = hashOf(cell) % letters.length;
    while (given.slice(-2).includes(letters[at] ?? '')) at = (at + 1) % letters.length;
    given.push(letters[at] ?? '');
  }
  return given;
};

/** Every box of an engine's sheet, in the order in which hands go. */
export const sheetBoxes = (engine: EngineType): readonly SheetBox[] => {
  const cells = entryOrder(engine);
  const given = lettersOf(cells);
  return cells.map((cell, at) => ({ code: `${at + 1}${given[at]}`, cell }));
};

/** The unit that is meant where none is typed: that of the manual's limits. */
export const unitMeant = (characteristic: Characteristic | undefined): string => shownIn(characteristic).unit;

/** The cell that a box stands for. Small letters and blanks between number and letter do no harm; a missing letter does. */
export const cellOfBox = (boxes: readonly SheetBox[], typed: string): Answer<Cell> => {
  const code = typed.replace(/\s/g, '').toUpperCase();
  const number = Number(/^\d{1,5}/.exec(code)?.[0]);
  const box = boxes[number - 1];
  if (box?.code === code) return answer(box.cell);
  const where = `box ${typed.slice(0, 20)}`;
  if (box === undefined)
    return refuse(
      `there is no box ${typed.slice(0, 20)}`,
      where,
      `the sheet has the boxes ${boxes[0]?.code ?? ''} to ${boxes.at(-1)?.code ?? ''}`,
    );
  return /^\d+$/.test(code)
    ? refuse(
        'the letter of the box is missing',
        where,
        'type number and letter as they are printed in the box',
      )
    : refuse(
        `the box with this number is ${box.code}`,
        where,
        'look at the number again; where it is printed so, the sheet is one of another version of the engine type',
      );
};
