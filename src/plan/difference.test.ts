/** @module What changes from one plan to another, read as a fitter would say it. */
import { describe, expect, it } from 'vitest';
import { wornQuillfeather } from '../../test/engines/worn-quillfeather.ts';
import { differenceOf } from './difference.ts';
import type { Option, Plan } from './plan-model.ts';

const { engine } = wornQuillfeather;

const option = (
  slot: string,
  does: Option['does'],
  size: string,
  terms: { readonly hours?: number; readonly supplier?: string } = {},
): Option => {
  const [component = '', place] = slot.split('@');
  const { hours = 9_000, supplier = 'Tump Lane Engine Parts' } = terms;
  return {
    id: [slot, does, size, supplier].join(':'),
    slot,
    component,
    ...(place !== undefined && { place }),
    does,
    size,
    supplier,
    cents: 0,
    setUps: [],
    days: 0,
    hours,
    newParts: 0,
    reason: '',
  };
};

const plan = (
  figures: { readonly cents: number; readonly days: number; readonly hours: number },
  choices: readonly Option[],
): Plan => ({
  kind: 'plan',
  choices,
  barred: [],
  setUps: [],
  ...figures,
  newParts: 0,
  bound: figures.cents,
  provedBy: 'sweep',
});

const worn = { hours: 1_000 };
const asFound = plan({ cents: 20_000, days: 4, hours: 1_000 }, [
  option('bores', 'put back', 'standard', worn),
  option('pistons@piston.1', 'put back', 'standard'),
  option('pistons@piston.2', 'put back', 'standard'),
  option('pistons@piston.3', 'put back', 'standard'),
  option('head', 'put back', 'standard'),
]);

describe('the difference of two plans', () => {
  it('says what it costs, what it gives, and what must be done for it, what would not last first', () => {
    const bored = plan({ cents: 51_000, days: 7, hours: 5_000 }, [
      option('bores', 'machine', '0.50'),
      ...[1, 2, 3].map((place) => option(`pistons@piston.${place}`, 'replace', '0.50')),
      option('head', 'put back', 'standard'),
    ]);
    expect(differenceOf(engine, asFound, bored)).toEqual({
      cents: 31_000,
      days: 3,
      hours: 4_000,
      says: 'for 310.00 more and 3 more days: 4000 h more, since cylinder bores in the block go to 0.50 and pistons are renewed at 0.50',
    });
    expect(differenceOf(engine, bored, asFound).says).toBe(
      'for 4000 h less: 310.00 less and ready 3 days sooner, since cylinder bores in the block and pistons go back',
    );
  });

  it('names places where only some of them change, or how many they are', () => {
    const some = (...places: readonly number[]): Plan => ({
      ...asFound,
      cents: 21_050,
      choices: asFound.choices.map((choice) =>
        places.some((place) => choice.slot === `pistons@piston.${place}`)
          ? option(choice.slot, 'replace', 'standard')
          : choice,
      ),
    });
    expect(differenceOf(engine, asFound, some(2)).says).toBe(
      'for 10.50 more: nothing more, since pistons at piston 2 are renewed',
    );
    expect(differenceOf(engine, asFound, some(1, 3)).says).toContain(
      'pistons at piston 1 and piston 3 are renewed',
    );
  });

  it('names the supplier where nothing else changes', () => {
    const by = (supplier: string, days: number, cents: number): Plan => ({
      ...asFound,
      days,
      cents,
      choices: [option('head', 'machine', 'skimmed', { supplier })],
    });
    expect(differenceOf(engine, by('Slow & Sons', 6, 9_000), by('Quick Bros', 5, 9_900)).says).toBe(
      'for 9.00 more: ready 1 day sooner, since cylinder head comes from Quick Bros',
    );
  });

  it('says so where the figures are the same', () => {
    expect(differenceOf(engine, asFound, asFound).says).toBe('for the same: no other figures');
  });
});
