/** @module The demonstration engines as the tests use them: their text, and the engine types read from it. */
import { readFileSync } from 'node:fs';
import type { EngineType } from '../../src/engine/engine-type.ts';
import { readEngineType } from '../../src/engine/read-engine-type.ts';

const textOf = (name: string): string =>
  readFileSync(new URL(`../../demo/engines/${name}.yaml`, import.meta.url), 'utf8');

const engineOf = (text: string): EngineType => {
  const { engine, troubles } = readEngineType(text);
  if (engine === undefined) throw new Error(`a demonstration engine cannot be read: ${troubles[0]?.what}`);
  return engine;
};

export const quillfeatherText = textOf('quillfeather-3w');
export const mudlarkText = textOf('mudlark-1');
export const brambleholtText = textOf('brambleholt-6');
export const quillfeather = (): EngineType => engineOf(quillfeatherText);
export const brambleholt = (): EngineType => engineOf(brambleholtText);
export const mudlark = (): EngineType => engineOf(mudlarkText);

/** A text with one stretch of it changed, which must stand in it. */
export const changed = (text: string, ...changes: readonly (readonly [from: string, to: string])[]): string =>
  changes.reduce((before, [from, to]) => {
    if (!before.includes(from)) throw new Error(`the text to change is not there: ${from}`);
    return before.replace(from, () => to);
  }, text);

/** The line, 1 and up, on which a stretch of text begins. */
export const lineOf = (text: string, stretch: string): number => {
  const at = text.indexOf(stretch);
  if (at === -1) throw new Error(`the text is not there: ${stretch}`);
  return text.slice(0, at).split('\n').length;
};
