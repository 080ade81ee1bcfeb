/** @module How long the engine lasts, as a person reads it. */
import { describe, expect, it } from 'vitest';
import { wornQuillfeather } from '../../test/engines/worn-quillfeather.ts';
import { engineLife } from '../plan/engine-life.ts';
import type { Option } from '../plan/plan-model.ts';
import { lifeWords } from './life-words.ts';

const { engine } = wornQuillfeather;

const chosen = (slot: string, hours: number): Option => ({
  id: slot,
  slot,
  component: slot.split('@')[0] ?? slot,
  does: 'replace',
  size: 'standard',
  supplier: '',
  cents: 0,
  setUps: [],
  days: 0,
  hours,
  newParts: 1,
  reason: 'new',
});
const choices = ['mains', 'injector-nozzles@injector.1', 'injector-nozzles@injector.2'].map((slot) =>
  chosen(slot, 4500),
);
const words = (wanted?: number) => lifeWords(engine, { choices, hours: 4500 }, engineLife(choices), wanted);

describe('how long the engine lasts, in words', () => {
  it('says what each part is good for, and the engine, and which parts go first', () => {
    // source: by hand; three parts alike go first with the same chance
    expect(words()[0]).toBe('Each part by itself: nine in ten such parts outlast 4500 h.');
    expect(words()).toContain(
      'Likeliest to go first: injector nozzles (any of 2) 67 %, main journals of the crankshaft 33 %.',
    );
  });

  it('says how likely the hours wanted are', () => {
    // source: by hand; three parts of which nine in ten each last so long: 0.9 × 0.9 × 0.9 = 0.729
    expect(words(4500)).toContain('Chance that no part goes within the 4500 h wanted: 73 %.');
    expect(words(1)).toContain('Chance that no part goes within the 1 h wanted: over 99 %.');
    expect(words(50_000)).toContain('Chance that no part goes within the 50000 h wanted: under 1 %.');
  });
});
