/** @module How often slips happen, set by a shop: what it may set, and what jobs then go by. */
import { describe, expect, it } from 'vitest';
import { Shop } from '../../test/register/shop.ts';
import { priorsWith, usualPriors } from '../measure/slips/priors.ts';
import { slipChancesNow } from './slip-chance.ts';
import { registerWords } from './words.ts';

const set = (slip: string, onceIn: number, why = 'scales worn faint') =>
  ({ kind: 'set slip chance', slip, onceIn, why }) as const;
const usual = (slip: string, why = 'new micrometers') =>
  ({ kind: 'leave slip chance as usual', slip, why }) as const;

describe('the chance of a slip', () => {
  it('is the usual one until the shop sets another, and again when it says so', () => {
    const shop = new Shop();
    const now = () => priorsWith(slipChancesNow(shop.register));
    expect(now()).toEqual(usualPriors);
    shop.done('2026-03-02', set('thimble turn', 20));
    shop.done('2026-03-03', set('wrong frame', 0));
    expect(now()).toEqual({ ...usualPriors, 'thimble turn': 0.05, 'wrong frame': 0 });
    shop.done('2026-03-04', set('thimble turn', 40));
    expect(now()['thimble turn']).toBe(0.025);
    shop.done('2026-03-05', usual('thimble turn'));
    expect(slipChancesNow(shop.register)).toEqual([{ slip: 'wrong frame', onceIn: 0 }]);
    expect(shop.register.slipChances.map(({ fact }) => registerWords(fact))).toEqual([
      'thimble turn: once in 20 readings: scales worn faint.',
      'wrong frame: not looked for: scales worn faint.',
      'thimble turn: once in 40 readings: scales worn faint.',
      'thimble turn: as usual, once in 67 readings: new micrometers.',
    ]);
  });

  it.each([
    [set('thimble turns', 20), /no slip is called “thimble turns”.*thimble turn/],
    [set('constructor', 20), /no slip is called/],
    [set('thimble turn', 3), /once in 3 readings is no chance .* from 4 to 1000000/],
    [set('thimble turn', 1_000_001), /from 4 to 1000000/],
    [set('thimble turn', 1), /once in 1 readings/],
    [set('no zero check', 20), /no matter of chance/],
    [set('thimble turn', 20, ' '), /nothing is written/],
    [usual('thimble turn'), /as usual already/],
    [usual('__proto__'), /no slip is called/],
  ])('is refused where it makes no sense: %j', (request, told) => {
    const shop = new Shop();
    expect(shop.refused('2026-03-02', request)).toMatch(told);
    expect(slipChancesNow(shop.register)).toEqual([]);
  });

  it('is not set twice to the same, and instruments know nothing of it', () => {
    const shop = new Shop();
    const before = shop.register.instruments;
    shop.done('2026-03-02', set('no zero check', 0));
    expect(shop.refused('2026-03-02', set('no zero check', 0))).toMatch(/set so already/);
    expect(shop.register.instruments).toBe(before);
    shop.done('2026-03-02', set('no zero check', 1));
    expect(priorsWith(slipChancesNow(shop.register))).toEqual(usualPriors);
  });
});
