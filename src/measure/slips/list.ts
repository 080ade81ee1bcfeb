/** @module The slips that are looked for in every reading: one file each, one line here. */
import { decimalShift } from './decimal-shift.ts';
import type { Slip } from './slip.ts';
import { thimbleTurn } from './thimble-turn.ts';
import { transposedDigits } from './transposed-digits.ts';
import { wrongUnit } from './wrong-unit.ts';

export const slips: readonly Slip[] = [thimbleTurn, wrongUnit, decimalShift, transposedDigits];
