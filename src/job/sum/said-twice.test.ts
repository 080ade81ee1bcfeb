/** @module A figure that the engine type says itself: said again for a sum it is wrong, whether it repeats or contradicts. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readCheckedType } from './checked-engine-type.ts';

const quillfeather = readFileSync('demo/engines/quillfeather-3w.yaml', 'utf8');

const troubles = (from: string, to: string) => {
  const text = quillfeather.replace(from, to);
  expect(text).not.toBe(quillfeather);
  return readCheckedType(text)
    .troubles.filter(({ where }) => where.includes('sums'))
    .map(({ where, what, remedy }) => `${where}: ${what}; ${remedy}`);
};

const events = 'events: { valves: events }';
const shifted = (text: string) => troubles(events, `events: ${text}`);

describe('a figure that the engine type says', () => {
  it('is said once in the demonstration engine', () => {
    expect(readCheckedType(quillfeather).troubles.filter(({ where }) => where.includes('sums'))).toEqual([]);
  });

  it.each([
    [
      'inlet-closes: { valves: inlet-closes }',
      'inlet-closes: 42.0 deg',
      'inlet-closes repeats inlet-closes under valve-setting, which says 42 deg; take it from there: inlet-closes: { valves: inlet-closes }',
    ],
    [
      'inlet-closes: { valves: inlet-closes }',
      'inlet-closes: 44 deg',
      'inlet-closes is given as 44 deg, against inlet-closes under valve-setting, which says 42 deg; compare both with the manual',
    ],
    ['margin: { valves: rest }', 'margin: 20 deg', 'margin repeats rest under valve-setting'],
    [
      'firing-order: { engine: firing-order }',
      'firing-order: 1 3 2',
      "firing-order repeats the engine's firing-order",
    ],
    [
      'firing-order: { engine: firing-order }',
      'firing-order: 1-2-3',
      "firing-order is given as 1-2-3, against the engine's firing-order",
    ],
    ['rod: { engine: rod }', 'rod: 17 cm', "rod is given as 17 cm, against the engine's rod"],
    [
      'spill: { pumps: spill }',
      'spill: 22 deg',
      'spill is given as 22 deg, against the check of pump-timing, which says 24 deg',
    ],
  ])('case %#: %s is not %s', (from, to, says) => {
    const found = troubles(from, to);
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(says);
  });

  it('is found among events, by their names', () => {
    // source: four-stroke cycle by hand: 360 − 10, 540 + 42, 180 − 42, 360 + 10
    expect(shifted('injection -22, inlet-opens 350')[0]).toContain(
      'repeats events under valve-setting, which says inlet-opens 350, inlet-closes 582, exhaust-opens 138, exhaust-closes 370',
    );
    expect(shifted('inlet-opens 350, inlet-closes 580')[0]).toContain('is given as');
    expect(shifted('starting-air 5')).toEqual([]);
  });

  it('may be given where it is said nowhere else', () => {
    const without = quillfeather.replace(/\nvalve-setting:\n(?: .*\n)+/, '\n');
    const { troubles: told } = readCheckedType(without);
    const lines = told.filter(({ where }) => where.includes('which-valves')).map(({ what }) => what);
    expect(new Set(lines)).toEqual(new Set(['it is not said when the valves lift']));
    expect(lines).toHaveLength(5);
    const figures = without.replace(/\{ valves: (?:inlet|exhaust)-\w+ \}|\{ valves: rest \}/g, '30 deg');
    expect(readCheckedType(figures).troubles.filter(({ where }) => where.includes('which-valves'))).toEqual(
      [],
    );
  });

  it('is a spill before the top only where a larger reading of the check is earlier', () => {
    expect(troubles('larger-is: earlier', 'larger-is: later')[0]).toContain(
      'no spill before the top is said here',
    );
  });
});
