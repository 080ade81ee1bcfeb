/** @module What is measured for what is derived from it, all the way down. */
import type { EngineType } from './engine-type.ts';
import { operandsOf } from './expression.ts';

/** Characteristics with all that they are derived from. */
export const measuredFor = (
  engine: Pick<EngineType, 'characteristics'>,
  names: Iterable<string>,
): ReadonlySet<string> => {
  const reached = new Set<string>();
  const left = [...names];
  for (let name = left.pop(); name !== undefined; name = left.pop()) {
    if (reached.has(name)) continue;
    reached.add(name);
    const derived = engine.characteristics.get(name)?.derived;
    if (derived !== undefined) left.push(...operandsOf(derived).map(({ of }) => of));
  }
  return reached;
};
