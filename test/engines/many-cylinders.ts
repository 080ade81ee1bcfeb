/** @module Larger worn engines after the pattern of the three-cylinder demonstration engine, with as many cylinders as asked. */
import type { EngineType } from '../../src/engine/engine-type.ts';
import { readEngineType } from '../../src/engine/read-engine-type.ts';
import { cellKey, type Reading } from '../../src/measure/reading.ts';
import { entryOrder } from '../../src/measure/scheme.ts';
import type { Sheet } from '../../src/measure/sheet.ts';
import { changed, quillfeatherText } from './demo-engines.ts';
import { seeded } from './worn-engine.ts';
import { wornQuillfeather } from './worn-quillfeather.ts';

const manyCylinders = (cylinders: number): EngineType => {
  const alongCylinders = quillfeatherText.replaceAll(
    /count: (3|6), along: cylinder/g,
    (_, count) => `count: ${(Number(count) / 3) * cylinders}, along: cylinder`,
  );
  const order = Array.from({ length: cylinders }, (_, at) => at + 1).join(', ');
  const text = changed(
    alongCylinders,
    ['cylinders: 3', `cylinders: ${cylinders}`],
    ['firing-order: [1, 3, 2]', `firing-order: [${order}]`],
    ['count: 4, along: bearing', `count: ${cylinders + 1}, along: bearing`],
  );
  const { engine, troubles } = readEngineType(text);
  if (!engine) throw new Error(`the larger engine cannot be read: ${troubles[0]?.what}`);
  return engine;
};

/** The place of the demonstration engine that a place is worn like: its places over and over. */
const patternOf = (place: string): string => {
  const [kind = '', number = '1'] = place.split('.');
  const count = wornQuillfeather.engine.placeKinds.get(kind)?.count ?? 1;
  return `${kind}.${((Number(number) - 1) % count) + 1}`;
};

/** Readings of the demonstration engine, each shifted by up to 4 µm, so that no two places are quite alike. */
export const wornEngineOf = (cylinders: number): Sheet => {
  const engine = manyCylinders(cylinders);
  const random = seeded(cylinders);
  const readings = entryOrder(engine).flatMap((cell): readonly Reading[] => {
    const like = wornQuillfeather.readings.get(cellKey({ ...cell, place: patternOf(cell.place) }))?.at(-1);
    if (!like) return [];
    const size = Number(like.typed.text) + (random() - 0.5) * 0.008;
    return [{ ...like, id: cellKey(cell), cell, typed: { ...like.typed, text: size.toFixed(3) } }];
  });
  return { ...wornQuillfeather, engine, readings: Map.groupBy(readings, ({ cell }) => cellKey(cell)) };
};
