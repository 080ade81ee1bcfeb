/** @module Masses balanced as exhaustive searches and a printed inequality have it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { known } from '../../test/known.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { evenThree, heavyWithLight } from './even-assemblies.ts';
import { leastLightening } from './least-lightening.ts';
import { reckonByName } from './list.ts';

const pistons = 'P1 912.4, P2 915.0, P3 908.9, P4 913.6 g';
const rods = 'R1 1503.0, R2 1511.5, R3 1506.2, R4 1498.8 g';
const ask = (texts: Readonly<Record<string, string>>) =>
  reckonByName('balance-masses', { pistons, limit: '4g', ...texts });

const orders = (count: number): readonly (readonly number[])[] =>
  count === 0
    ? [[]]
    : orders(count - 1).flatMap((order) =>
        Array.from({ length: count }, (_, at) => [...order.slice(0, at), count - 1, ...order.slice(at)]),
      );
const range = (masses: readonly number[]) => Math.max(...masses) - Math.min(...masses);
const lightening = (masses: readonly number[], limit: number) =>
  masses.reduce((sum, mass) => sum + Math.max(0, mass - Math.min(...masses) - limit), 0);
const subsets = (masses: readonly number[], count: number) =>
  Array.from({ length: 2 ** masses.length }, (_, set) =>
    masses.filter((_mass, at) => (set >> at) % 2 === 1),
  ).filter(({ length }) => length === count);
const pairsOf = (a: readonly number[], b: readonly number[], order: readonly number[]) =>
  a.map((mass, at) => mass + (b[order[at] ?? 0] ?? 0));

describe('masses', () => {
  it('need least off as every set and every pairing tried shows', () => {
    const [p, r, b] = [
      [912.4, 915, 908.9, 913.6],
      [1503, 1511.5, 1506.2, 1498.8],
      [241, 240.2, 241.6, 240.8],
    ];
    const search = outsideCheck(
      'balance-masses',
      'every pairing of four pistons, pins and rods tried',
      'g',
      1e-9,
    );
    const bestPairs = Math.min(...orders(4).map((order) => range(pairsOf(p, r, order))));
    search(range(pairsOf(p, r, heavyWithLight(p, r))), bestPairs);
    search(Number(known(ask({ rods })).results.spread?.value), bestPairs);
    const bestThree = Math.min(
      ...orders(4).flatMap((one) => orders(4).map((two) => range(pairsOf(pairsOf(p, b, one), r, two)))),
    );
    search(evenThree(p, b, r).spread, bestThree);
    const sets = outsideCheck('balance-masses', 'every set of four out of six pistons tried', 'g', 1e-9);
    const six = [...p, 911, 914.2];
    sets(leastLightening(six, 4, 1.5).total, Math.min(...subsets(six, 4).map((set) => lightening(set, 1.5))));
  });

  it('need no more off than any other set or pairing, whatever they are', () => {
    const mass = fc.integer({ min: 900, max: 930 });
    fc.assert(
      fc.property(
        fc.array(mass, { minLength: 5, maxLength: 7 }),
        fc.array(mass, { minLength: 4, maxLength: 4 }),
        fc.integer({ min: 0, max: 12 }),
        (all, others, limit) => {
          const { taken, total, off } = leastLightening(all, 4, limit);
          expect(new Set(taken).size).toBe(4);
          expect(total).toBe(Math.min(...subsets(all, 4).map((set) => lightening(set, limit))));
          const after = taken.map((index, at) => (all[index] ?? 0) - (off[at] ?? 0));
          expect(range(after)).toBeLessThanOrEqual(limit);
          const four = all.slice(0, 4);
          const paired = pairsOf(four, others, heavyWithLight(four, others));
          for (const order of orders(4)) {
            const other = pairsOf(four, others, order);
            expect(range(paired)).toBeLessThanOrEqual(range(other));
            expect(lightening(paired, limit)).toBeLessThanOrEqual(lightening(other, limit));
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('of one kind say what comes off which', () => {
    const { results } = known(ask({}));
    expect(results).toMatchObject({
      verdict: { value: 'outside' },
      'total-off': { value: 2.8, unit: 'g' },
      'P2.off': { value: 2.1, unit: 'g' },
      'P4.off': { value: 0.7, unit: 'g' },
    });
    expect(results['P1.off']).toBeUndefined();
  });

  it('are swapped for spares where that needs less off, and not where it does not', () => {
    const { results } = known(ask({ spares: 'P5 911.0, P6 914.2 g' }));
    expect(results).toMatchObject({
      'leave-out': { value: 'P3' },
      'take-instead': { value: 'P5' },
      'total-off': { value: 0 },
      verdict: { value: 'within' },
    });
    expect(known(ask({ limit: '10g', spares: 'P5 911.0 g' })).results['take-instead']?.value).toBe('none');
  });

  it('of pistons with rods are swapped only where the assemblies gain by it', () => {
    // the light piston serves the heavy rod: on its own mass it would have been left out
    const light = { pistons: 'P1 900, P2 910 g', rods: 'R1 1510, R2 1500 g', spares: 'P3 909 g' };
    const { results } = known(ask(light));
    expect(results).toMatchObject({ 'take-instead': { value: 'none' }, spread: { value: 0 } });
    const gains = { pistons: 'P1 900, P2 930 g', rods: 'R1 1510, R2 1500 g', spares: 'P3 909 g' };
    expect(known(ask(gains)).results).toMatchObject({
      'leave-out': { value: 'P2' },
      'take-instead': { value: 'P3' },
      'total-off': { value: 0 },
    });
  });

  it('of too many spares for three kinds are refused', () => {
    const of = (name: string, count: number) =>
      `${Array.from({ length: count }, (_, at) => `${name}${at} ${900 + at}`).join(', ')} g`;
    const asked = ask({ pistons: of('P', 8), pins: of('B', 8), rods: of('R', 8), spares: of('S', 3) });
    expect(asked.kind === 'refused' && asked.refusal.where).toBe('spares');
  });

  it('whose spread is not known well enough are unsure', () => {
    expect(known(ask({ pistons: 'A 900±1, B 903.8±1 g' })).results.verdict?.value).toBe('unsure');
  });

  it.each([
    [{ pistons: 'P1 900 g' }, 'pistons'],
    [{ pistons: 'P1 900, P1 901 g' }, 'pistons'],
    [{ pistons: 'P1 900, P2 0 g' }, 'pistons'],
    [{ pistons: 'P1 900, P2 901 mm' }, 'pistons, P1 900'],
    [{ rods: 'R1 1500 g' }, 'rods'],
    [{ spares: 'P1 900 g' }, 'spares'],
    [{ limit: '-1g' }, 'limit'],
  ])('refuses %o', (texts, where) => {
    const asked = ask(texts);
    expect(asked.kind === 'refused' && asked.refusal.where).toBe(where);
  });

  it('of more cylinders than can be matched in three kinds are to be weighed in two', () => {
    const of = (name: string) =>
      `${Array.from({ length: 9 }, (_, at) => `${name}${at} ${900 + at}`).join(', ')} g`;
    const asked = ask({ pistons: of('P'), pins: of('B'), rods: of('R') });
    expect(asked.kind === 'refused' && asked.refusal.where).toBe('pins');
    expect(known(ask({ pistons: of('P'), rods: of('R') })).results.spread?.value).toBe(0);
  });
});
