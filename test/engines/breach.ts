/** @module A rule of the linter put to the proof: the least change to a sound engine that breaks it, and what is said then. */
import { describe, expect, it } from 'vitest';
import { readEngineType } from '../../src/engine/read-engine-type.ts';
import { changed, lineOf, quillfeatherText } from './demo-engines.ts';

export interface Breach {
  readonly breaks: string;
  readonly changes: readonly (readonly [from: string, to: string])[];
  /** What must be said. */
  readonly says: RegExp;
  /** Text on the line that must be named. */
  readonly on: string;
  readonly weight?: 'warning';
}

/** Makes each change to the three-cylinder demonstration engine, which is sound without it. */
export const describeRule = (rule: string, breaches: readonly Breach[]): void => {
  describe(`an engine type ${rule}`, () => {
    it.each(breaches)('names $breaks', ({ changes, says, on, weight = 'error' }) => {
      const text = changed(quillfeatherText, ...changes);
      const { engine, troubles } = readEngineType(text);
      const said = troubles.map((trouble) => ({ ...trouble, text: `${trouble.what}: ${trouble.remedy}` }));
      expect(said.map((trouble) => trouble.text).join('\n')).toMatch(says);
      const found = said.find((trouble) => says.test(trouble.text));
      expect(found).toMatchObject({ weight, line: lineOf(text, on) });
      expect(engine !== undefined).toBe(!troubles.some((trouble) => trouble.weight === 'error'));
    });
  });
};
