/** @module Rule: what is tightened again is so at one time, by an operation that comes after it and tightens it. */
import type { EngineType } from '../engine-type.ts';
import type { Fastener, TightenAgain } from '../fastener.ts';
import { type Finding, wrong } from '../finding.ts';

/** Whether one operation waits, at once or through others, for another. */
const waitsFor = ({ operations }: EngineType, later: string, earlier: string): boolean => {
  const seen = new Set<string>();
  const left = [later];
  for (let name = left.pop(); name !== undefined; name = left.pop()) {
    if (seen.has(name)) continue;
    seen.add(name);
    const { after = [] } = operations.get(name) ?? {};
    if (after.includes(earlier)) return true;
    left.push(...after);
  }
  return false;
};

const when = (engine: EngineType, { name, title }: Fastener, entry: TightenAgain, index: number) => {
  const path = ['fasteners', name, 'again', index];
  const { after, by, hours } = entry;
  if (hours !== undefined)
    return by === undefined && after === undefined && hours > 0
      ? undefined
      : wrong(
          path,
          `${title} are tightened again either within the job or after hours of running`,
          'give `hours` alone, or `after` and `by`',
        );
  if (by === undefined || after === undefined)
    return wrong(
      path,
      `nothing says when ${title} are tightened again`,
      'give `after` and `by`, operations both; or the `hours` of running',
    );
  const operation = engine.operations.get(by);
  if (operation === undefined) return undefined;
  if (!operation.tightens.includes(name))
    return wrong([...path, 'by'], `${by} does not tighten ${title}`, `put ${name} under its \`tightens\``);
  return waitsFor(engine, by, after)
    ? undefined
    : wrong([...path, 'by'], `${by} does not come after ${after}`, `put ${after} under its \`after\``);
};

export const tightenedAgain = (engine: EngineType): readonly Finding[] =>
  [...engine.fasteners.values()].flatMap((fastener) =>
    fastener.again.flatMap((entry, index) => {
      const bad = when(engine, fastener, entry, index);
      if (bad !== undefined) return [bad];
      return entry.stages.length > 0
        ? []
        : [
            wrong(
              ['fasteners', fastener.name, 'again', index],
              `nothing says what is pulled when ${fastener.title} are tightened again`,
              'give its `stages`',
            ),
          ];
    }),
  );
