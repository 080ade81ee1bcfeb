/** @module Rule: a figure that the manual prints in two units is the same in both. */

import { parseDecimal } from '../../quantity/decimal.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { type Typed, typedText } from '../../quantity/typed.ts';
import type { EngineType } from '../engine-type.ts';
import { doubtful, type Finding } from '../finding.ts';
import { pairTrouble } from '../printed-pair.ts';

/** A conversion with as many decimals as the print has, and one more where that would leave nothing of it. */
const asPrinted = (value: number, { text, unit }: Typed): string => {
  const decimal = parseDecimal(text);
  const step = decimal.kind === 'answer' ? decimal.value.resolution : 1;
  const decimals = Math.min(12, Math.max(0, Math.ceil(-Math.log10(step) - 1e-9)));
  return `${formatFigure(value, decimals)} ${unit}`;
};

export const printedPairs = ({ printedPairs: pairs }: EngineType): readonly Finding[] =>
  pairs.flatMap((pair) => {
    const { path, figure, also } = pair;
    if (figure.unit === also.unit)
      return [
        doubtful(
          path,
          `the figure in brackets is in ${also.unit} too`,
          'give it in the other unit that the manual prints, or leave it out',
        ),
      ];
    const trouble = pairTrouble(pair);
    if (trouble === undefined) return [];
    const right = asPrinted(trouble.inAlso, also);
    const back = asPrinted(trouble.inFigure, figure);
    return [
      doubtful(
        path,
        `${typedText(figure)} is ${right}, and ${typedText(also)} stands beside it, which is ${back}`,
        `look in the manual which of the two is right; ${typedText(figure)} is reckoned with until then`,
      ),
    ];
  });
