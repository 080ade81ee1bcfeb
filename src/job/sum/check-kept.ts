/** @module Rule: what the sums of the operations are held to is among what they give, in a unit of its kind. */
import type { FilePath } from '../../engine/file-path.ts';
import { type Finding, wrong } from '../../engine/finding.ts';
import { chooseName } from '../../engine/nearest-name.ts';
import type { OperationSum } from '../../engine/operation-sum.ts';
import { dimensionText, findUnit } from '../../quantity/unit.ts';
import { reckonTyped } from '../../reckon/given.ts';
import type { Reckoned, Reckoning } from '../../reckon/reckoning.ts';
import { isKeptBy } from './keeping.ts';

const examples = new Map<string, Reckoned | undefined>();

/** What a sum gives when all that it takes is given, by its own examples. */
export const exampleOf = (reckoning: Reckoning): Reckoned | undefined => {
  if (!examples.has(reckoning.name)) {
    const texts = Object.fromEntries(reckoning.inputs.map(({ key, example }) => [key, example]));
    const done = reckonTyped(reckoning, texts);
    examples.set(reckoning.name, done.kind === 'answer' ? done.value.reckoned : undefined);
  }
  return examples.get(reckoning.name);
};

/** What a sum is held to must be among what it gives. */
export const keptMisfits = (sum: OperationSum, reckoning: Reckoning, path: FilePath): readonly Finding[] => {
  const results = Object.entries(exampleOf(reckoning)?.results ?? {});
  return sum.keeps.flatMap((kept): readonly Finding[] => {
    const own = [...path, 'keeps', kept.result];
    const found = results.find(([key]) => isKeptBy(kept.result, key));
    if (!found) {
      const keys = results.map(([key]) => key);
      return [wrong(own, `${reckoning.name} gives no ${kept.result}`, chooseName(kept.result, keys))];
    }
    const [, { value, unit: symbol }] = found;
    if (kept.is) {
      return typeof value === 'string' ? [] : [wrong(own, 'it is a figure', 'give least, greatest or both')];
    }
    if (typeof value === 'string') return [wrong(own, 'it is a word', 'say under `is` which will do')];
    if (kept.dimension === undefined) return [wrong(own, 'it has no limit', 'give least, greatest or both')];
    const unit = findUnit(symbol);
    return unit.kind === 'answer' && unit.value.dimension === kept.dimension
      ? []
      : [
          wrong(
            own,
            `it comes in ${symbol}, and the limit is a figure of ${dimensionText(kept.dimension)}`,
            unit.kind === 'answer' ? `give the limit in ${symbol}` : 'no limit can be kept for it',
          ),
        ];
  });
};
