/** @module Parts of one size, known equally well: for fitting one is as good as the other. */
import type { FitPart, FitQuestion } from './fit-question.ts';

export interface SizeOfParts {
  readonly half: string;
  /** As they are listed. */
  readonly parts: readonly FitPart[];
}

/** To the nanometre, and as well known: influences that others share by name, those of its own by how large they are. */
const keyOf = ({ size, half = '' }: FitPart, shared: ReadonlySet<string>): string => {
  const terms = size.terms.map(
    ({ name, share, freedom }) => `${shared.has(name) ? name : ''}:${share.toPrecision(9)}:${freedom}`,
  );
  return [half, Math.round(size.value * 1e6), ...terms].join('|');
};

/**
 * Parts by size, in the order of the first part of each.
 *
 * @internal
 */
export const sizesOf = ({ places, parts }: Pick<FitQuestion, 'places' | 'parts'>): readonly SizeOfParts[] => {
  const times = new Map<string, number>();
  for (const { terms } of [...places.map(({ room }) => room), ...parts.map(({ size }) => size)])
    for (const { name } of terms) times.set(name, (times.get(name) ?? 0) + 1);
  const shared = new Set([...times].filter(([, count]) => count > 1).map(([name]) => name));
  const groups = Map.groupBy(parts, (part) => keyOf(part, shared));
  return [...groups.values()].map((group) => ({ half: group[0]?.half ?? '', parts: group }));
};
