/** @module May this instrument be brought to the bench? */

import { badFigure, blank, type Trouble, trouble } from '../../journal/trouble.ts';
import { lengthOf, type Typed } from '../../quantity/typed.ts';
import type { RequestOf } from '../command.ts';

const length = (typed: Typed): number => {
  const read = lengthOf(typed);
  return read.kind === 'answer' ? read.value : Number.NaN;
};

export const bringInstrumentTrouble = ({ instrument }: RequestOf<'bring instrument'>): Trouble => {
  const at = (part: string) => `${instrument.name}, ${part}`;
  const { least, greatest } = instrument.range;
  return (
    blank(instrument.name, 'instrument', 'give the number that is marked on it') ??
    badFigure(least, 'length', at('range')) ??
    badFigure(greatest, 'length', at('range')) ??
    (length(least) < length(greatest)
      ? undefined
      : trouble('its range ends before it begins', at('range'), 'give the least size first')) ??
    badFigure(instrument.resolution, 'length', at('resolution'), { above: 0 }) ??
    badFigure(instrument.permissibleError, 'length', at('permissible error'), { from: 0 }) ??
    badFigure(instrument.repeatability, 'length', at('repeatability'), { from: 0 }) ??
    badFigure(instrument.zero, 'length', at('zero check')) ??
    badFigure(instrument.turn, 'length', at('one turn'), { above: 0 })
  );
};
