/** @module A plan made after something was ordered: it is not charged twice, and nothing ordered is dropped in silence. */
import { describe, expect, it } from 'vitest';
import { orderFrom, toOrder } from '../../../test/job/ordering.ts';
import { optionsOf } from '../../plan/options.ts';
import { planQuestionOf } from '../planning.ts';
import { oneUseLines } from './one-use-lines.ts';
import { orderListOf } from './order-list.ts';
import { orderedOptions, orderedUnused } from './ordered-options.ts';

const ground = 'mains:machine:0.25:Ashlar Grinding';
const pump = 'pumps@pump.2:replace:standard:Ashlar Fuel';

/** The grinding and the second pump are ordered; the shells are not. */
const partlyOrdered = () => {
  const bench = toOrder();
  bench.done(orderFrom(bench, 'Ashlar Grinding', 'O-1'));
  bench.done(orderFrom(bench, 'Ashlar Fuel', 'O-2'));
  return bench;
};

describe('a plan after an order', () => {
  it('pays nothing more for what is ordered, and says so', () => {
    const { open } = partlyOrdered();
    expect(orderedOptions(open)).toEqual([ground, pump]);
    const { options } = optionsOf(planQuestionOf(open));
    const priced = (id: string) => options.find((option) => option.id === id);
    expect(priced(ground)).toMatchObject({
      cents: 0,
      reason: expect.stringMatching(/^already ordered, paid; /),
    });
    expect(priced(pump)?.cents).toBe(0);
    // source: prices of the engine type: the pump that is not ordered 95.00
    expect(priced('pumps@pump.1:replace:standard:Ashlar Fuel')?.cents).toBe(9500);
  });

  it('is taken at that price, and what is left to order comes to it', () => {
    const bench = partlyOrdered();
    const open = optionsOf(planQuestionOf(bench.open)).options;
    const before = bench.open.plan;
    if (!before) throw new Error('no plan is chosen');
    const { choices, days } = before;
    const chosen = choices.map(({ slot, option }) => {
      const found = open.find(({ id }) => id === option);
      return { slot, option, says: found?.reason ?? '', cents: found?.cents ?? -1 };
    });
    const asked = { kind: 'choose plan', choices: chosen, days, hours: 6000 } as const;
    expect(bench.refused({ ...asked, cents: 32_100 })).toContain('not what the choices come to');
    // source: prices of the engine type added by hand: shells 40.00 and their carriage 6.00
    bench.done({ ...asked, cents: 4600 });
    // source: the same and four tabs at 0.75
    expect(orderListOf(bench.open).reduce((sum, { cents }) => sum + cents, 0)).toBe(4600 + 300);
    expect(oneUseLines(bench.open, chosen).map(({ says, cents }) => [says, cents])).toEqual([
      ['lock tabs of the main caps', 300],
      ['pump gaskets, already ordered, paid', 0],
    ]);
  });

  it('names what was ordered and is not used, and nothing that is', () => {
    const { open } = partlyOrdered();
    const chosen = open.plan?.choices ?? [];
    expect(orderedUnused(open, chosen)).toEqual([]);
    const back = chosen.map((choice) =>
      choice.option === pump ? { ...choice, option: 'pumps@pump.2:put back:standard:' } : choice,
    );
    expect(orderedUnused(open, back)).toEqual([
      'fuel pumps: new, standard, order O-2 to Ashlar Fuel',
      'pump gaskets, order O-2 to Ashlar Fuel',
    ]);
  });
});
