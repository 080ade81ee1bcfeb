/** @module Heat for a shrink fit against the formulas worked by hand; limits and colours. */
import { describe, expect, it } from 'vitest';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { reckonByName } from './list.ts';
import { slipOnTemperature } from './shrink-fit.ts';
import { temperColour } from './temper-colour.ts';

const ask = (texts: Readonly<Record<string, string>>) =>
  reckonByName('shrink-fit', { bore: '49.970mm', shaft: '50.030mm', clearance: '0.05mm', ...texts });

describe('heat for a shrink fit', () => {
  it('is the interference and the clearance over the growth of the bore', () => {
    const still = { expansion: 0, celsius: 20 };
    // source: ΔT = δ / (α d), page of a bearing handbook: d 50 mm, δ 0.05 mm, α 12e-6: 83.3 K
    const handbook = outsideCheck(
      'shrink-fit',
      'ΔT = δ / (α d), bearing handbooks, worked by hand',
      'K',
      0.1,
    );
    handbook(slipOnTemperature(50, 50.05, 0, 12e-6, still) - 20, 83.3);
    // recomputed: δ 0.08, clearance 0.05, α 11.5e-6 from 20 °C: 246 °C
    outsideCheck(
      'shrink-fit',
      'with room to slide, recomputed',
      '°C',
      0.5,
    )(slipOnTemperature(50, 50.08, 0.05, 11.5e-6, still), 246);
  });

  it('is less with the shaft cooled, by what the shaft shrinks', () => {
    const at = (texts: Readonly<Record<string, string>>) =>
      Number(known(ask(texts)).results['slips-on-at']?.value);
    // the same steel: each degree off the shaft saves one of the hub
    expect(at({}) - at({ 'shaft-temperature': '-70°C' })).toBeCloseTo(90, 0);
  });

  it('is told past its uncertain side, held against the hardest limit given, and named by its colour', () => {
    const { results, notes } = known(ask({ state: 'tempered', 'tempered-at': '230°C' }));
    expect(Number(results['heat-to']?.value)).toBeGreaterThan(Number(results['slips-on-at']?.value));
    expect(results['hottest-allowed']?.value).toBe(230);
    expect(results.allowed?.value).toBe('no');
    expect(notes.join()).toContain('would soften the hub');
    expect(known(ask({ state: 'structural steel' })).results.allowed?.value).toBe('yes');
    expect(known(ask({ hub: 'aluminium' })).results['oxide-colour']).toBeUndefined();
  });

  it('has the colours of the steel text', () => {
    // source: average of five sources, °F: 430 pale yellow, 523 reddish purple, 572 blue, 627 greenish blue
    const at = (fahrenheit: number) => temperColour((fahrenheit - 32) / 1.8);
    expect([430, 523, 572, 627].map(at)).toEqual(['pale yellow', 'reddish purple', 'blue', 'greenish blue']);
    expect([temperColour(150), temperColour(420)]).toEqual([undefined, undefined]);
  });

  it.each([
    [{ shaft: '60mm' }, 'bore, shaft'],
    [{ clearance: '-0.1mm' }, 'clearance'],
    [{ 'shaft-temperature': '-300 °C' }, 'shaft-temperature'],
    [{ state: 'annealed' }, 'state=annealed'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});
