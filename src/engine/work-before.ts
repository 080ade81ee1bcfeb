/** @module What must be done before an operation, however far back. */
import type { EngineType } from './engine-type.ts';

/** The operations that come before one, all the way back, itself left out. Ends on a circle too. */
export const workBefore = (
  { operations }: Pick<EngineType, 'operations'>,
  name: string,
): ReadonlySet<string> => {
  const before = new Set<string>();
  const ahead = [...(operations.get(name)?.after ?? [])];
  for (let next = ahead.pop(); next !== undefined; next = ahead.pop()) {
    if (next === name || before.has(next)) continue;
    before.add(next);
    ahead.push(...(operations.get(next)?.after ?? []));
  }
  return before;
};
