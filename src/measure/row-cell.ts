/** @module Which cell of the scheme a row of a readings file means. */
import type { EngineType } from '../engine/engine-type.ts';
import { chooseName } from '../engine/nearest-name.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { Cell } from './reading.ts';
import type { Row } from './readings-rows.ts';
import { cellOfBox, type SheetBox } from './sheet-box.ts';

/** As much of a text as helps in a message. */
export const short = (text: string): string => text.slice(0, 60);

const inScheme = (asked: string, names: readonly string[], what: string): Answer<string> => {
  if (names.includes(asked)) return answer(asked);
  return names.length === 1 && names[0] === ''
    ? refuse(`no ${what} is asked for there`, short(asked), `leave the ${what} empty`)
    : refuse(
        asked === '' ? `the ${what} is missing` : `there is no such ${what}`,
        short(asked),
        `write one of ${names.join(', ')}`,
      );
};

const named = ['place', 'characteristic', 'plane', 'axis'] as const;

/** A box stands for its whole cell; what else the row names must not contradict it. */
const boxedCell = ({ fields }: Row, boxes: readonly SheetBox[]): Answer<Cell> => {
  const cell = cellOfBox(boxes, fields.box);
  if (cell.kind === 'refused') return cell;
  const other = named.find((key) => fields[key] !== '' && fields[key] !== cell.value[key]);
  return other === undefined
    ? cell
    : refuse(
        `the box ${short(fields.box)} is for ${cell.value[other] || `no ${other}`}, and the row says ${short(fields[other])}`,
        other,
        'look which of the two is meant',
      );
};

/** The cell of the scheme that a row of a readings file names, by itself or by its box, or why there is none. */
export const cellOf = (engine: EngineType, row: Row, boxes: readonly SheetBox[]): Answer<Cell> => {
  const { fields } = row;
  if (fields.box !== '') return boxedCell(row, boxes);
  const characteristic = engine.characteristics.get(fields.characteristic);
  if (!characteristic) {
    return refuse(
      'there is no such characteristic',
      short(fields.characteristic),
      chooseName(fields.characteristic, engine.characteristics.keys()),
    );
  }
  if (characteristic.derived) {
    return refuse(
      'it is worked out and not read',
      characteristic.name,
      'give the readings that it is worked out from',
    );
  }
  const here = [...engine.places.values()]
    .filter(({ kind }) => kind === characteristic.at)
    .map(({ id }) => id);
  if (!here.includes(fields.place)) {
    return refuse(
      `${characteristic.name} is not found at that place`,
      short(fields.place),
      chooseName(fields.place, here),
    );
  }
  const plane = inScheme(fields.plane, characteristic.planes, 'plane');
  if (plane.kind === 'refused') return plane;
  const axis = inScheme(fields.axis, characteristic.axes, 'axis');
  if (axis.kind === 'refused') return axis;
  return answer({
    place: fields.place,
    characteristic: characteristic.name,
    plane: plane.value,
    axis: axis.value,
  });
};
