/** @module Balance of pumps against another program's statistics and an exhaustive search for the fewest changes. */
import fc from 'fast-check';
import { evaluate } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { reckonByName } from './list.ts';
import { fewestChanges } from './pump-balance.ts';

const given = { deliveries: '1 24.1, 2 24.6, 3 23.1, 4 24.3 cm³', allowed: '4%' };
const ask = (texts: Readonly<Record<string, string>>) => reckonByName('pump-balance', { ...given, ...texts });

/** The fewest left out of any set that lies within a width, all sets tried. */
const fewestOfAll = (figures: readonly number[], width: number): number => {
  let fewest = figures.length;
  for (let set = 1; set < 2 ** figures.length; set += 1) {
    const stays = figures.filter((_, index) => (set >> index) % 2 === 1);
    if (Math.max(...stays) - Math.min(...stays) <= width)
      fewest = Math.min(fewest, figures.length - stays.length);
  }
  return fewest;
};

describe('pumps against one another', () => {
  it('have the mean and the spread that another program finds', () => {
    const { results } = known(ask({}));
    const all = '[24.1, 24.6, 23.1, 24.3]';
    const program = outsideCheck('pump-balance', 'mathjs, mean and range of four deliveries', '%', 1e-9);
    program(Number(results.mean?.value), evaluate(`mean(${all})`));
    program(Number(results.spread?.value), evaluate(`100 * (max(${all}) - min(${all})) / mean(${all})`));
    program(Number(results['3.off']?.value), evaluate(`100 * (23.1 / mean(${all}) - 1)`));
  });

  it('are touched as few as can be', () => {
    const search = outsideCheck(
      'pump-balance',
      'every set of six pumps tried for the fewest changes',
      'pumps',
      0,
    );
    for (const [figures, width] of [
      [[24.1, 24.6, 23.1, 24.3, 25.9, 24.2], 0.6],
      [[10, 11, 12, 13, 14, 15], 2],
      [[10, 10.4, 11, 11.2, 11.3, 9], 0.5],
    ] as const)
      search(fewestChanges(figures, width).change.length, fewestOfAll(figures, width));
    const { results } = known(ask({}));
    expect(results.touch?.value).toBe('3');
    expect(results['bring-to']).toEqual({ value: 24.35, unit: 'cm³' });
    expect(results['3.change']?.value).toBeCloseTo(1.25, 9);
  });

  it('lie within what is allowed once they are changed as told, whatever they deliver', () => {
    const figures = fc.array(fc.integer({ min: 100, max: 140 }), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(
        figures,
        fc.integer({ min: 0, max: 20 }),
        fc.option(fc.integer({ min: 100, max: 140 })),
        (of, width, through) => {
          const { change, to } = fewestChanges(of, width, through ?? undefined);
          const after = of.map((each, index) => (change.includes(index) ? to : each));
          const all = through === null ? after : [...after, through];
          expect(Math.max(...all) - Math.min(...all)).toBeLessThanOrEqual(width + 1e-9);
          if (through === null) expect(change.length).toBe(fewestOfAll(of, width));
        },
      ),
    );
  });

  it('go to the delivery wanted, by so many marks', () => {
    const { results } = known(ask({ wanted: '24.0cm³', 'for-each-mark': '0.3cm³' }));
    expect(results.touch?.value).toBe('3');
    expect(results['3.marks']).toEqual({ value: 3, unit: 'towards more' });
    const rich = known(ask({ wanted: '23.0cm³', 'for-each-mark': '0.5cm³' })).results;
    expect(rich['2.marks']).toEqual({ value: -3.2, unit: 'towards less' });
  });

  it('that are not known well enough are unsure', () => {
    const { results } = known(ask({ deliveries: '1 24±0.3, 2 24.9±0.3 cm³' }));
    expect(results.verdict?.value).toBe('unsure');
    expect(known(ask({ deliveries: '1 24.0, 2 24.1 cm³' })).results.touch?.value).toBe('none');
  });

  it.each([
    [{ deliveries: '1 24 cm³' }, 'deliveries'],
    [{ deliveries: '1 24, 1 25 cm³' }, 'deliveries'],
    [{ deliveries: '1 24, 2 0 cm³' }, 'deliveries'],
    [{ deliveries: '1 24, 2 25 mm' }, 'deliveries, 1 24'],
    [{ allowed: '0%' }, 'allowed'],
    [{ wanted: '-3cm³' }, 'wanted'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });
});
