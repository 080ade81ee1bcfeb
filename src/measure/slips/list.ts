/** @module The slips that are looked for in every reading: one file each, one line here. */
import { decimalShift } from './decimal-shift.ts';
import { misreadNumber } from './misread-number.ts';
import type { Slip } from './slip.ts';
import { thimbleTurn } from './thimble-turn.ts';
import { transposedDigits } from './transposed-digits.ts';
import { wrongFrame } from './wrong-frame.ts';
import { wrongSign } from './wrong-sign.ts';
import { wrongUnit } from './wrong-unit.ts';

export const slips: readonly Slip[] = [
  thimbleTurn,
  misreadNumber,
  wrongFrame,
  wrongUnit,
  decimalShift,
  transposedDigits,
  wrongSign,
];
