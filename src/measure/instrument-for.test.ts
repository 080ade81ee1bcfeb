/** @module Checks of which instrument is offered first. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readEngineType } from '../engine/read-engine-type.ts';
import type { Instrument } from './instrument.ts';
import { instrumentsFor } from './instrument-for.ts';
import { cellKey } from './reading.ts';
import type { Sheet } from './sheet.ts';

const mm = (text: string) => ({ text, unit: 'mm' });

const instrument = (name: string, kind: string, least: string, greatest: string): Instrument => ({
  name,
  kind,
  range: { least: mm(least), greatest: mm(greatest) },
  resolution: mm('0.001'),
  permissibleError: mm('0.004'),
  repeatability: mm('0.001'),
});

const register = [
  instrument('caliper', 'caliper', '0', '150'),
  instrument('small', 'outside micrometer', '0', '25'),
  instrument('right', 'outside micrometer', '50', '75'),
];

const { engine } = readEngineType(
  readFileSync(new URL('../../demo/engines/quillfeather-3w.yaml', import.meta.url)),
);

const sheetWith = (readings: Sheet['readings']): Sheet => {
  if (!engine) throw new Error('the demo engine type does not read');
  return { engine, instruments: new Map(), readings, sizesFound: new Map(), conformance: 0.95 };
};

const names = (sheet: Sheet) =>
  instrumentsFor(sheet, 'main-journal-diameter', register).map(({ name }) => name);

describe('instruments for a characteristic', () => {
  it('come first when they are of the kind asked for and reach its sizes', () => {
    expect(names(sheetWith(new Map()))).toEqual(['right', 'small', 'caliper']);
  });

  it('stay in the hand: the one used before comes first', () => {
    const cell = {
      place: 'main.1',
      characteristic: 'main-journal-diameter',
      plane: 'front',
      axis: 'vertical',
    };
    const reading = { id: 'r', cell, typed: mm('54.98'), instrument: 'caliper' };
    expect(names(sheetWith(new Map([[cellKey(cell), [reading]]])))[0]).toBe('caliper');
  });
});
