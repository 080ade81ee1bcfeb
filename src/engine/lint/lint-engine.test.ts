/** @module The linter as a whole: nothing to find in a sound engine type, errors before warnings in a poor one. */
import { describe, expect, it } from 'vitest';
import {
  brambleholtText,
  changed,
  mudlarkText,
  quillfeatherText,
} from '../../../test/engines/demo-engines.ts';
import { readEngineType } from '../read-engine-type.ts';

describe('the linter', () => {
  it.each([
    ['three-cylinder', quillfeatherText],
    ['single-cylinder', mudlarkText],
    ['six-cylinder', brambleholtText],
  ])('finds nothing in the %s demonstration engine', (_, text) => {
    expect(readEngineType(text).troubles).toEqual([]);
  });

  it('lets a type with nothing but warnings be used, and says them', () => {
    const { engine, troubles } = readEngineType(changed(quillfeatherText, ['checked:', '# checked:']));
    expect(engine?.id).toBe('quillfeather-3w');
    expect(troubles).toMatchObject([{ weight: 'warning', line: 2 }]);
  });

  it('says everything that is wrong at once, in the order of the file', () => {
    const { engine, troubles } = readEngineType(
      changed(
        quillfeatherText,
        ['rod: 168 mm', 'rod: 40 mm'],
        ['[1, 3, 2]', '[1, 2]'],
        ['life: 9000 h', 'life: 0 h'],
      ),
    );
    expect(engine).toBeUndefined();
    expect(troubles.map(({ line }) => line)).toEqual(troubles.map(({ line }) => line).sort((a, b) => a - b));
    expect(troubles.map(({ where }) => where)).toEqual(['rod', 'firing-order', 'components, mains, life']);
  });
});
