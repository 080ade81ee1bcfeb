/** @module A new engine type can be read from its first moment, whatever it is called. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readEngineType } from '../read-engine-type.ts';
import { blankEngineType } from './blank-engine-type.ts';
import { editEngine } from './edit-engine.ts';

const begun = {
  id: 'wherry-4',
  title: 'Wherry 4',
  source: 'manual 12',
  cylinders: 4,
  by: 'Odo',
  on: '2026-03-01',
};

describe('a new engine type', () => {
  it('has its places, its author and no errors', () => {
    const { engine, troubles } = readEngineType(blankEngineType(begun));
    expect(troubles.filter(({ weight }) => weight === 'error')).toEqual([]);
    expect(engine).toMatchObject({ id: 'wherry-4', version: 1, cylinders: 4, entered: { by: 'Odo' } });
    expect(engine?.places.has('main.5')).toBe(true);
    expect(engine?.places.has('bore.5')).toBe(false);
  });

  it('keeps whatever words it is given, for every count of cylinders', () => {
    fc.assert(
      fc.property(
        fc
          .string({ minLength: 1, maxLength: 40, unit: 'grapheme-ascii' })
          .filter((text) => text.trim() !== ''),
        fc.integer({ min: 1, max: 20 }),
        (title, cylinders) => {
          const { engine } = readEngineType(blankEngineType({ ...begun, title, cylinders }));
          expect(engine).toMatchObject({ title, cylinders, firingOrder: { length: cylinders } });
        },
      ),
      { numRuns: 30 },
    );
  });

  it('takes its first characteristic', () => {
    const edited = editEngine(blankEngineType(begun), [
      {
        kind: 'set entry',
        in: 'characteristics',
        name: 'end-float',
        entry: { title: 'end float', at: 'thrust', wears: 'larger' },
      },
      { kind: 'set limit', of: { characteristic: 'end-float' }, side: 'wear.greatest', figure: '0.40 mm' },
    ]);
    expect(
      edited.kind === 'answer' && edited.value.engine?.characteristics.get('end-float')?.limits?.goesBack,
    ).toEqual({
      greatest: 0.4,
    });
  });
});
