/** @module Rule: what an operation hides for good has been proved by then: by its own hold point, or by one before it. */
import type { EngineType, Operation } from '../engine-type.ts';
import { type Finding, wrong } from '../finding.ts';
import { chooseName } from '../nearest-name.ts';
import { workBefore } from '../work-before.ts';

/** The characteristics behind a name under `covers`: itself, or those with limits at a kind of place. */
export const hidden = (
  { characteristics, placeKinds }: Pick<EngineType, 'characteristics' | 'placeKinds'>,
  name: string,
): readonly string[] => {
  if (characteristics.has(name)) return [name];
  if (!placeKinds.has(name)) return [];
  return [...characteristics.values()]
    .filter(({ at, limits }) => at === name && limits !== undefined)
    .map((characteristic) => characteristic.name);
};

const ofOne = (engine: EngineType, operation: Operation): readonly Finding[] => {
  const { name, needs, covers } = operation;
  const proved = new Set([
    ...needs,
    ...[...workBefore(engine, name)].flatMap((before) => engine.operations.get(before)?.needs ?? []),
  ]);
  return covers.flatMap((covered, index) => {
    const path = ['operations', name, 'covers', index];
    if (!engine.characteristics.has(covered) && !engine.placeKinds.has(covered)) {
      const known = [...engine.placeKinds.keys(), ...engine.characteristics.keys()];
      return [
        wrong(path, `there is no kind of place or characteristic ${covered}`, chooseName(covered, known)),
      ];
    }
    return hidden(engine, covered)
      .filter((characteristic) => !proved.has(characteristic))
      .map((characteristic) =>
        wrong(
          path,
          `${name} hides ${characteristic}, and no hold point before it asks for that`,
          `put ${characteristic} under the \`needs\` of ${name} or of an operation before it`,
        ),
      );
  });
};

export const coveredProved = (engine: EngineType): readonly Finding[] =>
  [...engine.operations.values()]
    .filter(({ covers }) => covers.length > 0)
    .flatMap((operation) => ofOne(engine, operation));
