/** @module The trade-off and the alternatives are complete and exact: every combination tried. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { alternativesOf } from '../../src/plan/alternatives.ts';
import type { Option, Solve } from '../../src/plan/plan-model.ts';
import { tradeOffOf } from '../../src/plan/trade-off.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import { type Case, cases, isWhole } from './any-plan-question.ts';
import { allInOrder, barredFits, type Choices, centsOf, daysOf, pairedFits, rulesOf } from './every-plan.ts';

const all = ({ question, bySlot }: Case): readonly Choices[] => {
  const { engine } = question.sheet;
  const any = bySlot.flatMap(([first]) => (first ? [first] : []));
  return allInOrder(engine, bySlot, rulesOf(engine, any, question.demands, barredFits(bySlot.flat())));
};

const hoursOf = (choices: Choices): number =>
  Math.min(...choices.map(({ hours }) => hours), ...pairedFits(choices).map(({ hours }) => hours));
const ids = (choices: readonly Option[]): readonly string[] => choices.map(({ id }) => id);

/** Beaten by one that is no worse in anything; of those alike in all three the one before it in order beats it. */
const unbeatenOf = ({ question }: Case, inOrder: readonly Choices[]): readonly Choices[] => {
  const worth = inOrder.map((choices) => ({
    cents: centsOf(question.sheet.engine, choices),
    days: daysOf(choices),
    hours: hoursOf(choices),
  }));
  return inOrder.filter((_, at) => {
    const own = worth[at];
    return !worth.some(
      (other, index) =>
        own &&
        index !== at &&
        other.cents <= own.cents &&
        other.days <= own.days &&
        other.hours >= own.hours &&
        (other.cents < own.cents || other.days < own.days || other.hours > own.hours || index < at),
    );
  });
};

/** Mostly nothing is demanded, so that there are plans to choose from. */
const roomy: fc.Arbitrary<Case> = fc
  .record({ asked: cases.filter(isWhole), demanded: fc.nat(5) })
  .map(({ asked, demanded }) =>
    demanded === 0 ? asked : { ...asked, question: { ...asked.question, demands: {} } },
  );

const byHighs: Solve = async (model) => (await highsSolver())(model);

describe('the trade-off among all plans that there are', () => {
  const isExact = async (asked: Case, effort: { widest?: number }): Promise<number> => {
    const expected = unbeatenOf(asked, all(asked));
    const found = await tradeOffOf(asked.question, byHighs, effort);
    if (expected.length === 0) expect(found.kind).toBe('conflict');
    else {
      if (found.kind !== 'trade-off') throw new Error(`${found.kind} where there are plans`);
      expect(found.plans.map(({ choices }) => ids(choices))).toEqual(expected.map(ids));
    }
    return expected.length;
  };

  it('has each one that no other beats, and no more, cheapest first', async () => {
    // source: every combination of options, tried by test/outside/every-plan.ts
    const sizes: number[] = [];
    await fc.assert(
      fc.asyncProperty(roomy, async (asked) => {
        sizes.push(await isExact(asked, {}));
      }),
      { numRuns: 120 },
    );
    expect(sizes.filter((size) => size > 2).length).toBeGreaterThan(10);
    expect(Math.max(...sizes)).toBeGreaterThan(4);
  }, 300_000);

  it('is the same by the general solver alone', async () => {
    await fc.assert(
      fc.asyncProperty(roomy, async (asked) => {
        await isExact(asked, { widest: 0 });
      }),
      { numRuns: 25 },
    );
  }, 300_000);
});

describe('the alternatives among all plans that there are', () => {
  const deedsOf = (choices: Choices): string =>
    choices.map(({ slot, does, size }) => `${slot} ${does} ${size}`).join();

  it('are the first of all that differ in what is done, within the margin', async () => {
    // source: every combination of options, tried by test/outside/every-plan.ts
    let several = 0;
    await fc.assert(
      fc.asyncProperty(
        roomy,
        fc.constantFrom(0, 1_000, 5_000, 200_000),
        fc.constantFrom(1, 3, 12),
        async (asked, margin, most) => {
          const { engine } = asked.question.sheet;
          const inOrder = all(asked);
          const best = inOrder[0];
          const found = await alternativesOf(asked.question, margin, byHighs, { most });
          if (!best) {
            expect(found.kind).toBe('conflict');
            return;
          }
          if (found.kind !== 'alternatives') throw new Error(`${found.kind} where there are plans`);
          const dearest = centsOf(engine, best) + margin;
          const firsts = new Map<string, Choices>();
          for (const choices of inOrder)
            if (centsOf(engine, choices) <= dearest && !firsts.has(deedsOf(choices)))
              firsts.set(deedsOf(choices), choices);
          const expected = [...firsts.values()];
          expect(found.plans.map(({ choices }) => ids(choices))).toEqual(expected.slice(0, most).map(ids));
          expect(found.more).toBe(expected.length > most);
          if (expected.length > 3) several += 1;
        },
      ),
      { numRuns: 120 },
    );
    expect(several).toBeGreaterThan(10);
  }, 300_000);
});
