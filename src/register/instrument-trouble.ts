/** @module Do the figures of an instrument make sense? Asked where it enters the register and where it is brought to a job. */

import { kindOf } from '../engine/instrument-kind.ts';
import { badFigure, blank, type Trouble, trouble } from '../journal/trouble.ts';
import type { Instrument } from '../measure/instrument.ts';
import { amountOf, type Typed } from '../quantity/typed.ts';

const rangeTrouble = ({ kind, range }: Instrument, where: string): Trouble => {
  const { measures, master } = kindOf(kind);
  const amount = (typed: Typed): number => {
    const read = amountOf(typed, measures);
    return read.kind === 'answer' ? read.value : Number.NaN;
  };
  const [least, greatest] = [amount(range.least), amount(range.greatest)];
  // A ring or a bar is of one size.
  if (least < greatest || (master && least === greatest)) return undefined;
  return trouble('its range ends before it begins', where, 'give the least size first');
};

const calibrationTrouble = ({ calibration }: Instrument, where: string): Trouble =>
  calibration && calibration.due < calibration.on
    ? trouble(
        'it is due before it was calibrated',
        where,
        'give the day of calibration and the day it is due',
      )
    : undefined;

/** What is wrong with the figures of an instrument, the first thing first; nothing where they may stand. */
export const instrumentTrouble = (instrument: Instrument): Trouble => {
  const at = (part: string) => `${instrument.name}, ${part}`;
  const { measures, master } = kindOf(instrument.kind);
  const { range, setTo } = instrument;
  return (
    blank(instrument.name, 'instrument', 'give the number that is marked on it') ??
    blank(instrument.kind, at('kind'), 'say what it is, for example outside micrometer') ??
    badFigure(range.least, measures, at('range')) ??
    badFigure(range.greatest, measures, at('range')) ??
    rangeTrouble(instrument, at('range')) ??
    badFigure(instrument.resolution, measures, at('resolution'), master ? { from: 0 } : { above: 0 }) ??
    badFigure(instrument.permissibleError, measures, at('permissible error'), { from: 0 }) ??
    badFigure(instrument.repeatability, measures, at('repeatability'), { from: 0 }) ??
    badFigure(instrument.zero, measures, at('zero check')) ??
    badFigure(instrument.turn, measures, at('one turn'), { above: 0 }) ??
    badFigure(setTo?.size, measures, at('setting')) ??
    badFigure(setTo?.shown, measures, at('setting')) ??
    badFigure(instrument.correction, measures, at('correction')) ??
    badFigure(instrument.correctionUncertainty, measures, at('uncertainty of its correction'), { from: 0 }) ??
    calibrationTrouble(instrument, at('calibration'))
  );
};
