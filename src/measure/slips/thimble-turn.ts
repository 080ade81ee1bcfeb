/** @module One turn of the thimble too many or too few: the half-millimetre line overlooked. */
import { parseDecimal } from '../../quantity/decimal.ts';
import { lengthOf } from '../../quantity/typed.ts';
import { fromCore, unitOf } from '../../quantity/unit.ts';
import { digitsOf } from './digits.ts';
import type { Slip } from './slip.ts';

/** Once in a hundred readings, each way: common practice, no source. */
const chance = 0.01;

export const thimbleTurn: Slip = {
  name: 'thimble turn',
  says: 'one turn of thimble or pointer misread',
  reach: chance,
  candidates: (typed, { turn }) => {
    const decimal = parseDecimal(typed.text);
    const length = turn && lengthOf(turn);
    const unit = unitOf(typed.unit, 'length');
    const digits = digitsOf(typed.text);
    if (decimal.kind === 'refused' || length?.kind !== 'answer' || unit.kind === 'refused' || !digits)
      return [];
    const shift = fromCore(length.value, unit.value);
    const decimals = Math.max(
      digits.decimals,
      turn?.unit === typed.unit ? (digitsOf(turn.text)?.decimals ?? 0) : 0,
    );
    return [shift, -shift].map((by) => ({
      likely: {
        text: (decimal.value.value + by).toFixed(decimals).replace('.', digits.mark),
        unit: typed.unit,
      },
      chance,
      stretch: 1,
    }));
  },
};
