/** @module What is said of an instrument at the moment it is read with. */
import { describe, expect, it } from 'vitest';
import { mic, Shop } from '../../test/register/shop.ts';
import type { Instrument } from '../measure/instrument.ts';
import { cautionsInHand } from './in-hand.ts';

const mm = (text: string) => ({ text, unit: 'mm' });
const brought = (...instruments: readonly Instrument[]) => new Map(instruments.map((one) => [one.name, one]));

describe('an instrument in the hand', () => {
  it('is spoken of as the register has it now, not as it was brought', () => {
    const shop = new Shop();
    shop.check('2026-03-02');
    const then = shop.instrument();
    const said = () =>
      cautionsInHand(then, brought(then), shop.register, '2026-03-05T08:00:00Z').map(({ kind }) => kind);
    expect(said()).toEqual([]);
    shop.check('2026-03-04', { showed: mm('0.009'), good: false });
    expect(said()).toEqual(['out of tolerance']);
    shop.done('2026-03-04', { kind: 'withdraw instrument', name: mic.name, why: 'to be calibrated' });
    expect(said()).toEqual(['withdrawn', 'out of tolerance']);
    expect(cautionsInHand(then, brought(then), undefined, '2026-03-05')).toEqual([]);
  });

  it('brings in what speaks against the micrometer that it was set in, and ends where that goes in a circle', () => {
    const shop = new Shop();
    shop.check('2026-03-04', { showed: mm('0.009'), good: false });
    const set = (name: string, master: string): Instrument => ({
      ...mic,
      name,
      setTo: { master, size: mm('60'), shown: mm('0') },
    });
    const bore = set('bore-1', mic.name);
    expect(cautionsInHand(bore, brought(bore), shop.register, '2026-03-05').map(({ of }) => of)).toEqual([
      mic.name,
    ]);
    const [one, two] = [set('one', 'two'), set('two', 'one')];
    expect(cautionsInHand(one, brought(one, two), undefined, '2026-03-05')).toEqual([]);
  });
});
