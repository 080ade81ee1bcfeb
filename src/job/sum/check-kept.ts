/** @module Rule: what the sums of the operations are held to is among what they give, in a unit of its kind. */
import type { EngineType } from '../../engine/engine-type.ts';
import type { FilePath } from '../../engine/file-path.ts';
import { type Finding, wrong } from '../../engine/finding.ts';
import { chooseName } from '../../engine/nearest-name.ts';
import type { Kept, KeptFigures, OperationSum } from '../../engine/operation-sum.ts';
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

/** Limits must be figures of the kind that the result is. */
const figureMisfits = ({ dimension }: KeptFigures, symbol: string, own: FilePath): readonly Finding[] => {
  if (dimension === undefined) return [wrong(own, 'it has no limit', 'give least, greatest or both')];
  const unit = findUnit(symbol);
  return unit.kind === 'answer' && unit.value.dimension === dimension
    ? []
    : [
        wrong(
          own,
          `it comes in ${symbol}, and the limit is a figure of ${dimensionText(dimension)}`,
          unit.kind === 'answer' ? `give the limit in ${symbol}` : 'no limit can be kept for it',
        ),
      ];
};

/** Limits that differ by size: of a component that has sizes, each of them given, and looked up at a place. */
const sizeMisfits = (
  engine: EngineType,
  sum: OperationSum,
  kept: Kept,
  path: FilePath,
): readonly Finding[] => {
  const { sizeOf, sizes } = kept;
  if (sizeOf === undefined && sizes === undefined) return [];
  if (sizeOf === undefined || sizes === undefined)
    return [
      sizes === undefined
        ? wrong([...path, 'size-of'], 'no other size has limits', 'give them under sizes, or leave it out')
        : wrong([...path, 'sizes'], 'it is not said of what they are the sizes', 'name it under size-of'),
    ];
  if (kept.is) return [wrong([...path, 'sizes'], 'words do not differ by size', 'leave the sizes out')];
  const component = engine.components.get(sizeOf);
  const steps = component?.sizes?.steps.map(({ name }) => name);
  if (!component || !steps) {
    const named = [...engine.components.values()].filter((one) => one.sizes).map(({ name }) => name);
    const what = component ? `${component.title} have no sizes` : `there is no component ${sizeOf}`;
    return [wrong([...path, 'size-of'], what, chooseName(sizeOf, named))];
  }
  const alone = sum.at === undefined && (engine.placeKinds.get(component.at)?.count ?? 0) > 1;
  return [
    ...(alone
      ? [
          wrong(
            [...path, 'size-of'],
            `${component.title} may differ from place to place, and the sum is done once`,
            'say each: true, so that it is done at every place',
          ),
        ]
      : []),
    ...[...sizes.keys()]
      .filter((size) => !steps.includes(size))
      .map((size) =>
        wrong(
          [...path, 'sizes', size],
          `${component.title} have no size ${size}`,
          size === 'standard' ? 'give those of standard beside it, without a size' : chooseName(size, steps),
        ),
      ),
    ...steps
      .filter((size) => !sizes.has(size))
      .map((size) =>
        wrong([...path, 'sizes'], `size ${size} has no limits here`, `give those of ${size} from the manual`),
      ),
  ];
};

/** What a sum is held to must be among what it gives. */
export const keptMisfits = (
  engine: EngineType,
  sum: OperationSum,
  reckoning: Reckoning,
  path: FilePath,
): readonly Finding[] => {
  const results = Object.entries(exampleOf(reckoning)?.results ?? {});
  return sum.keeps.flatMap((kept): readonly Finding[] => {
    const own = [...path, 'keeps', kept.result];
    const found = results.find(([key]) => isKeptBy(kept.result, key));
    if (!found) {
      const keys = results.map(([key]) => key);
      return [wrong(own, `${reckoning.name} gives no ${kept.result}`, chooseName(kept.result, keys))];
    }
    const [, { value, unit: symbol }] = found;
    const ofSizes = sizeMisfits(engine, sum, kept, own);
    if (ofSizes.length > 0) return ofSizes;
    if (kept.is) {
      return typeof value === 'string' ? [] : [wrong(own, 'it is a figure', 'give least, greatest or both')];
    }
    if (typeof value === 'string') return [wrong(own, 'it is a word', 'say under `is` which will do')];
    return [
      ...figureMisfits(kept, symbol, own),
      ...[...(kept.sizes ?? [])].flatMap(([size, figures]) =>
        figureMisfits(figures, symbol, [...own, 'sizes', size]),
      ),
    ];
  });
};
