/** @module Which cell of the scheme a row of a readings file means. */
import type { EngineType } from '../engine/engine-type.ts';
import { chooseName } from '../engine/nearest-name.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { Cell } from './reading.ts';
import type { Row } from './readings-rows.ts';

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

/** The cell of the scheme that a row of a readings file names, or why there is none. */
export const cellOf = (engine: EngineType, { fields }: Row): Answer<Cell> => {
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
